package kitwright.edit;

import java.util.regex.Pattern;

/** A text as a plain or quoted scalar of YAML 1.2.2, on one line. */
final class Scalar {
  // Letters and digits may stand plain wherever they are; signs that mean something may not.
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}\\p{N}.+/(][\\p{L}\\p{N} .+/()%°&;_=@-]*(?<! )");

  private Scalar() {}

  static String of(String text) {
    if (PLAIN.matcher(text).matches()) {
      return text;
    }
    var out = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\t' -> out.append("\\t");
                default -> append(out, c);
              }
            });
    return out.append('"').toString();
  }

  private static void append(StringBuilder out, int c) {
    boolean hidden =
        Character.isISOControl(c)
            || Character.getType(c) == Character.FORMAT
            || Character.getType(c) == Character.SURROGATE
            || Character.getType(c) == Character.LINE_SEPARATOR
            || Character.getType(c) == Character.PARAGRAPH_SEPARATOR
            || (c & 0xFFFE) == 0xFFFE;
    if (hidden) {
      out.append(String.format(java.util.Locale.ROOT, "\\U%08x", c));
    } else {
      out.appendCodePoint(c);
    }
  }
}
