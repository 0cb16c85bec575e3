package kitwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.cutting.saw.Rect;
import org.junit.jupiter.api.Test;

/** An inch is 25.4 mm exactly (NIST SP 811, appendix B.8). */
class TapeTest {
  private static final Tape INCHES = new Tape(true);

  @Test
  void aMetricTapeIsReadInMillimetres() {
    assertThat(new Tape(false).told(3101)).isEqualTo("310.1 mm");
  }

  @Test
  void anInchTapeIsReadToTheNearestSixteenth() {
    assertThat(INCHES.told(254)).isEqualTo("1 in (25.4 mm)");
    assertThat(INCHES.told(127)).isEqualTo("1/2 in (12.7 mm)");
    // A sheet of 8 by 4 ft, a quarter and three sixteenths.
    assertThat(INCHES.told(24384)).isEqualTo("96 in (2438.4 mm)");
    assertThat(INCHES.told(318)).isEqualTo("1 1/4 in (31.8 mm)");
    assertThat(INCHES.told(48)).isEqualTo("3/16 in (4.8 mm)");
    // 253.3 mm lie nearer to 10 inches (254.0) than to 9 15/16 (252.41).
    assertThat(INCHES.told(2533)).isEqualTo("10 in (253.3 mm)");
    assertThat(INCHES.told(3)).isEqualTo("0 in (0.3 mm)");
  }

  @Test
  void aRectangleIsToldByBothSides() {
    assertThat(INCHES.told(new Rect(0, 0, 11200, 1800)))
        .isEqualTo("44 1/8 x 7 1/16 in (1120 x 180 mm)");
  }
}
