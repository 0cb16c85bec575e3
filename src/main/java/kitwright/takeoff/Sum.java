package kitwright.takeoff;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import kitwright.value.Decimal;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * A running sum with its steps written out.
 *
 * @param value not rounded
 * @param steps as told so far, without the result
 */
record Sum(BigDecimal value, String steps) {
  private static final int SHOWN = 3;

  static Sum of(Quantity quantity) {
    return new Sum(quantity.amount(), quantity.toString());
  }

  Sum times(BigDecimal factor, String told) {
    return new Sum(value.multiply(factor, MathContext.DECIMAL64), steps + " × " + told);
  }

  /** The result in a unit, as the start of another sum. */
  Sum told(Unit unit) {
    return new Sum(value, rounded(value) + " " + unit.symbol());
  }

  /** A line that takes so much and loses a share more. */
  Line line(Ref material, Line.Role role, Unit unit, BigDecimal waste) {
    BigDecimal gross = value.multiply(BigDecimal.ONE.add(waste), MathContext.DECIMAL64);
    String net = steps + " = " + rounded(value) + " " + unit.symbol();
    String more =
        waste.signum() == 0
            ? ""
            : "; and "
                + Decimal.print(waste.movePointRight(2))
                + " % waste = "
                + rounded(gross)
                + " "
                + unit.symbol();
    return new Line(
        material,
        role,
        quantity(value, unit),
        quantity(gross, unit),
        Optional.empty(),
        net.concat(more));
  }

  private static Quantity quantity(BigDecimal value, Unit unit) {
    return new Quantity(value.setScale(SHOWN, RoundingMode.HALF_UP), unit);
  }

  static String rounded(BigDecimal value) {
    return Decimal.print(value.setScale(SHOWN, RoundingMode.HALF_UP));
  }
}
