package kitwright.assessment.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.assessment.Assessed;
import kitwright.assessment.Result;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import org.junit.jupiter.api.Test;

/** Solid wood laid at an angle to its grain bears bent no more than it bears pulled or pushed. */
class AngledWoodTest {
  private static final String LEDGER =
      """
      ---
      materials:
        - {id: wood, kind: timber, basis: mean, density: 500 kg/m3, E: 11 GPa, E-across: 0.5 GPa, G: 0.7 GPa, G-across: 70 MPa, poisson: 0.35, bending-strength: 60 MPa, tensile-strength: %s, compressive-strength: %s, tensile-strength-across: %s, compressive-strength-across: %s, shear-strength: 80 MPa, shear-strength-across: 20 MPa, source: test}
      sections:
        - {id: beam, width: 100 mm, layers: [{material: wood, thickness: 40 mm, angle: 10 deg}]}
      assessments:
        - {id: a, method: section, designed: beam, built: beam, require: {moment: 1}}
      """;

  private static double moment(String... strengths) {
    Result result = Assessed.of(LEDGER.formatted((Object[]) strengths)).result();
    return result.rows().stream()
        .filter(row -> row.measure() == Measure.MOMENT_SAGGING)
        .findFirst()
        .flatMap(Row::built)
        .orElseThrow()
        .value();
  }

  /**
   * By Hankinson, 10° off: pulled 90·3/(90·0.03015 + 3·0.96985) = 47.99 MPa, pushed 120·40/(…)
   * more; Z 26 667 mm³. By each stress alone it would bear 90/0.96985 MPa.
   */
  @Test
  void whatActsAlongAndAcrossAddsUp() {
    double sin = Math.sin(Math.toRadians(10));
    double pulled = 90 * 3 / (90 * sin * sin + 3 * (1 - sin * sin));
    assertThat(moment("90 MPa", "120 MPa", "3 MPa", "40 MPa"))
        .isCloseTo(pulled * 100 * 40 * 40 / 6 / 1000, within(1e-6));
  }

  @Test
  void theLesserOfBothCounts() {
    double bent = moment("90 MPa", "40 MPa", "3 MPa", "6 MPa");
    assertThat(bent).isPositive();
    // Pulled it bears more: pushed half as hard it breaks at half the moment.
    assertThat(moment("180 MPa", "40 MPa", "6 MPa", "6 MPa")).isCloseTo(bent, within(1e-9 * bent));
    assertThat(moment("90 MPa", "20 MPa", "3 MPa", "3 MPa"))
        .isCloseTo(bent / 2, within(1e-9 * bent));
    assertThat(moment("40 MPa", "90 MPa", "6 MPa", "60 MPa")).isCloseTo(bent, within(1e-9 * bent));
  }
}
