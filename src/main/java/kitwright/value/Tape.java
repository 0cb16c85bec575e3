package kitwright.value;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths as an inch tape shows them: {@code 3/4 in}, {@code 23 7/16 in}, {@code 8 ft 3 1/2 in},
 * {@code 5' 3"}. A foot is twelve inches, and an inch is halved again and again, so that every
 * length is exact (NIST Handbook 44, Appendix C).
 */
final class Tape {
  private static final String FEET = "(?:(?<feet>[0-9]+)\\s*(?:ft|foot|feet|')\\s*)?";
  private static final String INCHES =
      "(?:(?<whole>[0-9]+(?:\\.[0-9]+)?)(?![0-9./]))?[ -]*(?:(?<parts>[0-9]+)/(?<of>[0-9]+))?";
  private static final Pattern LENGTH =
      Pattern.compile(FEET + INCHES + "\\s*(?<unit>in|inch|inches|\")?");
  private static final BigDecimal DOZEN = BigDecimal.valueOf(12);

  /** The finest mark of a tape is far coarser. */
  private static final int FINEST = 1024;

  private Tape() {}

  /**
   * The length, where it is written so; empty where it is a plain number with a unit.
   *
   * @param fallback what it is in where it has no unit: only an inch makes a fraction one
   */
  static Optional<Quantity> read(String text, Unit fallback) throws Misread {
    if (text.indexOf('/') < 0 && text.indexOf("ft") < 0 && text.indexOf('\'') < 0) {
      return Optional.empty();
    }
    Matcher length = LENGTH.matcher(text.strip());
    if (!length.matches() || !isOnTape(length, fallback)) {
      return Optional.empty();
    }
    BigDecimal inches = number(length.group("feet")).multiply(DOZEN);
    inches = inches.add(number(length.group("whole")));
    if (length.group("parts") != null) {
      inches = inches.add(fraction(length.group("parts"), length.group("of"), text));
    }
    return Optional.of(new Quantity(inches, Unit.INCH));
  }

  /** A fraction, or feet with inches behind them; anything else is read as ever. */
  private static boolean isOnTape(Matcher length, Unit fallback) {
    boolean inches = length.group("unit") != null || fallback == Unit.INCH;
    boolean fraction = length.group("parts") != null;
    return inches && (fraction || (length.group("feet") != null && length.group("whole") != null));
  }

  private static BigDecimal number(@org.jspecify.annotations.Nullable String digits)
      throws Misread {
    return digits == null ? BigDecimal.ZERO : Decimal.parse(digits);
  }

  private static BigDecimal fraction(String parts, String of, String text) throws Misread {
    BigDecimal whole = Decimal.parse(of);
    boolean halved =
        whole.compareTo(BigDecimal.valueOf(FINEST)) <= 0
            && whole.signum() > 0
            && Integer.bitCount(whole.intValueExact()) == 1;
    if (!halved) {
      throw new Misread(
          Decimal.quoted(text) + " is no mark of a tape",
          "write halves, quarters, eighths, sixteenths … of an inch, or a decimal");
    }
    return Decimal.parse(parts).divide(whole); // exact: a half of a half of …
  }
}
