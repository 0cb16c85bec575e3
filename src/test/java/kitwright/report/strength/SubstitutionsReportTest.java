package kitwright.report.strength;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.report.Told;
import kitwright.substitution.SubstitutionStandings;
import org.junit.jupiter.api.Test;

class SubstitutionsReportTest {
  private static final String YAML =
      """
      kit: [{id: stave, what: stave, qty: 4 m}]
      stock: [{id: larch, what: larch board, qty: 5}]
      tasks: [{id: close, what: Close the spar, takes: 1 d, started: 2026-02-20}]
      substitutions:
        - id: u1
          instead-of: {item: stave, qty: 2 m}
          use: [{stock: larch, qty: 3}]
          grade: structural
          why: larch is here
          proposed: {by: nora, on: 2026-02-10}
          hold: close
      """;

  @Test
  void showsWhatASurveyorAsksFor() {
    String words = Told.words(Told.markdown(SubstitutionsReport::sheets, YAML));
    String fingerprint =
        SubstitutionStandings.on(Facts.of(Sample.ledger(YAML), Sample.TODAY))
            .all()
            .get(0)
            .signers()
            .get(0)
            .statement()
            .fingerprint()
            .digits();
    assertThat(words)
        .contains("Instead of: 2 m of stave")
        .contains("Taken: 3 × larch board")
        .contains("Proposed: Nora, 2026-02-10")
        .contains("Assessment: none, and this grade needs one")
        .contains("Signature: none")
        .contains(
            "“Close the spar” was started on 20 February 2026 without a signature that counts")
        .contains("To be signed by ", ": " + fingerprint.substring(0, 12));
    assertThat(Told.markdown(SubstitutionsReport::sheets, YAML))
        .contains("\n" + fingerprint + "  ");
  }

  @Test
  void stopsWhereTheHoldPointWasPassedAndCautions() {
    String words = Told.words(Told.markdown(SubstitutionsReport::sheets, YAML));
    assertThat(words)
        .contains("The hold point was passed without a signature at u1: stop there")
        .contains("does not replace the designer, a licensed naval architect or engineer");
  }
}
