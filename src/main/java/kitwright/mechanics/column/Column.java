package kitwright.mechanics.column;

import java.util.function.DoubleUnaryOperator;
import kitwright.mechanics.Refuse;

/**
 * A straight part pushed along its length.
 *
 * @param crushing the push at which a short one fails, N
 * @param bending EI the weak way, N·m²
 * @param shear GA the same way, N
 * @param length that buckles, m: the part's own times the factor of its ends
 * @param rule how crushing and buckling help each other
 * @see "Wood Handbook FPL-GTR-282, eq. 9-25 to 9-29 (Ylinen) and 9-7 (bending with thrust); S. P.
 *     Timoshenko, J. M. Gere, Theory of Elastic Stability, 2nd ed., 1961, section 2.17 (shear)"
 */
public record Column(double crushing, double bending, double shear, double length, Rule rule) {
  private static final int STEPS = 100;

  public Column {
    Refuse.unlessPositive("push at which it is crushed", crushing);
    Refuse.unlessPositive("EI", bending);
    Refuse.unlessPositive("GA", shear);
    Refuse.unlessPositive("length", length);
  }

  /** π²·EI/l², made less by what shear gives: P/(1 + P/GA). N. */
  public double buckling() {
    double euler = Math.PI * Math.PI * bending / (length * length);
    return euler / (1 + euler / shear);
  }

  /** The push at which it fails, N. */
  public double capacity() {
    return rule.together(crushing, buckling());
  }

  /**
   * The factor on a push and a moment at which both together fail: (P/Pc)ⁿ + M/(M₀·(1 − P/Pe)) = 1,
   * n = 2 for wood, else 1.
   *
   * @param push N, above nought
   * @param moment the greatest without the push, N·m
   * @param strength the moment at which it fails without a push, N·m
   * @see "NDS-2018, eq. 3.9-3, as AWC example E1.7 works it"
   */
  public double factor(double push, double moment, double strength) {
    double power = rule == Rule.WOOD ? 2 : 1;
    DoubleUnaryOperator used =
        f ->
            Math.pow(f * push / capacity(), power)
                + f * moment / strength / (1 - f * push / buckling());
    double high = Math.min(capacity(), buckling() * (1 - 1e-12)) / push;
    if (used.applyAsDouble(high) <= 1) {
      return high;
    }
    double low = 0;
    for (int i = 0; i < STEPS; i++) {
      double middle = (low + high) / 2;
      if (used.applyAsDouble(middle) < 1) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
