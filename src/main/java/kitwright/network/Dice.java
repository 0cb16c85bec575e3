package kitwright.network;

/**
 * SplitMix64: a stream of random numbers that a seed fixes on every machine.
 *
 * @see "Steele, Lea and Flood, Fast splittable pseudorandom number generators, OOPSLA 2014 (from
 *     memory)"
 */
final class Dice {
  private static final long STEP = 0x9e3779b97f4a7c15L;
  private static final double UNIT = 0x1.0p-53;
  private long state;

  /** The stream of one run; runs do not share a stream, so they can go on side by side. */
  Dice(long seed, long run) {
    state = mixed(seed + STEP * mixed(run));
  }

  private static long mixed(long bits) {
    long z = (bits ^ (bits >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  long nextLong() {
    state += STEP;
    return mixed(state);
  }

  /** Even in the open interval from 0 to 1. */
  double nextOpen() {
    return ((nextLong() >>> 11) + 0.5) * UNIT;
  }
}
