package kitwright.report.photo;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * The chunks of a PNG in which programs say what they know of it.
 *
 * @param isWhole whether its last chunk is there
 * @see "Portable Network Graphics (W3C, third edition), 5.3 (chunk layout), 11.3.3 (tEXt, zTXt,
 *     iTXt) and 11.3.3.4 (eXIf)"
 */
record Png(List<Notes.Part> parts, boolean isWhole) {
  private static final int HEAD = 8;
  private static final int MOST = 4_000_000;

  Png {
    parts = List.copyOf(parts);
  }

  static boolean is(byte[] file) {
    return file.length > HEAD && (file[0] & 0xFF) == 0x89 && file[1] == 'P' && file[2] == 'N';
  }

  static Png of(byte[] file) {
    List<Notes.Part> parts = new ArrayList<>();
    ByteBuffer in = ByteBuffer.wrap(file, HEAD, file.length - HEAD);
    while (in.remaining() >= 12) {
      int length = in.getInt();
      byte[] kind = new byte[4];
      in.get(kind);
      if (length < 0 || length > in.remaining() - 4) {
        parts.add(broken());
        return new Png(parts, false);
      }
      byte[] data = new byte[length];
      in.get(data).getInt();
      switch (new String(kind, ISO_8859_1)) {
        case "IEND" -> {
          return new Png(parts, true);
        }
        case "eXIf" -> parts.add(new Notes.Part(Notes.Part.EXIF, data));
        case "tEXt" -> parts.add(text(data, 1, false));
        case "zTXt" -> parts.add(text(data, 2, true));
        case "iTXt" -> parts.add(international(data));
        default -> {}
      }
    }
    return new Png(parts, false);
  }

  private static Notes.Part broken() {
    return new Notes.Part(Notes.Part.BROKEN, new byte[0]);
  }

  /** A name, so many bytes, and the text. */
  private static Notes.Part text(byte[] data, int behindName, boolean packed) {
    int end = indexOf(data, 0);
    if (end < 0 || end + behindName > data.length) {
      return broken();
    }
    byte[] text = Arrays.copyOfRange(data, end + behindName, data.length);
    return named(new String(data, 0, end, ISO_8859_1), text, packed);
  }

  /** Between its name and its text are whether it is packed, a language and the name in it. */
  private static Notes.Part international(byte[] data) {
    int end = indexOf(data, 0);
    int language = end < 0 || end + 3 > data.length ? -1 : indexOf(data, end + 3);
    int translated = language < 0 ? -1 : indexOf(data, language + 1);
    if (translated < 0) {
      return broken();
    }
    byte[] text = Arrays.copyOfRange(data, translated + 1, data.length);
    return named(new String(data, 0, end, ISO_8859_1), text, data[end + 1] != 0);
  }

  private static Notes.Part named(String name, byte[] text, boolean packed) {
    String as = name.equals("XML:com.adobe.xmp") ? Notes.Part.XMP : "text " + name;
    try {
      return new Notes.Part(as, packed ? unpacked(text) : text);
    } catch (DataFormatException notPacked) {
      return broken();
    }
  }

  private static byte[] unpacked(byte[] packed) throws DataFormatException {
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(packed);
      byte[] text = new byte[MOST];
      int length = inflater.inflate(text);
      if (!inflater.finished()) {
        throw new DataFormatException("cut short, or longer than anybody writes");
      }
      return Arrays.copyOf(text, length);
    } finally {
      inflater.end();
    }
  }

  private static int indexOf(byte[] data, int from) {
    for (int i = from; i < data.length; i++) {
      if (data[i] == 0) {
        return i;
      }
    }
    return -1;
  }
}
