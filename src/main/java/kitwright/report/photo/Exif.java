package kitwright.report.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * What a camera wrote of a photo, as far as it matters here.
 *
 * @param orientation how it is to be turned, 1 to 8; 1 where it does not say
 * @param hasPlace whether it says where it was taken
 * @see "Exif 2.32 (CIPA DC-008-2019), 4.5.4 and 4.6.2; the TIFF header and entries of TIFF 6.0"
 */
record Exif(int orientation, boolean hasPlace) {
  private static final int ORIENTATION = 0x0112;
  private static final int PLACE = 0x8825;
  private static final int ENTRY = 12;

  /**
   * Reads a TIFF header and its first directory.
   *
   * @throws RuntimeException where it points outside of itself
   */
  static Exif of(byte[] bytes) {
    ByteBuffer tiff = ByteBuffer.wrap(bytes);
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
