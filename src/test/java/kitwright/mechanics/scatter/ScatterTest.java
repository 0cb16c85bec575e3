package kitwright.mechanics.scatter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import kitwright.mechanics.scatter.Scattered.Shape;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ScatterTest {
  @ParameterizedTest
  @EnumSource(Shape.class)
  void samplesAgreeWithTheClosedForm(Shape shape) {
    var built = new Scattered(100, 0.15, shape);
    var designed = new Scattered(85, 0.10, shape);
    double exact = StressStrength.below(built, designed);
    var chance = new Scatter(List.of(built, designed), 100_000, 7).chance(v -> v[0] < v[1]);
    assertThat(chance.probability()).isCloseTo(exact, within(4 * chance.standardError()));
    assertThat(chance.standardError()).isBetween(0.0005, 0.002);
  }

  @Test
  void theSameSeedGivesTheSameAnswer() {
    var scatter = new Scatter(List.of(new Scattered(1, 0.2, Shape.LOGNORMAL)), 12_345, 3);
    assertThat(scatter.chance(v -> v[0] < 0.9)).isEqualTo(scatter.chance(v -> v[0] < 0.9));
    var other = new Scatter(scatter.properties(), 12_345, 4);
    assertThat(other.chance(v -> v[0] < 0.9)).isNotEqualTo(scatter.chance(v -> v[0] < 0.9));
  }

  /** The normal distribution of Apache Commons Statistics as oracle. */
  @Test
  void normalDistribution() {
    var oracle = NormalDistribution.of(0, 1);
    for (double z = -8; z <= 8; z += 0.37) {
      double exact = oracle.cumulativeProbability(z);
      assertThat(Gaussian.below(z)).isCloseTo(exact, within(1e-12 * exact + 1e-300));
    }
    assertThat(new Scattered(50, 0.16, Shape.NORMAL).quantile(0.05))
        .isCloseTo(50 * (1 - 0.16 * 1.6448536), within(1e-4));
  }

  @Test
  void neverSaysNeverWithoutAnError() {
    var chance =
        new Scatter(List.of(new Scattered(1, 0.01, Shape.NORMAL)), 1000, 1).chance(v -> v[0] < 0.1);
    assertThat(chance.probability()).isZero();
    assertThat(chance.standardError()).isPositive();
  }

  @Test
  void impossibleScatterIsRefused() {
    assertThatThrownBy(() -> new Scattered(1, 1.5, Shape.NORMAL))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Scattered(Double.NaN, 0.1, Shape.NORMAL))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
