package kitwright.mechanics.scatter;

import kitwright.mechanics.Refuse;
import kitwright.numbers.Draws;
import kitwright.numbers.Normal;

/**
 * A positive property that scatters.
 *
 * @param mean in its SI unit
 * @param variation coefficient of variation: standard deviation over mean, 0 to 1
 * @param shape of its distribution
 */
public record Scattered(double mean, double variation, Shape shape) {
  /** Which distribution. A normal one is cut off at a thousandth of the mean. */
  public enum Shape {
    NORMAL,
    LOGNORMAL
  }

  /** Below this share of the mean a normal value is not let fall: a strength is above nought. */
  private static final double FLOOR = 1e-3;

  public Scattered {
    Refuse.unlessPositive("mean", mean);
    Refuse.unless(
        variation >= 0 && variation < 1, () -> "variation from 0 to below 1: " + variation);
  }

  double draw(Draws random) {
    return from(random.normal());
  }

  /** The value at a number of standard deviations from the middle. */
  double from(double standard) {
    if (shape == Shape.NORMAL) {
      return mean * Math.max(FLOOR, 1 + variation * standard);
    }
    double sigma = sigma();
    return mean * Math.exp(sigma * standard - sigma * sigma / 2);
  }

  /** Standard deviation of the logarithm. */
  double sigma() {
    return Math.sqrt(Math.log1p(variation * variation));
  }

  /** The value that a share of pieces falls below: 0.05 gives the characteristic value. */
  public double quantile(double share) {
    return from(Normal.quantile(share));
  }
}
