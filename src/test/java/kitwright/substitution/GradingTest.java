package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Grade;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/** How much hangs on a substitution that calls itself a matter of looks. */
class GradingTest {
  private static final String LEDGER =
      """
      kit: [{id: spruce, what: spruce, qty: 8 m%1$s}]
      tasks: [{id: close, what: Close the side, takes: 1 d%2$s}]
      sections: [{id: plank, shape: rectangle, material: western-redcedar, dimensions: {width: 60 mm, height: 20 mm}%3$s}]
      assessments: [{id: a, method: section, designed: plank, built: plank, %4$s}]
      substitutions:
        - {id: sub, instead-of: {item: spruce, qty: 8 m}, why: here, grade: %5$s, hold: close, assessment: a, proposed: {by: nora, on: 2026-02-01}}
      """;

  private static final String STIFF = "require: {stiffness: 1}";

  private static Grading of(String item, String task, String section, String assessment) {
    return of(item, task, section, assessment, "finish");
  }

  private static Grading of(
      String item, String task, String section, String assessment, String grade) {
    Ledger ledger = Sample.ledger(LEDGER.formatted(item, task, section, assessment, grade));
    return Grading.of(ledger.substitutions().get(0), ledger);
  }

  @Test
  void nothingThatItTouchesSaysMore() {
    assertThat(of("", "", "", STIFF)).isEqualTo(new Grading(Grade.FINISH, List.of(), false));
    assertThat(of(", grade: finish", ", grade: finish", ", grade: finish", STIFF).because())
        .isEmpty();
  }

  @Test
  void itIsNoLessThanWhatItReplacesHoldsOrIsMadeOf() {
    assertThat(of(", grade: systems", "", "", STIFF))
        .isEqualTo(
            new Grading(
                Grade.SYSTEMS, List.of("what it replaces, kit item spruce, is systems"), false));
    assertThat(of("", ", grade: systems", "", STIFF).because())
        .containsExactly("what it holds, task close, is systems");
    assertThat(of("", "", ", grade: structural", STIFF).because())
        .containsExactly("section plank is structural", "section plank is structural");
    assertThat(of(", grade: systems", ", grade: structural", ", grade: systems", STIFF).grade())
        .isEqualTo(Grade.STRUCTURAL);
    assertThat(of(", grade: systems", "", "", STIFF, "structural"))
        .isEqualTo(new Grading(Grade.STRUCTURAL, List.of(), false));
  }

  @Test
  void onlyWhatLooksStructuralMayBeSaidNotToBe() {
    String load = ", load: {shape: uniform, force: 10 N, span: 1 m, factor: 2, source: test}";
    assertThat(of("", "", "", STIFF + load).byLook()).isTrue();
    assertThat(of(", grade: structural", "", "", STIFF + load).byLook()).isFalse();
    assertThat(of(", grade: structural", "", "", STIFF).byLook()).isFalse();
  }

  @Test
  void whatIsAssessedForALoadForStrengthOrAsAWeakLinkIsStructural() {
    String load = "load: {shape: uniform, force: 10 N, span: 1 m, factor: 2, source: test}";
    assertThat(of("", "", "", STIFF + ", " + load).because())
        .containsExactly("its assessment states a load");
    String link = "weak-link: {sacrificial: plank, protected: plank, breaks-at: 1 m, margin: 1.5}";
    assertThat(of("", "", "", STIFF + ", " + link).because())
        .containsExactly("its assessment states a weak link");
    for (String measure : List.of("moment", "shear", "reserve", "moment-across")) {
      assertThat(of("", "", "", "require: {stiffness: 1, " + measure + ": 1}"))
          .isEqualTo(
              new Grading(Grade.STRUCTURAL, List.of("its assessment asks for " + measure), true));
    }
    assertThat(of("", "", "", STIFF + ", allow: {shear: 5 %}").because())
        .containsExactly("its assessment asks for shear");
  }

  /** The exception is one entitled person’s who did not propose it, on a day of his right. */
  @Test
  void thatItIsNotStructuralNobodySaysOfHisOwnProposal() {
    String said = "require: {moment: 1}, not-structural: {by: %s, on: 2026-02-14, why: looks}";
    assertThat(of("", "", "", said.formatted("office")).grade()).isEqualTo(Grade.FINISH);
    assertThat(of("", "", "", said.formatted("nora")).grade()).isEqualTo(Grade.STRUCTURAL);
    String own = LEDGER.replace("proposed: {by: nora", "proposed: {by: office");
    Ledger ledger = Sample.ledger(own.formatted("", "", "", said.formatted("office"), "finish"));
    assertThat(Grading.of(ledger.substitutions().get(0), ledger).grade())
        .isEqualTo(Grade.STRUCTURAL);
  }
}
