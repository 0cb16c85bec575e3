package kitwright.network;

/**
 * How much working time a task takes: lowest, likeliest and highest, in minutes.
 *
 * @param low if all goes well; not negative
 * @param likely most likely; not below {@code low}
 * @param high if much goes wrong; not below {@code likely}, at most {@link #MOST}
 */
public record Estimate(long low, long likely, long high) {
  /** A century of minutes; more is a slip of the pen. */
  public static final long MOST = 100L * 366 * 24 * 60;

  /** A finished task's. */
  public static final Estimate NONE = fixed(0);

  public Estimate {
    if (low < 0 || likely < low || high < likely || high > MOST) {
      throw new IllegalArgumentException(
          "a duration is low <= likely <= high and not negative: "
              + (low + ", " + likely + ", " + high));
    }
  }

  /** A duration known without spread. */
  public static Estimate fixed(long minutes) {
    return new Estimate(minutes, minutes, minutes);
  }

  public boolean isFixed() {
    return low == high;
  }

  /**
   * Expected duration (low + 4 likely + high) / 6 in minutes.
   *
   * @see "Malcolm, Roseboom, Clark and Fazar, Application of a Technique for Research and
   *     Development Program Evaluation, Operations Research 7 (1959) 646-669 (from memory)"
   */
  public double mean() {
    return (low + 4.0 * likely + high) / 6;
  }

  /** Variance ((high - low) / 6)² in minutes², same source as the mean. */
  public double variance() {
    double sixth = (high - low) / 6.0;
    return sixth * sixth;
  }

  /** Expected duration to the minute: what the plain schedule counts with. */
  public long expected() {
    return Math.round(mean());
  }

  /** What is left of it, each value to the minute. */
  Estimate left(double share) {
    return new Estimate(
        Math.round(low * share), Math.round(likely * share), Math.round(high * share));
  }

  Estimate longerBy(long minutes) {
    return new Estimate(low + minutes, likely + minutes, high + minutes);
  }
}
