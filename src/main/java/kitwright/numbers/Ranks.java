package kitwright.numbers;

/**
 * Which of so many results in order a share of them stays within, counted from 0.
 *
 * @param from lower end of the 95 % interval that sampling leaves
 * @param to upper end of it
 * @see "David and Nagaraja, Order Statistics, 3rd ed. (2003), section 7.1 (from memory)"
 */
public record Ranks(int at, int from, int to) {
  /** 95 % of a normal distribution lie within so many standard deviations. */
  private static final double TWO_SIDED_95 = 1.959964;

  /** Of a share: far more than doubles round by, far less than one run of a million. */
  private static final double ROUNDING = 1e-12;

  /**
   * The ranks of a share of so many runs.
   *
   * @param share more than 0, at most 1
   */
  public static Ranks of(double share, int runs) {
    if (!(share > 0 && share <= 1)) {
      throw new IllegalArgumentException("a share lies between 0 and 1: " + share);
    }
    double rank = share * runs;
    double spread = TWO_SIDED_95 * Math.sqrt(rank * (1 - share));
    return new Ranks(index(rank, runs), index(rank - spread, runs), index(rank + spread + 1, runs));
  }

  /** What lies beyond a whole rank by rounding alone, as 0.07 · 100 does, is that rank. */
  private static int index(double rank, int runs) {
    return Math.max(0, Math.min(runs - 1, (int) Math.ceil(rank - ROUNDING * runs) - 1));
  }
}
