package kitwright.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CureRateTest {
  private static final double GAS_CONSTANT = 8.314462618; // J/(mol K), CODATA 2018
  private static final double ZERO_CELSIUS = 273.15;

  @ParameterizedTest
  @CsvSource({"25,15,2", "25,35,0.5", "25,5,4", "20,20,1"})
  void tenKelvinHalveOrDouble(double stated, double actual, double factor) {
    assertThat(CureRate.factor(stated, actual)).isEqualTo(factor);
  }

  /** Arrhenius: t2 = t1 exp[(Ea/R)(1/T2 - 1/T1)], with 51 and 53 kJ/mol. */
  @ParameterizedTest
  @CsvSource({"25,15", "25,35", "20,12", "20,28"})
  void theRuleLiesByTheArrheniusLawNearRoomTemperature(double stated, double actual) {
    double middle = (arrhenius(51_000, stated, actual) + arrhenius(53_000, stated, actual)) / 2;
    assertThat(CureRate.factor(stated, actual)).isCloseTo(middle, within(0.05 * middle));
  }

  private static double arrhenius(double energy, double stated, double actual) {
    double turns = 1 / (actual + ZERO_CELSIUS) - 1 / (stated + ZERO_CELSIUS);
    return Math.exp(energy / GAS_CONSTANT * turns);
  }

  @Test
  void aTimeIsScaledToTheMinute() {
    assertThat(CureRate.scaled(Duration.ofHours(18), 20, 12)).isEqualTo(Duration.ofMinutes(1880));
    assertThat(CureRate.scaled(Duration.ofMinutes(30), 20, 30)).isEqualTo(Duration.ofMinutes(15));
  }

  @Test
  void theRuleDoesNotReachFarAndSaysWhoRules() {
    assertThatThrownBy(() -> CureRate.factor(60, 20)).hasMessageContaining("does not reach");
    assertThatThrownBy(() -> CureRate.factor(20, 50.5)).hasMessageContaining("does not reach");
    assertThat(CureRate.factor(20, 50)).as("as far as it reaches").isEqualTo(0.125);
    assertThat(CureRate.factor(20, -10)).isEqualTo(8);
    assertThat(CureRate.mayStop(4)).isTrue();
    assertThat(CureRate.mayStop(5)).isFalse();
    assertThat(CureRate.CAUTION).contains("data sheet rules");
  }
}
