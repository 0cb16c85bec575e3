package kitwright.mechanics.scatter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import kitwright.mechanics.scatter.Scattered.Shape;
import kitwright.numbers.Normal;
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
      assertThat(Normal.below(z)).isCloseTo(exact, within(1e-12 * exact + 1e-300));
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

  /**
   * What is told as the error is the error: 200 runs with seeds of their own lie about the exact
   * chance as the standard error says. Of 200 standard normal numbers the mean square lies between
   * 0.63 and 1.47, 9999 times in 10,000 (χ² with 200 degrees of freedom).
   */
  @Test
  void theErrorIsHonest() {
    var built = new Scattered(1, 0.16, Shape.LOGNORMAL);
    var designed = new Scattered(0.83, 0.16, Shape.LOGNORMAL);
    double exact = StressStrength.below(built, designed);
    double squares = 0;
    double sum = 0;
    for (int run = 0; run < 200; run++) {
      var chance = new Scatter(List.of(built, designed), 10_000, run).chance(v -> v[0] < v[1]);
      double off = (chance.probability() - exact) / chance.standardError();
      squares += off * off;
      sum += off;
    }
    assertThat(squares / 200).isBetween(0.63, 1.47);
    assertThat(Math.abs(sum)).isLessThan(4 * Math.sqrt(200));
  }

  @Test
  void aSmallChanceIsToldAsBelow() {
    var one = List.of(new Scattered(1, 0.01, Shape.NORMAL));
    assertThat(new Scatter(one, 100_000, 1).chance(v -> v[0] < 0.1).words())
        .isEqualTo("below 0.003 %");
    assertThat(new Scatter(one, 100_000, 1).chance(v -> v[0] < 0.1).most()).isEqualTo(3e-5);
    assertThat(new Scatter(one, 100_000, 1).chance(v -> v[0] > 0.1).words())
        .isEqualTo("above 99.997 %");
    assertThat(new Chance(0.1432, 0.0011, 100_000).words()).isEqualTo("14.3 % ± 0.2 %");
    assertThat(new Chance(0.00012, 0.00003, 100_000).words()).isEqualTo("0.012 % ± 0.003 %");
    assertThat(new Chance(0.00012, 0.00003, 100_000).most()).isCloseTo(0.00018, within(1e-9));
  }
}
