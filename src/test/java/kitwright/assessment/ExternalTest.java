package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An assessment that was worked out elsewhere is believed only as far as it shows itself. */
class ExternalTest {
  private static Verdict verdict(String fields) {
    Ledger ledger =
        Sample.ledger("assessments: [{id: ext, method: external, %s}]".formatted(fields));
    return Judging.on(Facts.of(ledger, Sample.TODAY))
        .assessments()
        .apply(ledger.assessments().get(0));
  }

  private static final String SHOWN = "by: office, on: 2026-02-01, evidence: [{file: there/a.pdf}]";

  @ParameterizedTest
  @CsvSource({
    "1.0, 1.2, PASS", // just enough, just not too heavy
    "0.999, 1.2, FAIL",
    "1.0, 1.201, FAIL"
  })
  void numbersAreHeldAgainstItsOwnRequirement(String strength, String mass, String outcome) {
    Verdict verdict =
        verdict(
            "require: {strength: 1}, allow: {mass: 1.2}, numbers: {strength: %s, mass: %s}, "
                    .formatted(strength, mass)
                + SHOWN);
    assertThat(verdict.outcome()).hasToString(outcome);
  }

  @Test
  void aFailureSaysWhichNumberMissesWhat() {
    assertThat(verdict("require: {strength: 1}, numbers: {strength: 0.9}, " + SHOWN).because())
        .isEqualTo("strength is 0.9, where at least 1 is required");
  }

  @Test
  void whatItDoesNotShowItDoesNotProve() {
    assertThat(verdict("require: {strength: 1, shear: 1}, numbers: {strength: 1}, " + SHOWN))
        .isEqualTo(Verdict.cannotTell(java.util.List.of("it gives no number for shear")));
    assertThat(verdict("require: {strength: 1}, numbers: {strength: 1}").reasons())
        .containsExactly(
            "it does not say who worked it out (“by”)",
            "it does not say when (“on”)",
            "it names no document (“evidence”)");
    assertThat(
            verdict(
                    "require: {strength: 1}, numbers: {strength: 1}, by: office, on: 2026-02-01, "
                        + "evidence: [{file: gone/a.pdf}]")
                .because())
        .isEqualTo("its document “gone/a.pdf” is not there");
    assertThat(verdict("numbers: {strength: 1}, " + SHOWN).outcome())
        .isEqualTo(Verdict.Outcome.CANNOT_TELL);
  }
}
