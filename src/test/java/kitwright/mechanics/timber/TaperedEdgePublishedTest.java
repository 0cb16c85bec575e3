package kitwright.mechanics.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Wood Handbook FPL-GTR-282, example with equation 9-16 (read 2026-11-29): tan θ 1/10, f_x = 375·M,
 * f_xy = 37.5·M, f_y = 3.75·M.
 */
class TaperedEdgePublishedTest {
  @Test
  void thePrintedExample() {
    double moment = 1000;
    double bending = 40e6;
    double shear = 5e6;
    double across = 2e6;
    double whole =
        Math.sqrt(
            Math.pow(375e3 * moment / 1000 / bending, 2)
                + Math.pow(37.5e3 * moment / 1000 / shear, 2)
                + Math.pow(3.75e3 * moment / 1000 / across, 2));
    double alone = 375e3 * moment / 1000 / bending;
    assertThat(new TaperedEdge(0.1).share(bending, shear, across))
        .isCloseTo(alone / whole, within(1e-12));
  }

  @Test
  void alongTheGrainNothingIsTaken() {
    assertThat(new TaperedEdge(0).share(40e6, 5e6, 2e6)).isEqualTo(1);
  }

  @Test
  void aSteepEdgeIsNotTold() {
    assertThatIllegalArgumentException().isThrownBy(() -> new TaperedEdge(0.5));
  }
}
