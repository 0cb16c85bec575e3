package kitwright.mechanics.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Wood crushed where it bears, against worked cases. */
class BearingPublishedTest {
  private static final double INCH = 0.0254;
  private static final double PSI = 6894.757293168;
  private static final double POUND = 4.4482216152605;

  /**
   * “Short timber header that crushes at its support” (worked example of a public library of
   * formulas, read whole on 2026-11-30): 3.5 in wide, 1950 lb/ft over 42 in, F_c⊥ 625 psi. On 1.5
   * in it is pressed with 650 psi and fails; on 3.5 in its safety factor is 2.24.
   */
  @Test
  void aHeaderOnAPlateAndOnAPost() {
    double reaction = 1950.0 / 12 * 42 / 2 * POUND;
    double perLength = 625 * PSI * 3.5 * INCH;
    assertThat(new Bearing(1.5 * INCH).force(perLength, 0) / reaction)
        .isCloseTo(625.0 / 650, within(1e-9));
    assertThat(new Bearing(3.5 * INCH).force(perLength, 0) / reaction)
        .isCloseTo(2.24, within(0.005));
  }

  /** NDS 2018, table 3.10.4: its values are from memory; they are the formula’s to two places. */
  @Test
  void shortBearingsAwayFromAnEnd() {
    double[][] table = {{0.5, 1.75}, {1, 1.38}, {1.5, 1.25}, {2, 1.19}, {3, 1.13}, {4, 1.10}};
    for (double[] row : table) {
      assertThat(new Bearing(row[0] * INCH).factor(3 * INCH)).isCloseTo(row[1], within(0.0065));
    }
    assertThat(new Bearing(6 * INCH).factor(1)).isEqualTo(1);
    assertThat(new Bearing(5.99 * INCH).factor(1)).isCloseTo(1.0626, within(1e-4));
    assertThat(new Bearing(1 * INCH).factor(2.99 * INCH)).isEqualTo(1);
  }
}
