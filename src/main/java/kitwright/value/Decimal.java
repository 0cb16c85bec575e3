package kitwright.value;

import java.math.BigDecimal;

/** Reads a plain decimal number as a person writes it, and prints one without an exponent. */
public final class Decimal {
  /** Longer texts are no builder's numbers; the limit keeps hostile ones from costing time. */
  private static final int LONGEST = 24;

  private Decimal() {}

  /**
   * @throws Misread for a comma, an exponent, a digit separator, words, or more than 24 characters
   */
  public static BigDecimal parse(String text) throws Misread {
    if (text.length() <= LONGEST && isPlain(text)) {
      return new BigDecimal(text);
    }
    if (text.length() > LONGEST) {
      throw new Misread("a number of " + text.length() + " characters", "write at most 24 digits");
    }
    if (text.indexOf(',') >= 0) {
      throw new Misread(
          "a comma in the number " + quoted(text),
          "write a full stop for decimals and nothing between thousands");
    }
    if (text.indexOf('_') >= 0 || text.indexOf(':') >= 0) {
      throw new Misread(
          quoted(text) + " is not a plain number", "write digits and at most one full stop");
    }
    throw new Misread(quoted(text) + " is not a number", "write a number such as 12 or 3.5");
  }

  /** A sign or none, digits, and at most one full stop with digits behind it. */
  private static boolean isPlain(String text) {
    int from = text.startsWith("-") || text.startsWith("+") ? 1 : 0;
    int stops = 0;
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '.') {
        stops++;
      } else if (c < '0' || c > '9') {
        return false;
      }
    }
    return stops <= 1 && text.length() > from && !text.endsWith(".");
  }

  /** As written by hand: no exponent, no trailing zeros. */
  public static String print(BigDecimal number) {
    BigDecimal plain = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    return plain.toPlainString();
  }

  static String quoted(String text) {
    return "“" + text + "”";
  }
}
