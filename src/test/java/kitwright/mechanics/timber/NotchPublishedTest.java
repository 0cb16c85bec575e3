package kitwright.mechanics.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Notches at supports against worked cases. */
class NotchPublishedTest {
  /**
   * TRADA, Eurocode 5 worked examples, F6, 1994 (read 2026-11-30): joist 47 x 245, notched to 182
   * over the support, corner 24 mm from the force, k_v 0.630.
   */
  @Test
  void aFloorJoist() {
    assertThat(new Notch(0.245, 0.182, 0.024, 0, false).share()).isCloseTo(0.630, within(0.0005));
  }

  /**
   * By hand from equation 6.62: 200 to 150, corner 60 mm, 1 in 4: 5·(1 +
   * 8.8/14.142)/(14.142·0.6589).
   */
  @Test
  void aSlopedNotchSplitsLater() {
    double runs = 1 + 1.1 * 8 / Math.sqrt(200);
    double splits = Math.sqrt(0.75 * 0.25) + 0.8 * 0.3 * Math.sqrt(1 / 0.75 - 0.5625);
    assertThat(new Notch(0.2, 0.15, 0.06, 4, false).share())
        .isCloseTo(5 * runs / (Math.sqrt(200) * splits), within(1e-12));
    assertThat(new Notch(0.2, 0.15, 0.06, 0, false).share())
        .isLessThan(new Notch(0.2, 0.15, 0.06, 4, false).share());
  }

  @Test
  void aHairOfANotchLeavesNearlyAll() {
    assertThat(new Notch(0.1, 0.0999, 0.0, 0, true).share()).isEqualTo(1);
    assertThat(
            new Notch(0.2, 0.1, 0.0, 0, true).share() / new Notch(0.2, 0.1, 0.0, 0, false).share())
        .isCloseTo(1.3, within(1e-9));
  }

  /**
   * 100 deep, 75 left, 50 wide, 69 MPa: what is left bears 3.234 kN·m, which 10 kN make 323 mm from
   * the support.
   */
  @Test
  void whatIsLeftOfALongNotchBends() {
    assertThat(new Notch(0.1, 0.075, 0.323, 0, false).isShort(10e3, 0.05, 69e6)).isTrue();
    assertThat(new Notch(0.1, 0.075, 0.324, 0, false).isShort(10e3, 0.05, 69e6)).isFalse();
    assertThat(new Notch(0.1, 0.075, 0.162, 0, false).isShort(20e3, 0.05, 69e6)).isFalse();
    assertThat(new Notch(0.1, 0.075, 0.162, 0, false).isShort(19e3, 0.05, 69e6)).isTrue();
  }

  /**
   * Along a slope of 1 in 8 from 20 mm off the support to 220: worst where 75 + s/8 is 2·(20 +
   * s)/8, at the end 200 mm on, as s = 560 lies beyond: 100 mm bear 5.75 kN·m over 0.22 m, 26.14
   * kN. From 75 over 20 mm it would be 161.7 kN.
   */
  @Test
  void aSlopeIsWorstAtItsEndOrWithin() {
    Notch slope = new Notch(0.1, 0.075, 0.02, 8, false);
    assertThat(slope.isShort(26.1e3, 0.05, 69e6)).isTrue();
    assertThat(slope.isShort(26.2e3, 0.05, 69e6)).isFalse();
    // 30 of 100 mm left, 1 in 6 from the corner at 60 mm: worst at s = 6·30 − 120 = 60, 40 mm deep
    Notch within = new Notch(0.1, 0.03, 0.06, 6, false);
    double bears = 69e6 * 0.05 * 0.04 * 0.04 / 6 / 0.12;
    assertThat(within.isShort(bears * 0.999, 0.05, 69e6)).isTrue();
    assertThat(within.isShort(bears * 1.001, 0.05, 69e6)).isFalse();
  }

  @Test
  void aNotchTakesSomething() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Notch(0.2, 0.2, 0.0, 0, false))
        .withMessageContaining("less than the whole depth");
  }
}
