package kitwright.numbers;

/**
 * A stream of random numbers that a seed fixes on every machine: SplitMix64, and normal numbers by
 * the ziggurat of 128 layers.
 *
 * @see "Steele, Lea and Flood, Fast splittable pseudorandom number generators, OOPSLA 2014;
 *     Marsaglia and Tsang, The ziggurat method for generating random variables, Journal of
 *     Statistical Software 5 (2000) no. 8; area and tail of Doornik, An improved ziggurat method
 *     (2005)"
 */
public final class Draws {
  private static final long STEP = 0x9e3779b97f4a7c15L;
  private static final double UNIT = 0x1.0p-53;
  private static final int LAYERS = 128;

  /** Where the tail begins, and the area of each layer, for 128 layers. */
  private static final double TAIL = 3.442619855899;

  private static final double AREA = 9.91256303526217e-3;

  /** Right edges of the layers, the widest first; the first stands for layer and tail together. */
  private static final double[] EDGE = edges();

  private long state;

  /** The stream of one block of runs; blocks do not share one, so that they can go on at once. */
  public Draws(long seed, long block) {
    state = mixed(seed + STEP * mixed(block));
  }

  private static double[] edges() {
    double[] edge = new double[LAYERS + 1];
    double height = density(TAIL);
    edge[0] = AREA / height;
    edge[1] = TAIL;
    for (int i = 2; i < LAYERS; i++) {
      height += AREA / edge[i - 1];
      edge[i] = StrictMath.sqrt(-2 * StrictMath.log(height));
    }
    edge[LAYERS] = 0;
    return edge;
  }

  private static double density(double z) {
    return StrictMath.exp(-z * z / 2);
  }

  private static long mixed(long bits) {
    long z = (bits ^ (bits >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  private long bits() {
    state += STEP;
    return mixed(state);
  }

  /** Even in the open interval from 0 to 1. */
  public double even() {
    return ((bits() >>> 11) + 0.5) * UNIT;
  }

  /** Standard normal. */
  public double normal() {
    while (true) {
      long bits = bits();
      int layer = (int) (bits & (LAYERS - 1)); // the low bits; the high ones say where in it
      double z = ((bits >> 11) + 0.5) * (2 * UNIT) * EDGE[layer];
      if (Math.abs(z) < EDGE[layer + 1]) {
        return z;
      }
      if (layer == 0) {
        return z < 0 ? -tail() : tail();
      }
      double low = density(EDGE[layer]);
      double high = density(EDGE[layer + 1]);
      if (low + even() * (high - low) < density(z)) {
        return z;
      }
    }
  }

  /** Beyond the last edge. */
  private double tail() {
    while (true) {
      double x = -StrictMath.log(even()) / TAIL;
      double y = -StrictMath.log(even());
      if (2 * y > x * x) {
        return TAIL + x;
      }
    }
  }
}
