package kitwright.mechanics.scatter;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import kitwright.mechanics.Refuse;
import kitwright.numbers.Draws;

/**
 * Monte Carlo over scattering properties with a fixed seed: the same inputs give the same answer on
 * any number of cores, since every block of samples has its own stream.
 *
 * @param properties what scatters, independent of each other
 * @param samples how many
 * @param seed of the streams
 */
public record Scatter(List<Scattered> properties, int samples, long seed) {
  private static final int BLOCK = 1000;

  public Scatter {
    properties = List.copyOf(properties);
    Refuse.unless(samples >= 100, () -> "a hundred samples or more: " + samples);
  }

  /**
   * How often something holds.
   *
   * @param holds asked with the drawn values, in the order of the properties; must not keep them
   */
  public Chance chance(Predicate<double[]> holds) {
    int blocks = (samples + BLOCK - 1) / BLOCK;
    long hits = IntStream.range(0, blocks).parallel().mapToLong(b -> hits(b, holds)).sum();
    return Chance.of(hits, samples);
  }

  private long hits(int block, Predicate<double[]> holds) {
    var random = new Draws(seed, block);
    double[] drawn = new double[properties.size()];
    long hits = 0;
    int end = Math.min(samples, (block + 1) * BLOCK);
    for (int i = block * BLOCK; i < end; i++) {
      for (int k = 0; k < drawn.length; k++) {
        drawn[k] = properties.get(k).draw(random);
      }
      if (holds.test(drawn)) {
        hits++;
      }
    }
    return hits;
  }
}
