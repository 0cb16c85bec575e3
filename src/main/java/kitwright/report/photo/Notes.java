package kitwright.report.photo;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/**
 * What the file of a photo says beside its pixels. What cannot be read may say where it was taken:
 * nobody can tell.
 *
 * @param orientation how it is to be turned, 1 to 8; 1 where it does not say
 */
record Notes(int orientation, Place place) {
  /** Whether it says where it was taken. */
  enum Place {
    UNTOLD,
    TOLD,
    UNREADABLE
  }

  /** A part of the file beside its pixels. */
  static final class Part {
    static final String EXIF = "exif";
    static final String XMP = "xmp";
    static final String IPTC = "iptc";
    static final String BROKEN = "broken";
    private final String name;
    private final byte[] bytes;

    /**
     * @param name its kind; of words what they are called, behind “text ”
     */
    Part(String name, byte[] bytes) {
      this.name = name;
      this.bytes = bytes.clone();
    }

    String name() {
      return name;
    }

    byte[] bytes() {
      return bytes.clone();
    }
  }

  /** Of a JPEG or a PNG; of another file nothing is known, and none is shown. */
  static Notes of(byte[] file) {
    List<Part> parts = Png.is(file) ? Png.of(file).parts() : JpegParts.of(file);
    int orientation = 1;
    Place place = Place.UNTOLD;
    for (Part part : parts) {
      Notes told = read(part);
      orientation = told.orientation == 1 ? orientation : told.orientation;
      place = place.compareTo(told.place) >= 0 ? place : told.place;
    }
    return new Notes(orientation, place);
  }

  private static Notes read(Part part) {
    try {
      return switch (part.name()) {
        case Part.EXIF -> {
          Exif exif = Exif.of(part.bytes());
          yield new Notes(exif.orientation(), place(exif.hasPlace()));
        }
        case Part.IPTC -> new Notes(1, place(Iptc.hasPlace(part.bytes())));
        case Part.XMP -> new Notes(1, place(Xmp.hasPlace(new String(part.bytes(), ISO_8859_1))));
        case Part.BROKEN -> new Notes(1, Place.UNREADABLE);
        default -> words(part);
      };
    } catch (RuntimeException pointsOutside) {
      return new Notes(1, Place.UNREADABLE);
    }
  }

  private static Place place(boolean told) {
    return told ? Place.TOLD : Place.UNTOLD;
  }

  /** Words under a name; some programs put the notes of a JPEG there as digits. */
  private static Notes words(Part part) {
    String name = part.name().replaceFirst("^text ", "").toLowerCase(Locale.ROOT);
    String text = new String(part.bytes(), ISO_8859_1);
    if (name.startsWith("raw profile type ")) {
      byte[] raw = digits(text);
      boolean camera = new String(raw, ISO_8859_1).startsWith("Exif\0\0");
      String kind = camera ? Part.EXIF : name.matches(".*(?:iptc|8bim)") ? Part.IPTC : Part.XMP;
      return read(new Part(kind, camera ? Arrays.copyOfRange(raw, 6, raw.length) : raw));
    }
    boolean named = name.matches(".*(?:gps|geo|location|place|city|country|latitude|longitude).*");
    return new Notes(1, place((named && !text.isBlank()) || Xmp.hasPlace(text)));
  }

  /** Behind its kind and its length, each on a line, the digits. */
  private static byte[] digits(String text) {
    String[] lines = text.strip().split("\n", 3);
    return HexFormat.of().parseHex(lines[2].replaceAll("\\s", ""));
  }
}
