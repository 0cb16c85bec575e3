package kitwright.mechanics.beam;

/**
 * What lies above each of a rising row of levels, filled by a region: scratch space, local to one
 * calculation.
 */
final class Cut {
  final double[] levels;

  /** ∫z dA above the level, m³, about the origin. */
  final double[] first;

  /** Area above the level, m². */
  final double[] area;

  /** Width at the level, m. */
  final double[] width;

  Cut(double[] levels) {
    this.levels = levels;
    area = new double[levels.length];
    first = new double[levels.length];
    width = new double[levels.length];
  }

  /** The first index whose level is at or above z. */
  int from(double z) {
    int low = 0;
    int high = levels.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (levels[middle] < z) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
