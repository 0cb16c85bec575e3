package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;
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
}
