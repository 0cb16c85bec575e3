package kitwright.mechanics.scatter;

import java.util.SplittableRandom;
import kitwright.mechanics.Refuse;

/** The normal distribution. */
final class Gaussian {
  private Gaussian() {}

  /** A standard normal draw by Marsaglia's polar method (SIAM Review 6, 1964, 260–264). */
  static double draw(SplittableRandom random) {
    double s;
    double u;
    do {
      u = 2 * random.nextDouble() - 1;
      double v = 2 * random.nextDouble() - 1;
      s = u * u + v * v;
    } while (s >= 1 || s == 0);
    return u * Math.sqrt(-2 * Math.log(s) / s);
  }

  /**
   * Share below z: ½·erfc(−z/√2), by the series and the continued fraction of Abramowitz and
   * Stegun, Handbook of Mathematical Functions, 26.2.11 and 26.2.14.
   */
  static double below(double z) {
    if (z < -38) {
      return 0;
    }
    if (z > 38) {
      return 1;
    }
    double density = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    if (Math.abs(z) < 3) {
      double term = z;
      double sum = z;
      for (int n = 1; Math.abs(term) > 1e-17 * Math.abs(sum); n++) {
        term *= z * z / (2 * n + 1);
        sum += term;
      }
      return 0.5 + density * sum;
    }
    double x = Math.abs(z);
    double fraction = x;
    for (int n = 60; n >= 1; n--) {
      fraction = x + n / fraction;
    }
    double tail = density / fraction;
    return z > 0 ? 1 - tail : tail;
  }

  /** The z below which a share lies, by bisection. */
  static double quantile(double share) {
    Refuse.outside("share", 0, 1, share);
    double low = -38;
    double high = 38;
    for (int i = 0; i < 100; i++) {
      double middle = (low + high) / 2;
      if (below(middle) < share) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
