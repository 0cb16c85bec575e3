package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Beams that tip over sideways. Source: Y. Benoit, B. Legrand, V. Tastet, Calcul de structures en
 * bois, 2nd printing 2008, example 2.3.2, as a verification file of xcfem/xc has it (read
 * 2026-11-30): C24, 50 by 200 mm, 5 m, l_ef = 0.9·5 + 2·0.2 m: λ_rel,m 1.277, k_crit 0.602.
 */
class SideStabilityPublishedTest {
  private static final double E = 7400e6;

  /**
   * EN 338: G₀.₀₅ = E₀.₀₅/16. The book's 0.78·b²·E/(h·l) is of a very deep beam, J = h·b³/3; with
   * the beam's own J it is 4 % more slender, which is what is used.
   */
  @Test
  void theBookSBeamOfC24() {
    double across = E * 0.2 * Math.pow(0.05, 3) / 12;
    double moment = 24e6 * 0.05 * 0.2 * 0.2 / 6;
    double deep = E / 16 * 0.2 * Math.pow(0.05, 3) / 3;
    double length = 0.9 * 5 + 2 * 0.2;
    assertThat(new SideStability(across, deep, length).slenderness(moment))
        .isCloseTo(1.277, within(0.005));
    double own = E / 16 * Shapes.rectangle(wood(), 0.05, 0.2).torsion().orElseThrow() / G;
    assertThat(new SideStability(across, own, length).slenderness(moment))
        .isCloseTo(1.277 * 1.04, within(0.005));
    assertThat(SideStability.share(1.277)).isCloseTo(0.602, within(0.0005));
  }

  private static final double G = 0.69e9;

  private static BeamMaterial wood() {
    return BeamMaterial.of(
        "C24", BeamMaterial.Kind.TIMBER, 420, 11e9, G, BeamMaterial.Strength.ofTimber(24, 21, 4));
  }

  /** Equation 6.34 is of one piece: 1 to 0.75, then straight to 1/1.4² (0.51), then by Euler. */
  @Test
  void theShareFallsWithoutAStep() {
    assertThat(SideStability.share(0.5)).isEqualTo(1);
    assertThat(SideStability.share(0.75)).isEqualTo(1);
    assertThat(SideStability.share(0.7501)).isCloseTo(0.9974, within(1e-3));
    assertThat(SideStability.share(1.4)).isCloseTo(0.51, within(1e-9));
    assertThat(SideStability.share(1.4001)).isCloseTo(0.5101, within(1e-3));
    assertThat(SideStability.share(2)).isEqualTo(0.25);
  }
}
