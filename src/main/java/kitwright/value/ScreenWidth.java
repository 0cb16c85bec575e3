package kitwright.value;

/**
 * How many cells of a terminal a text takes: none for combining signs and joiners, two for what is
 * wide or full-width in East Asia and for pictures, one for all else.
 *
 * @see "Unicode Standard Annex 11 (East Asian Width), section 5.3; the ranges are its W and F
 *     classes drawn together to whole blocks"
 */
public final class ScreenWidth {
  /** First and last code point of each wide range, rising. */
  private static final int[] WIDE = {
    0x1100, 0x115F, 0x2329, 0x232A, 0x2E80, 0x303E, 0x3041, 0x33FF, 0x3400, 0x4DBF, 0x4E00, 0xA4CF,
    0xA960, 0xA97F, 0xAC00, 0xD7A3, 0xF900, 0xFAFF, 0xFE10, 0xFE19, 0xFE30, 0xFE6F, 0xFF01, 0xFF60,
    0xFFE0, 0xFFE6, 0x1F300, 0x1F64F, 0x1F680, 0x1F6FF, 0x1F900, 0x1F9FF, 0x20000, 0x3FFFD
  };

  /** Below it every sign takes one cell. */
  private static final int NARROW = 0x300;

  private ScreenWidth() {}

  /** The cells of a whole text, which holds no line end. */
  public static int of(CharSequence text) {
    int cells = 0;
    for (int i = 0; i < text.length(); ) {
      char first = text.charAt(i);
      if (first < NARROW) { // nearly every sign, and neither half of a pair
        cells++;
        i++;
        continue;
      }
      int sign = Character.codePointAt(text, i);
      cells += of(sign);
      i += Character.charCount(sign);
    }
    return cells;
  }

  private static int of(int sign) {
    return switch (Character.getType(sign)) {
      case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
      default -> isWide(sign) ? 2 : 1;
    };
  }

  private static boolean isWide(int sign) {
    for (int i = 0; i < WIDE.length && WIDE[i] <= sign; i += 2) {
      if (sign <= WIDE[i + 1]) {
        return true;
      }
    }
    return false;
  }
}
