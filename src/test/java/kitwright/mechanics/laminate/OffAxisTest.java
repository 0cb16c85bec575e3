package kitwright.mechanics.laminate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A ply at 30 degrees under shear alone: σ₁ = 2·τ·s·c, σ₂ = −σ₁, τ₁₂ = τ·(c² − s²) (A. K. Kaw,
 * Mechanics of Composite Materials, 2nd ed., 2006, section 2.6), with ν = 0 and E₁ = E₂ so that
 * strains are stresses over one modulus.
 */
class OffAxisTest {
  private static final Lamina STUFF =
      new Lamina("stuff", 10, 10, 5, 0, 1, Optional.of(new LaminaStrength(100, 50, 40, 20, 1e6)));
  private static final double SC = Math.sin(Math.PI / 3);

  private static Laminate at(double angle) {
    return new Laminate(List.of(new Ply(STUFF, 1, angle)));
  }

  @Test
  void theSenseOfTheShearCounts() {
    double one = at(30).faceStrength(0, 1, Criterion.MAXIMUM_STRAIN).orElseThrow();
    double other = at(30).faceStrength(0, -1, Criterion.MAXIMUM_STRAIN).orElseThrow();
    assertThat(one).isCloseTo(20 / SC, within(1e-9));
    assertThat(other).isCloseTo(40 / SC, within(1e-9));
    assertThat(at(30).shear(Criterion.MAXIMUM_STRAIN).orElseThrow())
        .isCloseTo(20 / SC, within(1e-9));
  }

  /** Turned the other way the senses change places. */
  @Test
  void atMinusThirtyDegreesTheyChangePlaces() {
    double one = at(-30).faceStrength(0, 1, Criterion.MAXIMUM_STRAIN).orElseThrow();
    assertThat(one).isCloseTo(40 / SC, within(1e-9));
  }

  /** Under a pull: σ₁ = c²·σ, σ₂ = s²·σ: 100/0.75 or 40/0.25. */
  @Test
  void underAPull() {
    assertThat(at(30).tension(Criterion.MAXIMUM_STRAIN).orElseThrow())
        .isCloseTo(100 / 0.75, within(1e-9));
    assertThat(at(30).compression(Criterion.MAXIMUM_STRAIN).orElseThrow())
        .isCloseTo(50 / 0.75, within(1e-9));
  }
}
