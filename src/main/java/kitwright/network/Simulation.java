package kitwright.network;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;
import kitwright.numbers.Draws;

/**
 * Many schedules with durations drawn at random, each task from its own beta distribution,
 * independent of the others. One seed gives one answer, however many processors share the runs.
 *
 * @see "van Slyke, Monte Carlo methods and the PERT problem, Operations Research 11 (1963) 839-860
 *     (from memory)"
 */
public final class Simulation {
  /** Enough for a standard error of at most half a point in a hundred. */
  public static final int RUNS = 10_000;

  /** The seed of every report. */
  public static final long SEED = 20_260_105;

  /** Draws that take a few seconds: a longer plan gets fewer runs, and says how many. */
  private static final long MOST_DRAWS = 12_000_000;

  private static final int LEAST_RUNS = 200;
  private static final int BLOCK = 50;

  private final Passes passes;
  private final Estimate[] left;
  private final BetaSampler[] samplers;
  private final long seed;
  private final long[] clocks;
  private final int[][] hits;

  private Simulation(Passes passes, int runs, long seed) {
    this.passes = passes;
    this.seed = seed;
    List<Activity> activities = passes.network.activities();
    left = activities.stream().map(Activity::left).toArray(Estimate[]::new);
    samplers = Arrays.stream(left).map(BetaSampler::new).toArray(BetaSampler[]::new);
    clocks = new long[runs];
    hits = new int[(runs + BLOCK - 1) / BLOCK][];
  }

  /**
   * The usual number of runs with the usual seed; of a very long plan fewer.
   *
   * @param told is given the share of the runs that are done, 0 to 1; from any thread
   */
  public static Range run(
      Network network, WorkCalendar calendar, LocalDate today, DoubleConsumer told) {
    return run(network, calendar, today, runs(network), SEED, told);
  }

  private static int runs(Network network) {
    long spread = network.activities().stream().filter(each -> !each.left().isFixed()).count();
    return (int) Math.max(LEAST_RUNS, Math.min(RUNS, MOST_DRAWS / Math.max(1, spread)));
  }

  /**
   * Simulates the build from a day on.
   *
   * @param runs how often, at least once
   * @param seed fixes the draws
   */
  static Range run(
      Network network,
      WorkCalendar calendar,
      LocalDate today,
      int runs,
      long seed,
      DoubleConsumer told) {
    if (runs < 1) {
      throw new IllegalArgumentException("a simulation needs at least one run: " + runs);
    }
    Simulation simulation = new Simulation(new Passes(network, calendar, today), runs, seed);
    AtomicInteger done = new AtomicInteger();
    IntStream.range(0, simulation.hits.length)
        .parallel()
        .forEach(
            block -> {
              simulation.block(block);
              told.accept((double) done.incrementAndGet() / simulation.hits.length);
            });
    return simulation.range();
  }

  private void block(int block) {
    int tasks = passes.tasks();
    int[] counted = new int[tasks];
    long[] work = Arrays.stream(left).mapToLong(Estimate::low).toArray();
    int[] spread = IntStream.range(0, tasks).filter(i -> !left[i].isFixed()).toArray();
    boolean[] critical = new boolean[tasks];
    Passes.Early early = new Passes.Early(tasks);
    int last = Math.min(clocks.length, (block + 1) * BLOCK);
    for (int run = block * BLOCK; run < last; run++) {
      Draws draws = new Draws(seed, run);
      for (int i : spread) {
        work[i] = samplers[i].draw(draws);
      }
      passes.forward(work, early);
      clocks[run] = passes.endClock(work, early);
      Arrays.fill(critical, false);
      passes.markCritical(early, critical);
      for (int i = 0; i < tasks; i++) {
        counted[i] += critical[i] ? 1 : 0;
      }
    }
    hits[block] = counted;
  }

  private Range range() {
    int[] total = new int[passes.tasks()];
    for (int[] counted : hits) {
      Arrays.setAll(total, i -> total[i] + counted[i]);
    }
    return Range.of(passes.network, seed, clocks, total);
  }
}
