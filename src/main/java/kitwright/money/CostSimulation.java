package kitwright.money;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import kitwright.numbers.Draws;
import kitwright.numbers.Normal;

/**
 * Many ends of the build, with each uncertain cost drawn from its range. Costs of one line may move
 * together by a normal copula; lines are independent of each other. One seed gives one answer,
 * however many processors share the runs.
 *
 * @see "Nelsen, An Introduction to Copulas, 2nd ed. (2006), 2.9 and 4.8"
 */
public final class CostSimulation {
  /** Enough for a standard error of at most 0.16 points in a hundred. */
  public static final int RUNS = 100_000;

  /** The seed of every report. */
  public static final long SEED = 20_260_105;

  private static final int BLOCK = 2_000;

  private final List<CostItem> items;
  private final Triangle[][] outcomes;
  private final int[] lineOf;
  private final double[] together;
  private final double fixed;
  private final double[] means;
  private final double[] ends;
  private final long seed;
  private final Moments[] moments;

  /** Sums of one block: of the costs' deviations from their means, alone and with the end's. */
  private static final class Moments {
    private final double[] withEnd;
    private final double[] alone;
    private double end;
    private double square;

    Moments(int items) {
      withEnd = new double[items];
      alone = new double[items];
    }

    void add(double[] deviations, double sum) {
      end += sum;
      square += sum * sum;
      for (int i = 0; i < deviations.length; i++) {
        alone[i] += deviations[i];
        withEnd[i] += deviations[i] * sum;
      }
    }

    void add(Moments other) {
      end += other.end;
      square += other.square;
      for (int i = 0; i < alone.length; i++) {
        alone[i] += other.alone[i];
        withEnd[i] += other.withEnd[i];
      }
    }
  }

  private CostSimulation(
      List<CostItem> items, double fixed, Map<String, Double> together, int runs, long seed) {
    this.items = items;
    this.fixed = fixed;
    this.seed = seed;
    outcomes =
        items.stream()
            .map(item -> item.outcomes().stream().map(Triangle::of).toArray(Triangle[]::new))
            .toArray(Triangle[][]::new);
    means =
        Arrays.stream(outcomes)
            .mapToDouble(all -> Arrays.stream(all).mapToDouble(Triangle::mean).average().orElse(0))
            .toArray();
    Map<String, Integer> sizes = new LinkedHashMap<>();
    items.forEach(item -> sizes.merge(item.line(), 1, Integer::sum));
    List<String> lines = List.copyOf(sizes.keySet());
    lineOf = items.stream().mapToInt(item -> lines.indexOf(item.line())).toArray();
    this.together =
        sizes.entrySet().stream()
            .mapToDouble(
                line -> line.getValue() < 2 ? 0 : together.getOrDefault(line.getKey(), 0.0))
            .toArray();
    ends = new double[runs];
    moments = new Moments[(runs + BLOCK - 1) / BLOCK];
  }

  /**
   * Simulates.
   *
   * @param items uncertain costs, in an order that fixes the draws
   * @param fixed what is certain, in the currency's unit
   * @param together by line, how strongly its costs move together, 0 to 1: the correlation of the
   *     normal copula
   * @param runs how often, at least once
   */
  static CostRange run(
      List<CostItem> items, double fixed, Map<String, Double> together, int runs, long seed) {
    if (runs < 1) {
      throw new IllegalArgumentException("a simulation needs at least one run: " + runs);
    }
    CostSimulation simulation = new CostSimulation(items, fixed, together, runs, seed);
    IntStream.range(0, simulation.moments.length).parallel().forEach(simulation::block);
    return simulation.range();
  }

  private void block(int block) {
    Draws draws = new Draws(seed, block);
    double[] deviations = new double[items.size()];
    double[] factors = new double[together.length];
    Moments sums = new Moments(items.size());
    int last = Math.min(ends.length, (block + 1) * BLOCK);
    double mean = fixed + Arrays.stream(means).sum();
    for (int run = block * BLOCK; run < last; run++) {
      double end = draw(draws, factors, deviations);
      ends[run] = mean + end;
      sums.add(deviations, end);
    }
    moments[block] = sums;
  }

  /** Draws every cost; returns the deviation of their sum from its mean. */
  private double draw(Draws draws, double[] factors, double[] deviations) {
    for (int line = 0; line < factors.length; line++) {
      factors[line] = together[line] > 0 ? draws.normal() : 0;
    }
    double end = 0;
    for (int i = 0; i < deviations.length; i++) {
      Triangle[] all = outcomes[i];
      Triangle one = all.length == 1 ? all[0] : all[(int) (draws.even() * all.length)];
      double share = together[lineOf[i]];
      double even =
          share == 0
              ? draws.even()
              : Normal.nearly(
                  Math.sqrt(share) * factors[lineOf[i]] + Math.sqrt(1 - share) * draws.normal());
      deviations[i] = one.quantile(even) - means[i];
      end += deviations[i];
    }
    return end;
  }

  private CostRange range() {
    Moments all = new Moments(items.size());
    Arrays.stream(moments).forEach(all::add);
    double runs = ends.length;
    double mean = all.end / runs;
    double variance = all.square / runs - mean * mean;
    List<CostRange.Contribution> contributions = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      double covariance = all.withEnd[i] / runs - all.alone[i] / runs * mean;
      contributions.add(
          new CostRange.Contribution(items.get(i), variance > 0 ? covariance / variance : 0));
    }
    return CostRange.of(ends, contributions);
  }
}
