package kitwright.value;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Reads a plain decimal number as a person writes it, and prints one without an exponent. */
public final class Decimal {
  /** Longer texts are no builder's numbers; the limit keeps hostile ones from costing time. */
  private static final int LONGEST = 24;

  private static final Pattern PLAIN = Pattern.compile("[+-]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)");

  private Decimal() {}

  /**
   * @throws Misread for a comma, an exponent, a digit separator, words, or more than 24 characters
   */
  public static BigDecimal parse(String text) throws Misread {
    if (text.length() <= LONGEST && PLAIN.matcher(text).matches()) {
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

  /** As written by hand: no exponent, no trailing zeros. */
  public static String print(BigDecimal number) {
    BigDecimal plain = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    return plain.toPlainString();
  }

  static String quoted(String text) {
    return "“" + text + "”";
  }
}
