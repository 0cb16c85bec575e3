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

  /**
   * American Wood Council, Structural Wood Design Examples 2015/2018, E1.2a, as a verification file
   * of xcfem/xc has it (read 2026-11-29): Douglas fir select structural 3.5 by 15.25 in over 20 ft,
   * a force in the middle, l_e = 1.37·l + 3·d = 375 in, R_B 21.6, F_bE = 1.2·E_min/R_B² = 1 774 psi
   * of E_min 690 000 psi. E_min holds a safety factor of 1.66 and 1.03 for shear, which are taken
   * out here (NDS-2018, appendix D). With table 6.1 for that force, 0.8·l + 2·h, both agree within
   * 5 %; taken is l + 2·h whatever the load, which is less.
   */
  @Test
  void theExampleOfDouglasFir() {
    double psi = 6894.757293168361;
    assertThat(1.37 * 240 + 3 * 15.25).isCloseTo(375, within(0.5));
    double slender = 375 * 15.25 / (3.5 * 3.5);
    assertThat(Math.sqrt(slender)).isCloseTo(21.6, within(0.05));
    assertThat(1.2 * 690_000 / slender).isCloseTo(1774, within(1.0));
    assertThat(critical(0.8 * 240 + 2 * 15.25) / (1774 * psi * 1.66)).isCloseTo(1, within(0.05));
    assertThat(critical(240 + 2 * 15.25) / (1774 * psi * 1.66)).isBetween(0.8, 0.9);
  }

  /** Stress in Pa at which the beam of the example tips over so many inches. */
  private static double critical(double inches) {
    double inch = 0.0254;
    double wide = 3.5 * inch;
    double high = 15.25 * inch;
    double low = 690_000 * 6894.757293168361 * 1.66 / 1.03;
    double across = low * high * Math.pow(wide, 3) / 12;
    double twisting = low / 16 * Torsion.rectangle(wide, high);
    return new SideStability(across, twisting, inches * inch).critical() / (wide * high * high / 6);
  }

  private static final double G = 0.69e9;

  private static BeamMaterial wood() {
    return BeamMaterial.of("C24", BeamMaterial.Kind.TIMBER, 420, 11e9, G, Made.ofTimber(24, 21, 4));
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
