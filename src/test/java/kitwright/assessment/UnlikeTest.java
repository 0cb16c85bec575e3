package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import kitwright.Sample;
import kitwright.assessment.sheet.Verdict;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/**
 * Solid timber bears more by its modulus of rupture than by its compression, by which a hollow part
 * of the same wood is judged (Wood Handbook, chapter 5: modulus of rupture is no true stress). Here
 * rupture is 60 MPa and compression 40. The hollow beam bears 40·(40·60³ − 20·30³)/12/30 = 900 N·m;
 * the solid one 60·40·54²/6 = 1166 N·m, or 778 N·m judged like it.
 */
class UnlikeTest {
  private static final String BEAMS =
      """
      build: {name: Sample, currency: EUR, started: 2026-01-05}
      materials:
        - {id: wood, kind: timber, scatter: 5 %, density: 500 kg/m3, E: 12 GPa, G: 0.75 GPa, bending-strength: 60 MPa, tensile-strength: 60 MPa, compressive-strength: 40 MPa, shear-strength: 8 MPa, source: test}
        - {id: half-known, kind: timber, scatter: 5 %, density: 500 kg/m3, E: 12 GPa, G: 0.75 GPa, bending-strength: 60 MPa, shear-strength: 8 MPa, source: test}
      sections:
        - {id: solid, width: 40 mm, layers: [{material: wood, thickness: 54 mm}]}
        - {id: solid-half-known, width: 40 mm, layers: [{material: half-known, thickness: 54 mm}]}
        - id: hollow
          width: 40 mm
          layers:
            - {material: wood, thickness: 15 mm}
            - {thickness: 30 mm, strips: [{material: wood, width: 10 mm}, {void: 20 mm}, {material: wood, width: 10 mm}]}
            - {material: wood, thickness: 15 mm}
      """;

  /** 1166 over 900 N·m by its modulus of rupture, 778 over 900 with both by compression. */
  @Test
  void aSolidPartForAHollowOneThatIsStrongInOneWayOfJudgingCannotBeTold() {
    Verdict verdict = verdict("designed: hollow, built: solid, require: {moment: 1.0}");
    assertThat(verdict.outcome()).isEqualTo(Verdict.Outcome.CANNOT_TELL);
    assertThat(verdict.reasons())
        .containsExactly(
            "moment at first failure, tension below is 1.296 of the design value with the solid"
                + " part judged by its modulus of rupture, and 0.864 with both judged by tension"
                + " and compression: whether it is at least 1 depends on the way of judging",
            "moment at first failure, tension above is 1.296 of the design value with the solid"
                + " part judged by its modulus of rupture, and 0.864 with both judged by tension"
                + " and compression: whether it is at least 1 depends on the way of judging");
    assertThat(verdict("designed: hollow, built: solid, require: {moment: 0.86}").passes())
        .isTrue();
    assertThat(verdict("designed: hollow, built: solid, require: {moment: 1.3}").fails()).isTrue();
  }

  /** Told the same way round: 0.771 and 1.157 of the design value. */
  @Test
  void aHollowPartForASolidOneIsNotFailedByAnotherWayOfJudging() {
    assertThat(verdict("designed: solid, built: hollow, require: {moment: 0.77}").passes())
        .isTrue();
    Verdict verdict = verdict("designed: solid, built: hollow, require: {moment: 1.0}");
    assertThat(verdict.outcome()).isEqualTo(Verdict.Outcome.CANNOT_TELL);
    assertThat(verdict.because())
        .contains("0.771 of the design value")
        .contains("and 1.157 with both");
    assertThat(verdict("designed: solid, built: hollow, require: {moment: 1.16}").fails()).isTrue();
  }

  @Test
  void withoutItsCompressionASolidPartIsNotSetBesideAHollowOne() {
    Verdict verdict = verdict("designed: hollow, built: solid-half-known, require: {moment: 1.0}");
    assertThat(verdict.outcome()).isEqualTo(Verdict.Outcome.CANNOT_TELL);
    assertThat(verdict.because())
        .isEqualTo(
            "solid-half-known has no known strength in tension and compression, by which hollow is"
                + " judged");
  }

  @Test
  void aSolidPartThatIsProtectedMustOutlastTheHollowOneJudgedLikeIt() {
    String asked =
        "designed: hollow, built: hollow, require: {moment: 1.0}, load: {tip-force: 3 N, span: 1 m,"
            + " source: test}, weak-link: {sacrificial: hollow, protected: %s, breaks-at: 0 mm,"
            + " margin: %s}";
    assertThat(verdict(asked.formatted("solid", "1.1")).reasons())
        .containsExactly(
            "strength of protected part ÷ part meant to break, by their means is 1.296 with"
                + " the solid part judged by its modulus of rupture, and 0.864 with both judged by"
                + " tension and compression: whether it is at least 1.1 depends on the way of"
                + " judging");
    assertThat(verdict(asked.formatted("solid", "0.86")).reasons())
        .containsExactly(
            "the margin of its weak link is 0.86, and it is at least 1: below it the protected part"
                + " breaks first");
    assertThat(verdict(asked.formatted("solid-half-known", "1.1")).outcome())
        .isEqualTo(Verdict.Outcome.CANNOT_TELL);
  }

  private static Verdict verdict(String asked) {
    String text = BEAMS + "assessments:\n  - {id: a, method: section, " + asked + "}\n";
    Findings faults = new Findings();
    Ledger ledger = Sample.read(Map.of("kitwright.yaml", text), faults).orElseThrow();
    assertThat(faults.inOrder()).isEmpty();
    return Assessments.result(ledger.assessments().get(0), ledger).verdict();
  }
}
