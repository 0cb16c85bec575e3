package kitwright.assessment.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.assessment.Assessed;
import kitwright.assessment.Result;
import kitwright.assessment.sheet.Measure;
import org.junit.jupiter.api.Test;

/** One ply of 2 mm as a sheet tells it, every figure by hand: Q = E/(1 − ν₁₂·ν₂₁), D = Q·t³/12. */
class LaminateByHandTest {
  private static final Result RESULT =
      Assessed.of(
              """
              materials:
                - {id: ply, kind: laminate, basis: mean, poisson: 0.15, density: 1700 kg/m3, E: 15 GPa, E-across: 12 GPa, G: 4 GPa, G-across: 3 GPa, tensile-strength: 235 MPa, compressive-strength: 205 MPa, tensile-strength-across: 200 MPa, compressive-strength-across: 180 MPa, shear-strength: 48 MPa, shear-strength-across: 20 MPa, source: t}
              sections:
                - {id: s, width: 1 m, layers: [{material: ply, thickness: 2 mm, angle: 0 deg}]}
              assessments:
                - {id: a, method: laminate, designed: s, built: s, require: {stiffness: 1}}
              """)
          .result();

  /** ν₂₁ = 0.15·12/15 = 0.12, so 1 − 0.018 = 0.982. */
  @Test
  void stiffness() {
    assertThat(new Assessed(RESULT).built(Measure.STRETCH)).isCloseTo(30 / 0.982, within(1e-9));
    assertThat(new Assessed(RESULT).built(Measure.STRETCH_FREE)).isCloseTo(30, within(1e-9));
    assertThat(new Assessed(RESULT).built(Measure.STRETCH_ACROSS))
        .isCloseTo(24 / 0.982, within(1e-9));
    assertThat(new Assessed(RESULT).built(Measure.SHEAR_IN_PLANE)).isCloseTo(8, within(1e-9));
    assertThat(new Assessed(RESULT).built(Measure.BENDING))
        .isCloseTo(15e9 * 8e-9 / 12, within(1e-9));
  }

  @Test
  void strengthMassAndThickness() {
    assertThat(new Assessed(RESULT).built(Measure.TENSION)).isCloseTo(470, within(1e-6));
    assertThat(new Assessed(RESULT).built(Measure.COMPRESSION)).isCloseTo(410, within(1e-6));
    assertThat(new Assessed(RESULT).built(Measure.TENSION_ACROSS)).isCloseTo(400, within(1e-6));
    assertThat(new Assessed(RESULT).built(Measure.COMPRESSION_ACROSS)).isCloseTo(360, within(1e-6));
    assertThat(new Assessed(RESULT).built(Measure.SHEAR_STRENGTH)).isCloseTo(96, within(1e-6));
    assertThat(new Assessed(RESULT).built(Measure.PLATE_MASS)).isCloseTo(3.4, within(1e-12));
    assertThat(new Assessed(RESULT).built(Measure.THICKNESS)).isCloseTo(2, within(1e-12));
  }
}
