package kitwright.network;

/**
 * The standard normal distribution.
 *
 * @see "Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.2.11; Marsaglia,
 *     Evaluating the Normal Distribution, Journal of Statistical Software 11 (2004) no. 4 (both
 *     from memory)"
 */
final class Normal {
  /** Beyond this the distribution is 0 or 1 to more than 15 decimals. */
  private static final double FAR = 8.2;

  private Normal() {}

  /**
   * The chance of a value at most {@code z}, by the series
   *
   * <p>Φ(z) = 1/2 + φ(z) (z + z³/3 + z⁵/(3·5) + …), good to about 1e-15 absolute.
   */
  static double below(double z) {
    if (Math.abs(z) > FAR) {
      return z < 0 ? 0 : 1;
    }
    double term = z;
    double sum = z;
    double before = Double.NaN;
    for (int odd = 3; sum != before; odd += 2) {
      before = sum;
      term *= z * z / odd;
      sum += term;
    }
    double density = StrictMath.exp(-z * z / 2) / StrictMath.sqrt(2 * Math.PI);
    return Math.max(0, Math.min(1, 0.5 + density * sum));
  }
}
