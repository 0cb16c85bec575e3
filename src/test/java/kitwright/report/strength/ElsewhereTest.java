package kitwright.report.strength;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.assessment.Assessments;
import kitwright.ledger.Ledger;
import kitwright.report.Told;
import kitwright.report.words.Sheet;
import org.junit.jupiter.api.Test;

/**
 * The sheet of an assessment worked out elsewhere says who, when, how much, and by what document.
 */
class ElsewhereTest {
  private static final String YAML =
      """
      assessments:
        - id: ext
          method: external
          by: office
          on: 2026-02-01
          require: {stiffness: 1, strength: 0.8, reserve: 1}
          less-because: {strength: the stay helps}
          allow: {mass: 1.2}
          numbers: {stiffness: 1.1, strength: 0.85, mass: 1.3}
          sources: [a bench test]
          evidence: [{file: there/sum.pdf, says: the sum}, {file: gone/old.pdf}]
      """;

  private static String words(String yaml) {
    Ledger ledger = Sample.ledger(yaml);
    Sheet sheet = CalculationSheet.of(Assessments.of(ledger).of("ext").orElseThrow(), ledger);
    return Told.words(Told.markdown(sheet));
  }

  @Test
  void saysWhoWhenHowMuchAndByWhatDocument() {
    assertThat(words(YAML))
        .contains("worked out by A. Osterlund, 2026-02-01")
        .contains("document: there/sum.pdf, the sum, as it is now; no hash was recorded")
        .contains("document: gone/old.pdf, which is not there")
        .contains("source: a bench test")
        .contains("of strength only 0.8 is asked: the stay helps");
  }

  @Test
  void holdsEachNumberAgainstItsLimit() {
    Ledger ledger = Sample.ledger(YAML);
    Sheet sheet = CalculationSheet.of(Assessments.of(ledger).of("ext").orElseThrow(), ledger);
    assertThat(Told.tables(Told.markdown(sheet)).get(0))
        .containsExactly(
            List.of("Measure", "Number", "Asked", "Verdict"),
            List.of("mass", "1.3", "at most 1.2", "fails"),
            List.of("reserve", "–", "at least 1", "cannot be told"),
            List.of("stiffness", "1.1", "at least 1", "passes"),
            List.of("strength", "0.85", "at least 0.8", "passes"));
  }

  @Test
  void aLimitBelowOneWithoutAReasonSaysSo() {
    assertThat(words(YAML.replace("    less-because: {strength: the stay helps}\n", "")))
        .contains("of strength only 0.8 is asked: no reason is given");
  }
}
