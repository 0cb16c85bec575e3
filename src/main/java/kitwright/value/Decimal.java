package kitwright.value;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;

/** Reads a plain decimal number as a person writes it, and prints one without an exponent. */
public final class Decimal {
  /** Longer texts are no builder's numbers; the limit keeps hostile ones from costing time. */
  private static final int LONGEST = 24;

  private static final Pattern POINTS_THEN_COMMA =
      Pattern.compile("[+-]?[0-9]{1,3}(\\.[0-9]{3})+,[0-9]+");
  private static final Pattern COMMAS_THEN_POINT =
      Pattern.compile("[+-]?[0-9]{1,3}((,[0-9]{3})+\\.[0-9]+|(,[0-9]{3}){2,})");
  private static final Pattern THOUSANDS_OR_DECIMALS =
      Pattern.compile("[+-]?[1-9][0-9]{0,2},[0-9]{3}");
  private static final Pattern ONE_COMMA = Pattern.compile("[+-]?[0-9]+,[0-9]+");

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
      throw comma(text, text);
    }
    if (text.indexOf('_') >= 0 || text.indexOf(':') >= 0) {
      throw new Misread(
          quoted(text) + " is not a plain number", "write digits and at most one full stop");
    }
    throw new Misread(quoted(text) + " is not a number", "write a number such as 12 or 3.5");
  }

  /**
   * What a number with a comma can have meant: {@code 1.312,40} and {@code 1,312.40} mean 1312.40,
   * {@code 6,5} means 6.5, {@code 0,250} a quarter, and {@code 1,500} either 1500 or, as some write
   * it, 1.500.
   */
  public static List<String> withoutComma(String text) {
    if (POINTS_THEN_COMMA.matcher(text).matches()) {
      return List.of(text.replace(".", "").replace(',', '.'));
    }
    if (COMMAS_THEN_POINT.matcher(text).matches()) {
      return List.of(text.replace(",", ""));
    }
    if (THOUSANDS_OR_DECIMALS.matcher(text).matches()) {
      return List.of(text.replace(",", ""), text.replace(',', '.'));
    }
    return ONE_COMMA.matcher(text).matches() ? List.of(text.replace(',', '.')) : List.of();
  }

  /**
   * What is said of a comma in a number.
   *
   * @param whole the text that the number is a part of, which the mend repeats
   */
  static Misread comma(String number, String whole) {
    List<String> meant =
        withoutComma(number).stream().map(plain -> whole.replace(number, plain)).toList();
    return new Misread(
        "a comma in the number " + quoted(number),
        meant.isEmpty()
            ? "write a full stop for decimals and nothing between thousands"
            : meant.size() == 1
                ? "write " + meant.get(0)
                : "write " + meant.get(0) + " if thousands are meant, else " + meant.get(1));
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

  /**
   * Digits in groups of three (ISO 80000-1:2022, 7.3.2), those of four too, so that numbers beside
   * each other look alike: {@code −26 121.99}, {@code 2 295.52}.
   */
  public static String grouped(BigDecimal number) {
    String plain = number.abs().toPlainString();
    int point = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
    StringBuilder groups = new StringBuilder(plain);
    for (int at = point - 3; at > 0; at -= 3) {
      groups.insert(at, '\u00a0');
    }
    return (number.signum() < 0 ? "−" : "") + groups;
  }
}
