package kitwright.mechanics.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.mechanics.fastener.Driven.Kind;
import org.junit.jupiter.api.Test;

/**
 * Withdrawal of nails and screws against the inch-pound form of the same equations, printed beside
 * the metric one: p = 7850·G^2.5·D·L, 15 700·G²·D·L and 8100·G^1.5·D^0.75·L, lb and in (Wood
 * Handbook FPL-GTR-282, equations 8-1, 8-10, 8-14), and against worked cases.
 */
class DrivenPublishedTest {
  private static final double INCH = 0.0254;
  private static final double POUND = 4.4482216;

  /** Number 8 screw, one inch of thread, G 0.70: 1262 lb (kerfworks.org, read 2026-11-30). */
  @Test
  void aNumberEightScrewInRedOak() {
    assertThat(new Driven(Kind.SCREW, 0.164 * INCH, INCH, 0.70).withdrawal() / POUND)
        .isCloseTo(1262, within(1262 * 0.002));
  }

  /**
   * Number 10 screw, G 0.45: 109 lb allowable for an inch by 2850·G²·D (engineeringtoolbox.com,
   * read 2026-11-30); what is allowed is 2850/15 700 of what breaks it.
   */
  @Test
  void aNumberTenScrewInSpruce() {
    assertThat(
            new Driven(Kind.SCREW, 0.190 * INCH, INCH, 0.45).withdrawal() / POUND * 2850 / 15_700)
        .isCloseTo(109.6, within(0.4));
  }

  /**
   * AWC solved examples E2.1a: nail 0.131 in, G 0.42, 20.67 lb for an inch by 1380·G^2.5·D (stored
   * in a public test, read 2026-11-29).
   */
  @Test
  void aPlainNailInSpruce() {
    assertThat(new Driven(Kind.NAIL, 0.131 * INCH, INCH, 0.42).withdrawal() / POUND * 1380 / 7850)
        .isCloseTo(20.67, within(0.05));
  }

  /** AWC E2.3: lag screw 1/2 in, G 0.55, 436.6 lb for an inch by 1800·G^1.5·D^0.75 (the same). */
  @Test
  void aLagScrewInSouthernPine() {
    assertThat(
            new Driven(Kind.LAG_SCREW, 0.5 * INCH, INCH, 0.55).withdrawal() / POUND * 1800 / 8100)
        .isCloseTo(436.6, within(1.0));
  }

  /** AWC solved example, nail 0.148 in in 3/4 in: F_e 4637 psi at G 0.5 (NDS rounds to 4650). */
  @Test
  void woodUnderANail() {
    assertThat(Driven.bearing(0.5) / 6894.757).isCloseTo(4637, within(10.0));
  }

  /** The same nail: mode IIIs 105.10 lb with K_D 2.2, so 231.2 lb at yield. */
  @Test
  void aNailSideways() {
    double psi = 6894.757;
    double bearing = 4637 * psi;
    BoltInWood nail =
        new BoltInWood(0.148 * INCH, 2.25 * INCH, 0.75 * INCH, bearing, bearing, 90_000 * psi);
    assertThat(nail.first().getKey()).isEqualTo("IIIs");
    assertThat(nail.first().getValue() / POUND / 2.2).isCloseTo(105.10, within(0.3));
  }
}
