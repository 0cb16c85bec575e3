package kitwright.report.week;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * What the file of a photo says of itself that matters here.
 *
 * @param orientation how it is to be turned, 1 to 8; 1 where it does not say
 * @param hasPlace whether it says where it was taken
 * @see "Exif 2.32 (CIPA DC-008-2019), 4.5.4 and 4.6.2; the TIFF header and entries of TIFF 6.0;
 *     Portable Network Graphics (W3C, third edition), 11.3.3.4 eXIf"
 */
public record Exif(int orientation, boolean hasPlace) {
  private static final int ORIENTATION = 0x0112;
  private static final int PLACE = 0x8825;
  private static final int ENTRY = 12;
  private static final int PNG_EXIF = 0x65584966;
  private static final Exif NOTHING = new Exif(1, false);

  /** Of a JPEG or PNG; a place written as XMP counts too. */
  public static Exif of(byte[] file) {
    Exif told = isPng(file) ? png(ByteBuffer.wrap(file)) : jpeg(file);
    boolean inXmp = new String(file, StandardCharsets.ISO_8859_1).contains("GPSLatitude");
    return new Exif(told.orientation, told.hasPlace || inXmp);
  }

  private static boolean isPng(byte[] file) {
    return file.length > 8 && (file[0] & 0xFF) == 0x89 && file[1] == 'P' && file[2] == 'N';
  }

  private static Exif png(ByteBuffer in) {
    try {
      in.position(8);
      while (in.remaining() > 12) {
        int length = in.getInt();
        if (in.getInt() == PNG_EXIF) {
          return tiff(in.slice(in.position(), length));
        }
        in.position(in.position() + length + 4);
      }
      return NOTHING;
    } catch (RuntimeException cutShort) {
      return NOTHING;
    }
  }

  private static Exif jpeg(byte[] file) {
    try {
      ByteBuffer in = ByteBuffer.wrap(file);
      if (in.remaining() < 4 || in.getShort() != (short) 0xFFD8) {
        return NOTHING;
      }
      while (in.remaining() > 4) {
        int marker = in.getShort() & 0xFFFF;
        int length = in.getShort() & 0xFFFF;
        if (marker == 0xFFDA || length < 2) {
          return NOTHING;
        }
        byte[] segment = new byte[length - 2];
        in.get(segment);
        if (marker == 0xFFE1 && isExif(segment)) {
          return tiff(ByteBuffer.wrap(segment, 6, segment.length - 6).slice());
        }
      }
      return NOTHING;
    } catch (RuntimeException cutShort) {
      return NOTHING;
    }
  }

  private static boolean isExif(byte[] segment) {
    return segment.length > 14
        && new String(segment, 0, 4, StandardCharsets.US_ASCII).equals("Exif");
  }

  private static Exif tiff(ByteBuffer tiff) {
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int at = tiff.getInt(4);
    int entries = tiff.getShort(at) & 0xFFFF;
    int orientation = 1;
    boolean place = false;
    for (int i = 0; i < entries; i++) {
      int entry = at + 2 + ENTRY * i;
      int tag = tiff.getShort(entry) & 0xFFFF;
      if (tag == ORIENTATION) {
        orientation = tiff.getShort(entry + 8) & 0xFFFF;
      }
      place |= tag == PLACE;
    }
    return new Exif(orientation, place);
  }
}
