package kitwright.money;

import kitwright.value.Money;
import kitwright.value.ThreePoint;

/**
 * The triangular distribution over [low, high] with its top at {@code likely}: what a builder's
 * three guesses say and no more.
 *
 * @see "PMBOK Guide, 5th ed. (2013), 11.4.2.2; quantiles by inversion, Devroye, Non-Uniform Random
 *     Variate Generation (1986), III.1"
 */
record Triangle(double low, double likely, double high) {
  Triangle {
    if (!(low <= likely && likely <= high)) {
      throw new IllegalArgumentException(low + ", " + likely + ", " + high + " do not rise");
    }
  }

  static Triangle of(ThreePoint<Money> range) {
    return new Triangle(
        range.low().amount().doubleValue(),
        range.likely().amount().doubleValue(),
        range.high().amount().doubleValue());
  }

  /** (low + likely + high) / 3. */
  double mean() {
    return (low + likely + high) / 3;
  }

  /** The value that a share of all draws stays below. */
  double quantile(double share) {
    double width = high - low;
    if (share * width < likely - low) {
      return low + Math.sqrt(share * width * (likely - low));
    }
    return high - Math.sqrt((1 - share) * width * (high - likely));
  }
}
