package kitwright.money;

import java.util.List;
import org.apache.commons.statistics.distribution.TriangularDistribution;

/**
 * The distribution of a sum of independent triangular costs, by adding them up exactly on a fine
 * grid. The chance of each cell comes from Apache Commons Statistics.
 */
final class Convolution {
  private final double low;
  private final double step;
  private final double[] chances;

  private Convolution(double low, double step, double[] chances) {
    this.low = low;
    this.step = step;
    this.chances = chances;
  }

  static Convolution of(List<double[]> triangles, double step) {
    Convolution sum = new Convolution(0, step, new double[] {1});
    for (double[] each : triangles) {
      sum = sum.plus(each);
    }
    return sum;
  }

  private Convolution plus(double[] t) {
    TriangularDistribution one = TriangularDistribution.of(t[0], t[1], t[2]);
    int cells = (int) Math.ceil((t[2] - t[0]) / step) + 1;
    double[] own = new double[cells];
    for (int i = 0; i < cells; i++) {
      double at = t[0] + i * step;
      own[i] = one.cumulativeProbability(at + step / 2) - one.cumulativeProbability(at - step / 2);
    }
    double[] sum = new double[chances.length + cells - 1];
    for (int i = 0; i < chances.length; i++) {
      for (int j = 0; j < cells; j++) {
        sum[i + j] += chances[i] * own[j];
      }
    }
    return new Convolution(low + t[0], step, sum);
  }

  /** The chance of at most an amount. */
  double below(double amount) {
    double sum = 0;
    for (int i = 0; i < chances.length; i++) {
      double cellEnd = low + (i + 0.5) * step;
      if (cellEnd > amount) {
        return sum + chances[i] * Math.max(0, (amount - cellEnd + step) / step);
      }
      sum += chances[i];
    }
    return sum;
  }

  /** The amount that a share stays below. */
  double quantile(double share) {
    double sum = 0;
    for (int i = 0; i < chances.length; i++) {
      if (sum + chances[i] >= share) {
        return low + (i - 0.5) * step + step * (share - sum) / chances[i];
      }
      sum += chances[i];
    }
    throw new AssertionError("no share of " + share);
  }
}
