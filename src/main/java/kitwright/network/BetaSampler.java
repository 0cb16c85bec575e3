package kitwright.network;

import kitwright.numbers.Draws;

/**
 * Draws a duration from the beta distribution that has the mean of the classical estimate: over
 * [low, high] with shapes p = 1 + 4 (likely - low)/(high - low) and q = 6 - p. Strict arithmetic,
 * so that every machine draws the same.
 *
 * @see "Clark, The PERT model for the distribution of an activity time, Operations Research 10
 *     (1962) 405-406; draws by algorithm BB of Cheng, Generating beta variates with nonintegral
 *     shape parameters, Communications of the ACM 21 (1978) 317-322 (both from memory)"
 */
final class BetaSampler {
  private static final double LOG_4 = StrictMath.log(4);
  private static final double ONE_PLUS_LOG_5 = 1 + StrictMath.log(5);
  private static final double SHAPES = 6;

  private final long low;
  private final double width;
  private final boolean turned;
  private final double a;
  private final double b;
  private final double beta;
  private final double gamma;

  BetaSampler(Estimate estimate) {
    low = estimate.low();
    width = estimate.high() - low;
    double p = width == 0 ? 1 : 1 + 4 * (estimate.likely() - low) / width;
    turned = p > SHAPES - p;
    a = Math.min(p, SHAPES - p);
    b = SHAPES - a;
    beta = StrictMath.sqrt((SHAPES - 2) / (2 * a * b - SHAPES));
    gamma = a + 1 / beta;
  }

  /** A duration to the minute. */
  long draw(Draws draws) {
    if (width == 0) {
      return low;
    }
    double share = a == 1 ? closed(draws) : rejected(draws);
    return low + Math.round(width * (turned ? 1 - share : share));
  }

  /** Shape 1 has the distribution function 1 - (1 - x)^b, which can be turned round. */
  private double closed(Draws draws) {
    return 1 - StrictMath.pow(draws.even(), 1 / b);
  }

  private double rejected(Draws draws) {
    while (true) {
      double first = draws.even();
      double second = draws.even();
      double v = beta * StrictMath.log(first / (1 - first));
      double w = a * StrictMath.exp(v);
      double z = first * first * second;
      double r = gamma * v - LOG_4;
      double s = a + r - w;
      if (s + ONE_PLUS_LOG_5 >= 5 * z) {
        return w / (b + w);
      }
      double t = StrictMath.log(z);
      if (s >= t || r + SHAPES * StrictMath.log(SHAPES / (b + w)) >= t) {
        return w / (b + w);
      }
    }
  }
}
