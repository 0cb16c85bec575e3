package kitwright.mechanics.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TimberPublishedTest {
  private static final double GPA = 1e9;

  /** 65 per cent at 4:1 and 95 at 20:1, as quoted; longer counts as 20, shorter is not trusted. */
  @Test
  void aScarfKeepsMoreTheLongerItIs() {
    assertThat(TimberFactors.scarf(4)).isCloseTo(0.65, within(1e-12));
    assertThat(TimberFactors.scarf(12)).isCloseTo(0.65 + 0.3 * 0.682606, within(1e-6));
    assertThat(TimberFactors.scarf(20)).isCloseTo(0.95, within(1e-12));
    assertThat(TimberFactors.scarf(30)).isCloseTo(0.95, within(1e-12));
    assertThatThrownBy(() -> TimberFactors.scarf(3)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void stiffnessAndStrengthAskForDifferentDepths() {
    var swap = new Replacement(11 * GPA, 70e6, 7.66 * GPA, 51.7e6);
    assertThat(swap.depthForStiffness()).isCloseTo(1.128, within(0.0005));
    assertThat(swap.depthForStrength()).isCloseTo(1.164, within(0.0005));
  }
}
