package kitwright.numbers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalTest {
  /**
   * Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 26.1, typed from
   * memory.
   */
  @ParameterizedTest
  @CsvSource({"0,0.5", "0.5,0.691462461", "1,0.841344746", "2,0.977249868", "3,0.998650102"})
  void theTableOfTheHandbookIsMetToNineDecimals(double z, double chance) {
    assertThat(Normal.below(z)).isCloseTo(chance, within(0.5e-9));
    assertThat(Normal.below(-z)).isCloseTo(1 - chance, within(0.5e-9));
  }

  /** Referee: Apache Commons Statistics 1.2. */
  @Test
  void aStatisticsLibraryAgreesEverywhere() {
    NormalDistribution referee = NormalDistribution.of(0, 1);
    for (double z = -12; z <= 12; z += 0.01) {
      assertThat(Normal.below(z)).isCloseTo(referee.cumulativeProbability(z), within(4e-15));
    }
  }

  @Test
  void theTableAgreesWithAReference() {
    var referee = NormalDistribution.of(0, 1);
    for (double z = -6.5; z < 6.5; z += 0.0317) {
      assertThat(Normal.nearly(z)).isCloseTo(referee.cumulativeProbability(z), within(2e-7));
    }
  }

  /** Where the chance is small what counts is its size, not how far it is from nought. */
  @Test
  void theFarTailKeepsItsDigits() {
    var referee = NormalDistribution.of(0, 1);
    for (double z = -30; z <= -3; z += 0.37) {
      double chance = referee.cumulativeProbability(z);
      assertThat(Normal.below(z)).isCloseTo(chance, within(1e-12 * chance));
    }
    assertThat(Normal.below(-39)).isZero();
    assertThat(Normal.below(39)).isOne();
  }

  @Test
  void theQuantileIsTheInverse() {
    for (double share : new double[] {1e-9, 0.01, 0.05, 0.5, 0.975}) {
      assertThat(Normal.below(Normal.quantile(share))).isCloseTo(share, within(1e-12));
    }
    assertThat(Normal.quantile(0.05)).isCloseTo(-1.6448536, within(1e-7));
    assertThatThrownBy(() -> Normal.quantile(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Normal.quantile(1)).isInstanceOf(IllegalArgumentException.class);
  }
}
