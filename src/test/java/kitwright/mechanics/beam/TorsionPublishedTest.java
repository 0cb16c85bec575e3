package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.mechanics.beam.BeamMaterial.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sources, read 2026-11-29: robbievanleeuwen/section-properties test_rectangle_validation.py; Wood
 * Handbook FPL-GTR-282, table for rectangles (the factor multiplies: τ = T/(α·h·b²)); S.
 * Timoshenko, Strength of Materials, part 1, p. 299, as ansys/pymapdl vm12.dat has it; W. D.
 * Pilkey, Analysis and Design of Elastic Beams, ex. 5.7; xcfem/xc
 * test_bredt_formula_torsional_stiffness_01.
 */
class TorsionPublishedTest {
  private static final BeamMaterial STUFF =
      BeamMaterial.of("stuff", Kind.METAL, 1, 2.6, 1, Made.strength(1, 1, 1));

  private static double stress(Section section) {
    return section.twisted().stream().mapToDouble(Twisted::perUnit).max().orElseThrow();
  }

  @Test
  void aRectangleHundredByFifty() {
    assertThat(Torsion.rectangle(100, 50)).isCloseTo(2.858521e6, within(1.0));
    assertThat(Torsion.rectangle(50, 100)).isCloseTo(2.858521e6, within(1.0));
    assertThat(Shapes.rectangle(STUFF, 100, 50).torsion().orElseThrow())
        .isCloseTo(2.858521e6, within(1.0));
  }

  /** α of τ = T/(α·h·b²) and β of J = β·h·b³: S. Timoshenko, J. N. Goodier, table (from memory). */
  @ParameterizedTest
  @CsvSource({
    "1, 0.208, 0.1406",
    "1.5, 0.231, 0.196",
    "2, 0.246, 0.229",
    "3, 0.267, 0.263",
    "10, 0.312, 0.312"
  })
  void rectanglesOfTwentyMillimetres(double ratio, double alpha, double beta) {
    double b = 20;
    double h = ratio * b;
    assertThat(Torsion.rectangle(h, b) / (h * b * b * b)).isCloseTo(beta, within(6e-4));
    assertThat(1 / (Torsion.rectangleStress(h, b) * h * b * b)).isCloseTo(alpha, within(6e-4));
  }

  /**
   * Shaft of 4.67017 in, 9000 lb·in beside a bending stress of 7500: 450, largest shear 3777 psi.
   */
  @Test
  void aShaftTwistedAndBent() {
    Section shaft = Shapes.round(STUFF, 4.67017);
    double shear = 9000 * stress(shaft);
    assertThat(shear).isCloseTo(450, within(0.05));
    double bent = Stresses.of(shaft, 75_000).get(0).atLower();
    assertThat(bent).isCloseTo(7500, within(0.5));
    assertThat(Math.hypot(bent / 2, shear)).isCloseTo(3777, within(0.5));
  }

  /** Tube 8 by 0.25 in: J 91.49 in⁴, 0.0437 psi for one lb·in. */
  @Test
  void aTube() {
    Section tube = Shapes.tube(STUFF, 8, 0.25);
    assertThat(tube.torsion().orElseThrow()).isCloseTo(91.49, within(0.01));
    assertThat(stress(tube)).isCloseTo(0.0437, within(5e-5));
  }

  /** Box 100 by 50 of 2 mm by its mid-lines, 98 by 48: 4·A²/Σ(s/t) = 0.6062e6 mm⁴, T/(2·A·t). */
  @Test
  void aBoxByItsMidLines() {
    Section box = Made.box(STUFF, 100, 50, 2, 2);
    double cell = 98.0 * 48;
    assertThat(box.torsion().orElseThrow())
        .isCloseTo(4 * cell * cell / (2 * (98 + 48) / 2.0), within(1e-3));
    assertThat(box.torsion().orElseThrow()).isCloseTo(0.6062e6, within(50.0));
    assertThat(stress(box)).isCloseTo(1 / (2 * cell * 2), within(1e-12));
  }

  /** Walls of two thicknesses, top and bottom 6, sides 3: Bredt by hand. */
  @Test
  void aBoxOfTwoThicknesses() {
    Section box = Made.box(STUFF, 80, 60, 3, 6);
    double cell = 77.0 * 54;
    double round = 2 * 54 / 3.0 + 2 * 77 / 6.0;
    assertThat(box.torsion().orElseThrow()).isCloseTo(4 * cell * cell / round, within(1e-3));
    assertThat(stress(box)).isCloseTo(1 / (2 * cell * 3), within(1e-12));
  }
}
