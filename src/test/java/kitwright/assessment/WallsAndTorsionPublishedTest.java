package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.assessment.sheet.Measure;
import org.junit.jupiter.api.Test;

/**
 * Thin walls, torsion and bending off the axes by what a sheet prints. Sources, read 2026-11-29:
 * NASA SP-8007 by way of public code; robbievanleeuwen/section-properties
 * test_rectangle_validation.py and test_peery.py (D. J. Peery, Aircraft Structures, 1950, ex.
 * 7.2.1); S. Timoshenko, Strength of Materials, part 1, p. 299, as ansys/pymapdl vm12.dat has it;
 * W. D. Pilkey, Analysis and Design of Elastic Beams, ex. 5.7; xcfem/xc
 * test_bredt_formula_torsional_stiffness_01.
 */
class WallsAndTorsionPublishedTest {
  private static final double INCH = 0.0254;
  private static final double PSI = 6894.757293168361;

  private static Assessed part(String section, String asked) {
    return Assessed.of(
        """
        materials:
          - {id: m, kind: metal, density: 2700 kg/m3, E: 70 GPa, G: 26.92 GPa, poisson: 0.3, yield-strength: 240 MPa, source: t}
        sections:
          - {id: s, %s}
        assessments:
          - {id: a, method: section, designed: s, built: s, %s}
        """
            .formatted(section, asked));
  }

  private static double twist(String section) {
    return part(section, "require: {torsion: 1}").passes().built(Measure.TORSION) / 26.92e9;
  }

  /** Tube 300 by 0.5 mm: 73.1 of 141.4 MPa, 2574 N·m, where it would yield at 8440. */
  @Test
  void aThinTubeBuckles() {
    Assessed tube =
        part(
            "shape: tube, material: m, dimensions: {diameter: 300 mm, wall: 0.5 mm}",
            "require: {moment: 1}");
    assertThat(tube.passes().built(Measure.MOMENT_SAGGING)).isCloseTo(2574, within(5.0));
    assertThat(tube.row(Measure.MOMENT_SAGGING).built().orElseThrow().governing().orElseThrow())
        .contains("wall");
  }

  /** J of 100 by 50 mm is 2.858521·10⁶ mm⁴. */
  @Test
  void aRectangle() {
    assertThat(
            1e12
                * twist(
                    "shape: rectangle, material: m, dimensions: {width: 100 mm, height: 50 mm}"))
        .isCloseTo(2.858521e6, within(1.0));
  }

  /** Tube 8 by 0.25 in: J 91.49 in⁴. */
  @Test
  void aTube() {
    double j = twist("shape: tube, material: m, dimensions: {diameter: 8 in, wall: 0.25 in}");
    assertThat(j / Math.pow(INCH, 4)).isCloseTo(91.49, within(0.01));
  }

  /**
   * Box 100 by 50 of 2 mm: 0.6062·10⁶ mm⁴ by its mid-lines, which a sheet goes by; 0.6667·10⁶ by
   * its outside, a tenth more than there is.
   */
  @Test
  void aBoxByItsMidLines() {
    String box =
        "width: 100 mm, layers: [{material: m, thickness: 2 mm}, {thickness: 46 mm, strips:"
            + " [{material: m, width: 2 mm}, {void: 96 mm}, {material: m, width: 2 mm}]},"
            + " {material: m, thickness: 2 mm}]";
    assertThat(1e12 * twist(box)).isCloseTo(0.6062e6, within(50.0));
  }

  /** Shaft of 4.67017 in, 250 lb at 300 in, 9000 lb·in: 7500 and 450, largest shear 3777 psi. */
  @Test
  void aShaftBentAndTwisted() {
    Assessed shaft =
        part(
            "shape: round, material: m, dimensions: {diameter: 4.67017 in}",
            "require: {reserve: 1}, load: {tip-force: 250 lbf, torque: 9000 lbf·in, factor: 1,"
                + " span: 300 in, source: t}");
    double mises = 240e6 / shaft.passes().built(Measure.RESERVE) / PSI;
    double sheared = 450 + 4 / 3.0 * 250 / (Math.PI / 4 * 4.67017 * 4.67017);
    assertThat(mises).isCloseTo(Math.hypot(7500, Math.sqrt(3) * sheared), within(1.0));
    assertThat(shaft.built(Measure.TORQUE))
        .isCloseTo(
            240e6 / Math.sqrt(3) / (450 * PSI) * 9000 * 4.4482216152605 * INCH, within(20.0));
  }

  /** Peery's Z: Ix 693.3, Iy 173.3, Ixy −240: free to bend sideways it is Ix − Ixy²/Iy. */
  @Test
  void aZedBendsSideways() {
    double[][] corners = {{4, 0}, {10, 0}, {10, 2}, {6, 2}, {6, 12}, {0, 12}, {0, 10}, {4, 10}};
    var outline = new StringBuilder();
    for (double[] corner : corners) {
      outline.append(
          "%s{y: %s in, z: %s in}".formatted(outline.isEmpty() ? "" : ", ", corner[0], corner[1]));
    }
    Assessed zed =
        part("shape: polygon, material: m, outline: [" + outline + "]", "require: {stiffness: 1}");
    assertThat(zed.passes().built(Measure.STIFFNESS) / 70e9 / Math.pow(INCH, 4))
        .isCloseTo(693.33 - 240.0 * 240 / 173.33, within(0.05));
    assertThat(
            part("shape: polygon, material: m, outline: [" + outline + "]", "require: {shear: 1}")
                .result()
                .verdict()
                .because())
        .contains("its shear is not worked out here");
  }
}
