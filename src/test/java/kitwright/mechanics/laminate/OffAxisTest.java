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

  /** A strength is a stress whatever the thickness, and so is a density. */
  @Test
  void twiceAsThickIsAsStrong() {
    Laminate thin = new Laminate(List.of(new Ply(STUFF, 0.25, 30)));
    assertThat(thin.tension(Criterion.MAXIMUM_STRAIN).orElseThrow())
        .isCloseTo(100 / 0.75, within(1e-9));
    assertThat(thin.asBeamMaterial("x", Criterion.MAXIMUM_STRAIN).density())
        .isCloseTo(1, within(1e-12));
    assertThat(Plies.times(thin, 4).arealMass()).isCloseTo(1, within(1e-12));
    assertThat(Plies.times(thin, 4).plies()).hasSize(4);
  }

  /** Turned by 15 degrees a ply at 15 is one at 30; its strengths turn with it. */
  @Test
  void aLaminateThatIsTurned() {
    Laminate turned = at(15).rotated(15);
    assertThat(turned.tension(Criterion.MAXIMUM_STRAIN).orElseThrow())
        .isCloseTo(100 / 0.75, within(1e-9));
    assertThat(turned.plies().get(0).thickness()).isEqualTo(1);
  }

  /** Bent alone, a stack of two plies strains from −κ·t at its foot to κ·t at its top. */
  @Test
  void theFacesOfThePliesLieAboutTheMiddle() {
    var stack = new Laminate(List.of(new Ply(STUFF, 1, 0), new Ply(STUFF, 1, 0)));
    double kappa = 1 / (10.0 * 8 / 12);
    assertThat(stack.states(new Resultants(0, 0, 0, 1, 0, 0)))
        .extracting(PlyState::strain1)
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-12 ? 0 : 1)
        .containsExactly(-kappa, 0.0, 0.0, kappa);
  }
}
