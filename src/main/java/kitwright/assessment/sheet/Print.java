package kitwright.assessment.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Prints numbers of a calculation as a person writes them: four figures, no exponent. */
public final class Print {
  private static final MathContext FOUR = new MathContext(4, RoundingMode.HALF_EVEN);
  private static final MathContext TEN = new MathContext(10, RoundingMode.HALF_EVEN);

  private Print() {}

  /** Four significant figures; more before the point where the number has them. */
  public static String number(double value) {
    BigDecimal rounded =
        Math.abs(value) >= 1000
            ? BigDecimal.valueOf(value).setScale(0, RoundingMode.HALF_EVEN)
            : BigDecimal.valueOf(value).round(FOUR);
    return rounded.signum() == 0
        ? "0"
        : rounded.stripTrailingZeros().toPlainString().replace('-', '−');
  }

  /**
   * A ratio to three decimals, rounded down: what just misses its limit is never printed as if it
   * met it.
   */
  public static String ratio(double value) {
    return BigDecimal.valueOf(value)
        .round(TEN)
        .setScale(3, RoundingMode.FLOOR)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** A ratio that must not be above its limit, to three decimals, rounded up. */
  static String ratioUp(double value) {
    return BigDecimal.valueOf(value)
        .round(TEN)
        .setScale(3, RoundingMode.CEILING)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** A share as a percentage with its sign. */
  public static String margin(double share) {
    BigDecimal percent = BigDecimal.valueOf(share * 100).round(TEN).setScale(1, RoundingMode.FLOOR);
    return (share >= 0 ? "+" : "−") + percent.abs().toPlainString() + " %";
  }

  /** How far one value is from another, as a percentage with its sign, to the nearest tenth. */
  public static String apart(double share) {
    BigDecimal percent =
        BigDecimal.valueOf(share * 100).round(TEN).setScale(1, RoundingMode.HALF_EVEN);
    return (percent.signum() >= 0 ? "+" : "−") + percent.abs().toPlainString() + " %";
  }

  /** A number with its unit. */
  public static String with(double value, String unit) {
    return unit.isEmpty() ? number(value) : number(value) + " " + unit;
  }

  /** A length, given in metres, in millimetres. */
  public static String mm(double metres) {
    return with(metres * 1000, "mm");
  }
}
