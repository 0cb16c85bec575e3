package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/** Which value moves the verdict most, and what measured value would settle it. */
class SensitivityTest {
  private static List<String> lines(String modulus) {
    return lines(modulus, "require: {stiffness: 0.98}");
  }

  private static List<String> lines(String modulus, String asked) {
    Ledger ledger =
        Sample.ledger(
            """
            materials:
              - {id: drawn-wood, kind: timber, basis: mean, density: 420 kg/m3, E: 10 GPa, G: 0.6 GPa, bending-strength: 60 MPa, shear-strength: 8 MPa, source: t}
              - {id: own-wood, kind: timber, basis: mean, density: 420 kg/m3, E: %s, G: 0.6 GPa, bending-strength: 60 MPa, shear-strength: 8 MPa, source: t}
            sections:
              - {id: one, width: 60 mm, layers: [{material: drawn-wood, thickness: 50 mm}]}
              - {id: other, width: 60 mm, layers: [{material: own-wood, thickness: 50 mm}]}
            assessments:
              - {id: a, method: section, designed: one, built: other, %s}
            """
                .formatted(modulus, asked));
    Result result = Assessments.on(Facts.of(ledger, Sample.TODAY)).all().get(0);
    return Sensitivity.of(result, ledger);
  }

  /** 0.98 of 10 GPa is 9.8. */
  @Test
  void aMeasuredValueThatMakesItPassIsNamed() {
    assertThat(lines("9 GPa"))
        .contains(
            "1 % more E of own-wood moves the margin of “bending stiffness EI” by +0.9 %; a"
                + " measured value above 9.8 GPa makes it pass");
  }

  @Test
  void aValueBelowWhichItFailsIsNamed() {
    assertThat(lines("11 GPa"))
        .contains(
            "1 % more E of own-wood moves the margin of “bending stiffness EI” by +1.1 %; below 9.8"
                + " GPa it is missed");
  }

  @Test
  void whatMovesNothingIsNotTold() {
    assertThat(lines("9 GPa")).hasSize(2).noneMatch(line -> line.contains("density"));
  }

  /** Of what a slim beam gives shear is a few parts in ten thousand: printed it would be +0.0 %. */
  @Test
  void whatWouldBePrintedAsNothingIsNotTold() {
    assertThat(
            lines(
                "9 GPa",
                "allow: {deflection: 2}, load: {tip-force: 1 N, span: 3 m, factor: 1, source:"
                    + " t}"))
        .hasSize(2)
        .allMatch(line -> line.contains(" E of "));
  }
}
