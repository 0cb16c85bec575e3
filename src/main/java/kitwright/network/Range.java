package kitwright.network;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;

/** What a simulation found: when the build ends, and which tasks decide it how often. */
public final class Range {
  /** 95 % of a normal distribution lie within so many standard deviations. */
  private static final double TWO_SIDED_95 = 1.959964;

  private final Network network;
  private final long seed;
  private final long[] clocks;
  private final int[] hits;

  private Range(Network network, long seed, long[] clocks, int[] hits) {
    this.network = network;
    this.seed = seed;
    this.clocks = clocks;
    this.hits = hits;
  }

  /**
   * Sums up.
   *
   * @param clocks clock minute of the end, one a run
   * @param hits in how many runs each task was critical
   */
  static Range of(Network network, long seed, long[] clocks, int[] hits) {
    long[] sorted = clocks.clone();
    Arrays.sort(sorted);
    return new Range(network, seed, sorted, hits.clone());
  }

  /**
   * A share found by counting runs.
   *
   * @param share 0 to 1
   * @param error its standard error, √(share (1 - share) / runs)
   */
  public record Chance(double share, double error) {}

  /**
   * The moment by which a share of the runs had ended.
   *
   * @param share 0 to 1
   * @param at the moment
   * @param from lower end of the 95 % interval that sampling leaves, by order statistics
   * @param to upper end of it
   */
  public record Quantile(double share, LocalDateTime at, LocalDateTime from, LocalDateTime to) {}

  public int runs() {
    return clocks.length;
  }

  public long seed() {
    return seed;
  }

  /**
   * The moment by which a share of the runs had ended.
   *
   * @param share more than 0, at most 1
   * @see "David and Nagaraja, Order Statistics, 3rd ed. (2003), section 7.1 (from memory)"
   */
  public Quantile by(double share) {
    if (!(share > 0 && share <= 1)) {
      throw new IllegalArgumentException("a share lies between 0 and 1: " + share);
    }
    double rank = share * runs();
    double spread = TWO_SIDED_95 * Math.sqrt(rank * (1 - share));
    return new Quantile(share, ranked(rank), ranked(rank - spread), ranked(rank + spread + 1));
  }

  private LocalDateTime ranked(double rank) {
    int index = (int) Math.ceil(rank) - 1;
    return WorkCalendar.moment(clocks[Math.max(0, Math.min(runs() - 1, index))]);
  }

  /** The chance that all is ready by midnight after that day. */
  public Chance chanceBy(LocalDate day) {
    long midnight = WorkCalendar.clock(day.plusDays(1).atStartOfDay());
    return chance(Arrays.stream(clocks).filter(clock -> clock <= midnight).count());
  }

  /** The chance that the task decides the end: its criticality index. */
  public Chance criticality(String id) {
    return chance(hits[network.number(id)]);
  }

  private Chance chance(long count) {
    double share = (double) count / runs();
    return new Chance(share, Math.sqrt(share * (1 - share) / runs()));
  }
}
