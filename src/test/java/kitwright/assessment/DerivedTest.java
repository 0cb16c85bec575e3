package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Trust;
import org.junit.jupiter.api.Test;

/** Values that follow by a published rule, and webs that no rule tells. */
class DerivedTest {
  private static Assessed part(String section, String asked) {
    return Assessed.of(
        """
        materials:
          - {id: wood, kind: timber, basis: mean, density: 450 kg/m3, E: 12 GPa, bending-strength: 60 MPa, shear-strength: 8 MPa, tensile-strength: 60 MPa, compressive-strength: 40 MPa, source: t}
          - {id: steel-x, kind: metal, basis: mean, density: 7850 kg/m3, E: 208 GPa, yield-strength: 240 MPa, source: t}
          - {id: skin, kind: laminate, isotropic: yes, poisson: 0.3, basis: mean, density: 1700 kg/m3, E: 14 GPa, G: 5 GPa, tensile-strength: 235 MPa, compressive-strength: 205 MPa, shear-strength: 48 MPa, source: t}
        sections:
          - {id: s, %s}
        assessments:
          - {id: a, method: section, designed: s, built: s, require: {%s: 1}}
        """
            .formatted(section, asked));
  }

  /** EN 338:2016, table 1: G is E/16 of softwood. */
  @Test
  void theShearModulusOfWood() {
    Assessed lath = part("width: 30 mm, layers: [{material: wood, thickness: 60 mm}]", "torsion");
    assertThat(lath.result().inputs())
        .anyMatch(
            one ->
                one.property().key().equals("G")
                    && one.value().equals("750 MPa")
                    && one.trust() == Trust.DERIVED);
    assertThat(lath.built(Measure.SHEAR_STIFFNESS))
        .isCloseTo(5 / 6.0 * 750e6 * 0.03 * 0.06, within(1.0));
  }

  /** EN 1993-1-1, 3.2.6: ν 0.3 of steel, so G is 80 GPa of E 208. */
  @Test
  void theShearModulusOfAMetal() {
    Assessed bar =
        part("shape: round, material: steel-x, dimensions: {diameter: 20 mm}", "torsion").passes();
    assertThat(bar.built(Measure.TORSION))
        .isCloseTo(80e9 * Math.PI / 32 * Math.pow(0.02, 4), within(1e-6));
  }

  /** ISO 12215-5, table 20: 40 times as high as thick of metal and wood, 30 of a laminate. */
  @Test
  void aSlenderWebIsNotTold() {
    String beam =
        "shape: i, material: %s, dimensions: {width: 60 mm, height: %s mm, web: 2 mm, flange: 5"
            + " mm}";
    part(beam.formatted("steel-x", 90), "moment").passes();
    assertThat(open(beam.formatted("steel-x", 91))).contains("40.5 times as high as thick");
    part(beam.formatted("skin", 70), "moment").passes();
    assertThat(open(beam.formatted("skin", 71))).contains("30.5 times as high as thick");
  }

  private static String open(String section) {
    return part(section, "moment").result().verdict().because();
  }
}
