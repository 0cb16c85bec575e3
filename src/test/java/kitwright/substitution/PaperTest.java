package kitwright.substitution;

import static kitwright.substitution.SignedSample.RECORDS;
import static kitwright.substitution.SignedSample.with;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** The texts that are handed over to be signed, and those that were. */
class PaperTest {
  private static final String SIGNED = SignedSample.signed(RECORDS);
  private static final String UNSIGNED = SIGNED.substring(0, SIGNED.indexOf("    sign-offs:"));

  private static List<Paper> papers(String records, String by) {
    Facts day = Facts.of(Sample.ledger(records), Sample.TODAY);
    return Paper.of(
        SubstitutionStandings.on(day).all().get(0),
        Optional.of(by).filter(id -> !id.isEmpty()),
        day);
  }

  private static List<String> hows(String records, String by) {
    return papers(records, by).stream().map(Paper::how).toList();
  }

  @Test
  void whatIsSignedIsHandedOverOnceAsItWasSigned() {
    assertThat(hows(SIGNED, "")).containsExactly("signed by A. Osterlund");
    String early = with(SIGNED, "on: 2026-02-12", "on: 2026-01-29");
    assertThat(hows(early, "").get(0)).isEqualTo("signed by A. Osterlund, which does not count");
  }

  @Test
  void beforeItIsSignedThereIsOneTextForEachWhoMay() {
    assertThat(hows(UNSIGNED, ""))
        .containsExactly("to be signed by A. Osterlund", "to be signed by T. Bryde");
    assertThat(hows(UNSIGNED, "bryde")).containsExactly("to be signed by T. Bryde");
  }

  @Test
  void whoeverMayNotSignCanReadIt() {
    assertThat(hows(UNSIGNED, "nora")).containsExactly("for Nora, who may not sign it");
    assertThat(hows(SIGNED, "pell")).containsExactly("for Pell, who may not sign it");
    assertThat(hows(UNSIGNED, "nobody")).isEmpty();
  }

  @Test
  void belowTheTextStandsWhatMakesItsDigitsAndWhatIsNotSealed() {
    Paper paper = papers(SIGNED, "").get(0);
    String digits = SignedSample.statement(RECORDS).fingerprint().toString();
    assertThat(paper.line()).isEqualTo(digits + "  sub, signed by A. Osterlund");
    assertThat(paper.text())
        .startsWith(SignedSample.statement(RECORDS).text() + "\n-----\n")
        .contains("\n" + digits + "\n\nNot sealed:\n  signed by A. Osterlund\n")
        .contains(
            "saw: {verdict: passes, mass: 1.2, reserve: 1.4, stiffness: 1.1, strength: 0.95}\n")
        .endsWith("Files cannot prove who wrote a sign-off, or on which day.\n\n");
    String without = with(UNSIGNED, "    assessment: spar\n", "");
    assertThat(papers(without, "bryde").get(0).text())
        .contains("  nothing was worked out: there is no assessment\n");
  }
}
