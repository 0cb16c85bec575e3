package kitwright.mechanics.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Strength that falls with size: Wood Handbook, FPL-GTR-282 (2021), pages 9-10 and 9-11, read in a
 * public transcription on 2026-11-30.
 */
class SizeEffectPublishedTest {
  private static final double INCH = 0.0254;

  /** Printed with equation 9-18: 10 in deep, 18 ft, loads at the thirds: 10 000 become 7330. */
  @Test
  void theHandbooksBeam() {
    double thirds = 1 + 18 / 3.0;
    assertThat(10_000 * SizeEffect.bending(10 * INCH, 216 * INCH, thirds))
        .isCloseTo(7330, within(5.0));
  }

  /**
   * Equation 9-19, by its own ground: what a spread load strains is (m + 1)·∫(M/M_max)^m dx/L,
   * which is 3.889, and in the handbook 3.876; of a force at the middle the same integral is 1.
   */
  @Test
  void aSpreadLoadStrainsMore() {
    double spread = 0;
    double middle = 0;
    int pieces = 200_000;
    for (int i = 0; i < pieces; i++) {
      double x = (i + 0.5) / pieces;
      spread += Math.pow(4 * x * (1 - x), 18) / pieces;
      middle += Math.pow(1 - Math.abs(2 * x - 1), 18) / pieces;
    }
    assertThat(19 * spread).isCloseTo(SizeEffect.SPREAD, within(0.013));
    assertThat(19 * middle).isCloseTo(1, within(1e-6));
    assertThat(SizeEffect.bending(0.1, 3, SizeEffect.SPREAD) / SizeEffect.bending(0.1, 3, 1))
        .isCloseTo(Math.pow(3.876, -1 / 18.0), within(1e-12));
  }

  /** Equation 9-20a: 1.9·C_f·τ/A^⅕ with C_f 2 and A in cm²; it takes nothing below 792 cm². */
  @Test
  void shearFallsWithTheFifthRoot() {
    assertThat(SizeEffect.shear(0.1024)).isCloseTo(3.8 / 4, within(1e-9));
    assertThat(SizeEffect.shear(0.0792)).isEqualTo(1);
    assertThat(SizeEffect.shear(0.0800)).isLessThan(1);
  }

  @Test
  void theSmallAreNotStronger() {
    assertThat(SizeEffect.bending(0.0508, 0.71112, 1)).isEqualTo(1);
    assertThat(SizeEffect.bending(0.02, 0.5, 1)).isEqualTo(1);
    assertThat(SizeEffect.bending(0.0509, 0.71112, 1)).isLessThan(1);
  }
}
