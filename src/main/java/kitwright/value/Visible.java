package kitwright.value;

import java.util.HexFormat;

/**
 * Text from a ledger as it may be shown to a person: what is invisible or steers a terminal is
 * written out. Control characters, directional marks, overrides and isolates (Unicode Standard
 * Annex 9), other format characters, line separators and lone surrogates come out as {@code
 * \u202e}; tab and line ends as {@code \t}, {@code \n}, {@code \r}. The two joiners U+200C and
 * U+200D stay, since names and pictures are spelt with them.
 */
public final class Visible {
  private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  private Visible() {}

  /** One line of text: line ends and tabs are written out too. */
  public static String line(String text) {
    return escape(text, false);
  }

  /** Text of several lines: line feeds and tabs stay, all else is as in {@link #line}. */
  public static String lines(String text) {
    return escape(text, true);
  }

  /** Whether a person could not see this code point, or a terminal would act on it. */
  public static boolean isHidden(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          true;
      case Character.FORMAT -> codePoint != ZERO_WIDTH_JOINER && codePoint != ZERO_WIDTH_NON_JOINER;
      default -> (codePoint & 0xFFFE) == 0xFFFE; // the two noncharacters of each plane
    };
  }

  private static String escape(String text, boolean lines) {
    int first = firstHidden(text, lines);
    if (first == text.length()) {
      return text;
    }
    var out = new StringBuilder(text.length() + 8).append(text, 0, first);
    int at = first;
    while (at < text.length()) {
      int point = text.codePointAt(at);
      if (isHidden(point, lines)) {
        out.append(name(point));
      } else {
        out.appendCodePoint(point);
      }
      at += Character.charCount(point);
    }
    return out.toString();
  }

  private static int firstHidden(String text, boolean lines) {
    int at = 0;
    while (at < text.length()) {
      int point = text.codePointAt(at);
      if (isHidden(point, lines)) {
        return at;
      }
      at += Character.charCount(point);
    }
    return at;
  }

  private static boolean isHidden(int point, boolean lines) {
    return isHidden(point) && !(lines && (point == '\n' || point == '\t'));
  }

  private static String name(int codePoint) {
    return switch (codePoint) {
      case '\t' -> "\\t";
      case '\n' -> "\\n";
      case '\r' -> "\\r";
      default ->
          Character.isBmpCodePoint(codePoint)
              ? "\\u" + HexFormat.of().toHexDigits((char) codePoint)
              : "\\u{" + Integer.toHexString(codePoint) + "}";
    };
  }
}
