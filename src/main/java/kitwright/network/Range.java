package kitwright.network;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import kitwright.numbers.Ranks;

/** What a simulation found: when the build ends, and which tasks decide it how often. */
public final class Range {
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
   * @param at the moment
   * @param from lower end of the 95 % interval that sampling leaves, by {@link Ranks}
   * @param to upper end of it
   */
  public record Quantile(LocalDateTime at, LocalDateTime from, LocalDateTime to) {}

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
   */
  public Quantile by(double share) {
    Ranks ranks = Ranks.of(share, runs());
    return new Quantile(moment(ranks.at()), moment(ranks.from()), moment(ranks.to()));
  }

  private LocalDateTime moment(int rank) {
    return WorkCalendar.moment(clocks[rank]);
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
