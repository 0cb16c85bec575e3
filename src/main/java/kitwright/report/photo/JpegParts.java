package kitwright.report.photo;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The segments of a JPEG in which programs say what they know of it.
 *
 * @see "ITU-T T.81 (ISO/IEC 10918-1), B.1.1.4; Exif 2.32, 4.5.4; ISO 16684-1 and -3 (XMP), 1.1.3;
 *     IPTC-IIM lies in APP13 by common practice, no source"
 */
final class JpegParts {
  private static final int FIRST = 0xE0;
  private static final int LAST = 0xEF;
  private static final int SCAN = 0xDA;
  private static final int END = 0xD9;
  private static final int EXIF_AND_XMP = 0xE1;
  private static final int DESK = 0xED;
  private static final String CAMERA = "Exif\0\0";

  private JpegParts() {}

  static List<Notes.Part> of(byte[] file) {
    List<Notes.Part> parts = new ArrayList<>();
    int here = 2;
    while (here + 4 <= file.length) {
      int marker = at(file, here + 1);
      if (at(file, here) != 0xFF || marker == 0xFF || marker == 0) {
        here++;
        continue;
      }
      if (marker == SCAN || marker == END) {
        break;
      }
      int next = here + 2 + (at(file, here + 2) << 8 | at(file, here + 3));
      if (marker >= FIRST && marker <= LAST) {
        parts.add(
            next > file.length
                ? new Notes.Part(Notes.Part.BROKEN, new byte[0])
                : part(marker, Arrays.copyOfRange(file, Math.min(next, here + 4), next)));
      }
      here = next;
    }
    return parts;
  }

  private static Notes.Part part(int marker, byte[] segment) {
    if (marker == EXIF_AND_XMP && new String(segment, ISO_8859_1).startsWith(CAMERA)) {
      return new Notes.Part(
          Notes.Part.EXIF, Arrays.copyOfRange(segment, CAMERA.length(), segment.length));
    }
    return new Notes.Part(marker == DESK ? Notes.Part.IPTC : Notes.Part.XMP, segment);
  }

  private static int at(byte[] file, int index) {
    return file[index] & 0xFF;
  }
}
