package kitwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.cutting.solve.Area;
import org.junit.jupiter.api.Test;

/** An inch is 25.4 mm exactly (NIST SP 811, appendix B.8). */
class TapeTest {
  private static final Tape INCHES = new Tape(true);

  @Test
  void aMetricTapeIsReadInMillimetres() {
    assertThat(new Tape(false).told(3101)).isEqualTo("310.1 mm");
  }

  @Test
  void anInchTapeIsReadToTheNearestThirtySecond() {
    assertThat(INCHES.told(254)).isEqualTo("25.4 mm (1 in)");
    assertThat(INCHES.told(127)).isEqualTo("12.7 mm (1/2 in)");
    // A sheet of 8 by 4 ft, a quarter and three thirty-seconds.
    assertThat(INCHES.told(24384)).isEqualTo("2438.4 mm (96 in)");
    assertThat(INCHES.told(318)).isEqualTo("31.8 mm (1 1/4 in)");
    assertThat(INCHES.told(24)).isEqualTo("2.4 mm (3/32 in)");
    // 253.7 mm lie nearer to 10 inches (254.0) than to 9 31/32 (253.206).
    assertThat(INCHES.told(2537)).isEqualTo("253.7 mm (10 in)");
    assertThat(INCHES.told(3)).isEqualTo("0.3 mm (0 in)");
  }

  @Test
  void anAreaIsToldByBothSides() {
    assertThat(INCHES.told(new Area(0, 0, 11200, 1800)))
        .isEqualTo("1120 x 180 mm (44 3/32 x 7 3/32 in)");
  }
}
