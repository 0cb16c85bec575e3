package kitwright.money;

/**
 * A stream of random numbers that a seed fixes on every machine: SplitMix64, and normal numbers by
 * the polar method.
 *
 * @see "Steele, Lea and Flood, Fast splittable pseudorandom number generators, OOPSLA 2014;
 *     Marsaglia and Bray, A convenient method for generating normal variables, SIAM Review 6 (1964)
 *     260-264"
 */
final class Draws {
  private static final long STEP = 0x9e3779b97f4a7c15L;
  private static final double UNIT = 0x1.0p-53;
  private long state;
  private double spare;
  private boolean hasSpare;

  /** The stream of one block of runs; blocks do not share one, so that they can go on at once. */
  Draws(long seed, long block) {
    state = mixed(seed + STEP * mixed(block));
  }

  private static long mixed(long bits) {
    long z = (bits ^ (bits >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  /** Even in the open interval from 0 to 1. */
  double even() {
    state += STEP;
    return ((mixed(state) >>> 11) + 0.5) * UNIT;
  }

  /** Standard normal. */
  double normal() {
    if (hasSpare) {
      hasSpare = false;
      return spare;
    }
    while (true) {
      double x = 2 * even() - 1;
      double y = 2 * even() - 1;
      double square = x * x + y * y;
      if (square < 1 && square > 0) {
        double scale = Math.sqrt(-2 * StrictMath.log(square) / square);
        spare = y * scale;
        hasSpare = true;
        return x * scale;
      }
    }
  }
}
