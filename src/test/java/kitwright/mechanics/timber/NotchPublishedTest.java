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
    assertThat(new Notch(0.245, 0.182, 0.024, 0, false).shear(4.6e6, 0.047))
        .isCloseTo(0.6303 * 4.6e6 * 0.047 * 0.182 / 1.5, within(20.0));
  }

  @Test
  void aNotchTakesSomething() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Notch(0.2, 0.2, 0.0, 0, false))
        .withMessageContaining("less than the whole depth");
  }
}
