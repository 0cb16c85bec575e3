package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/** When a substitution may be built, and why not. */
class SubstitutionStandingsTest {
  private static final String ASSESSED =
      """
      assessments:
        - {id: ext, method: external, by: office, on: 2026-02-01, require: {stiffness: 1, strength: 1}, numbers: {stiffness: 1.1, strength: 1.1}, evidence: [{file: there/a.pdf}]}
      """;

  private static final String PROPOSED = "proposed: {by: nora, on: 2026-01-30}, ";
  private static final String LETTER =
      ", evidence: [{file: there/letter.txt, sha256: "
          + "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855}]";

  private static SubstitutionStanding standing(String before, String substitution, String today) {
    Ledger ledger =
        Sample.ledger(
            before
                + "substitutions:\n  - {id: sub, instead-of: {what: spruce, qty: 8 m}, why: here, "
                + substitution
                + "}\n");
    return SubstitutionStandings.on(Facts.of(ledger, LocalDate.parse(today))).all().get(0);
  }

  private static SubstitutionStanding standing(String before, String substitution) {
    return standing(before, substitution, "2026-03-02");
  }

  /** Structural, assessed, signed with a letter for what it says, and whatever else is asked. */
  private static SubstitutionStanding structural(String by, String on, String more) {
    String record =
        "grade: structural, "
            + PROPOSED
            + "assessment: ext, sign-offs: [{by: %s, on: %s, covers: %%s%s%s}]"
                .formatted(by, on, LETTER, more);
    String covers =
        standing(ASSESSED, record.formatted("0".repeat(12)))
            .signatures()
            .get(0)
            .statement()
            .fingerprint()
            .brief();
    return standing(ASSESSED, record.formatted(covers));
  }

  @Test
  void anAssessmentThatIsNamedButCannotBeReadIsNotCalledMissing() {
    Ledger ledger =
        Sample.ledger(
            "substitutions: [{id: sub, instead-of: {what: spruce, qty: 8 m}, why: here, grade:"
                + " structural, assessment: lost}]\n");
    var unassessed = new SubstitutionUnassessed();
    var finding = Sample.findings(unassessed, ledger, Sample.TODAY).get(0);
    assertThat(finding.what()).endsWith("has no assessment that can be read: “lost”.");
    assertThat(finding.mend()).startsWith("Mend what is wrong with “lost”, or record it");
  }

  @Test
  void aVerdictThatWasSeenMayBeWrittenWithoutItsEnding() {
    assertThat(saw("passes")).isEmpty();
    assertThat(saw("pass")).isEmpty();
    assertThat(saw("fail")).hasSize(1);
  }

  private static java.util.List<?> saw(String verdict) {
    Ledger ledger =
        Sample.ledger(
            ASSESSED
                + "substitutions: [{id: sub, instead-of: {what: spruce, qty: 8 m}, why: here,"
                + " grade: finish, assessment: ext, sign-offs: [{by: nora, on: 2026-02-12, saw:"
                + " {verdict: "
                + verdict
                + "}}]}]\n");
    return Sample.findings(
        new VoidSignature(VoidSignature.Why.VERDICT_TURNED), ledger, Sample.TODAY);
  }

  @Test
  void whoeverWasEntitledOrHasAnotherRoleIsToldHowThatIsWritten() {
    assertThat(notEntitled("nora", "structural"))
        .isEqualTo(
            "Have it signed by a designer, engineer or surveyor whose “may-sign” holds this grade"
                + " on that day; or, if the role of Nora is wrong, correct it, and write"
                + " “structural” into their “may-sign”.");
    assertThat(notEntitled("nora", "systems"))
        .isEqualTo(
            "Have it signed by somebody whose “may-sign” holds this grade on that day; or, if Nora"
                + " was entitled then, write “systems” into their “may-sign”.");
  }

  private static String notEntitled(String by, String grade) {
    Ledger ledger =
        Sample.ledger(
            "substitutions: [{id: sub, instead-of: {what: spruce, qty: 8 m}, why: here, grade: "
                + (grade + ", sign-offs: [{by: " + by + ", on: 2026-02-12}]}]\n"));
    var rule = new VoidSignature(VoidSignature.Why.NOT_ENTITLED);
    return Sample.findings(rule, ledger, Sample.TODAY).get(0).mend();
  }

  @Test
  void aStructuralOneNeedsAnAssessmentAndASecondPersonEntitled() {
    SubstitutionStanding approved = structural("office", "2026-02-12", "");
    assertThat(approved.isApproved()).isTrue();
    assertThat(approved.lacks()).isEmpty();
    assertThat(approved.signedOn()).contains(LocalDate.of(2026, 2, 12));
    assertThat(standing("", "grade: structural").lacks())
        .containsExactly(Lack.NO_ASSESSMENT, Lack.PROPOSER_UNKNOWN, Lack.UNSIGNED);
  }

  @Test
  void aSignatureSaysWhyItDoesNotCount() {
    assertThat(structural("nora", "2026-02-12", "").lacks())
        .containsExactly(Lack.NOT_ENTITLED, Lack.BY_PROPOSER);
    assertThat(structural("office", "2026-01-31", "").lacks())
        .containsExactly(Lack.BEFORE_ASSESSMENT);
    assertThat(structural("stranger", "2026-02-12", "").lacks()).containsExactly(Lack.NOT_ENTITLED);
    String signed =
        "grade: structural, "
            + PROPOSED
            + "assessment: ext, sign-offs: [{by: office, on: 2026-02-12";
    assertThat(standing(ASSESSED, signed + LETTER + "}]").lacks())
        .containsExactly(Lack.COVERS_NOTHING);
    assertThat(standing(ASSESSED, signed + ", covers: 7c1f00000000" + LETTER + "}]").lacks())
        .containsExactly(Lack.STALE);
    assertThat(standing(ASSESSED, signed + ", covers: 7c1f00000000}]").lacks())
        .containsExactly(Lack.NO_LETTER, Lack.STALE);
  }

  @Test
  void oneSignatureThatCountsIsEnough() {
    SubstitutionStanding standing =
        standing(
            "",
            "grade: finish, sign-offs: [{by: ivo, on: 2026-02-10}, {by: office, on: 2026-02-12}]");
    assertThat(standing.isApproved()).isTrue();
    assertThat(standing.signatures()).extracting(Signature::counts).containsExactly(false, true);
  }

  @Test
  void aSignatureOfAnyDayAfterTodayIsNotGivenYet() {
    assertThat(standing("", "grade: finish, sign-offs: [{by: nora, on: 2026-03-03}]").lacks())
        .containsExactly(Lack.UNSIGNED);
  }

  @Test
  void aFinishItemMayBeSignedByItsProposerWithoutAssessmentOrFingerprint() {
    assertThat(
            standing(
                    "",
                    "grade: finish, proposed: {by: nora, on: 2026-01-30}, sign-offs: [{by: nora,"
                        + " on: 2026-01-30}]")
                .isApproved())
        .isTrue();
  }

  @Test
  void aSystemsItemNeedsSomebodyEntitledToSystems() {
    assertThat(
            standing(
                    "",
                    "grade: systems, sign-offs: [{by: nora, on: 2026-02-12, covers: 7c1f00000000}]")
                .lacks())
        .containsExactly(Lack.NOT_ENTITLED, Lack.STALE);
  }

  @Test
  void anAssessmentThatFailsStandsInTheWayOfEveryGrade() {
    String failing =
        ASSESSED.replace(", strength: 1}", "}").replace("stiffness: 1.1", "stiffness: 0.9");
    assertThat(
            standing(
                    failing,
                    "grade: finish, assessment: ext, sign-offs: [{by: nora, on: 2026-02-12}]")
                .lacks())
        .containsExactly(Lack.ASSESSMENT_FAILS);
    String open = ASSESSED.replace("by: office, ", "");
    assertThat(standing(open, "grade: structural, " + PROPOSED + "assessment: ext").lacks())
        .containsExactly(Lack.ASSESSMENT_OPEN, Lack.UNSIGNED);
  }

  /** What cannot be told, what nobody asked and a limit that nobody explains stop the gravest. */
  @Test
  void onlyAStructuralOneNeedsAllThatAnAssessmentMayLack() {
    String open =
        ASSESSED.replace("numbers: {stiffness: 1.1, strength: 1.1}", "numbers: {stiffness: 1.1}");
    String little =
        ASSESSED.replace("stiffness: 1, strength: 1}, numbers", "stiffness: 1}, numbers");
    String lower = ASSESSED.replace("strength: 1}, numbers", "strength: 0.5}, numbers");
    String stiff = "require: {stiffness: %s}, numbers: {%s: 1.1}";
    String of = ASSESSED.replaceFirst("require: .*?}, numbers: .*?}", "%s");
    for (String grade : List.of("systems", "finish")) {
      for (String lacking :
          List.of(
              "",
              of.formatted(stiff.formatted("1", "stiffness")),
              of.formatted(stiff.formatted("0.5", "stiffness")),
              of.formatted(stiff.formatted("1", "mass")))) {
        assertThat(standing(lacking, "grade: " + grade + lent(lacking)).lacks())
            .as(grade + " " + lacking)
            .doesNotContainAnyElementsOf(OF_ASSESSMENT);
      }
    }
    String structural = "grade: structural";
    assertThat(standing(open, structural + lent(open)).lacks()).contains(Lack.ASSESSMENT_OPEN);
    assertThat(standing(little, structural + lent(little)).lacks()).contains(Lack.ASKS_TOO_LITTLE);
    assertThat(standing(lower, structural + lent(lower)).lacks()).contains(Lack.LIMIT_UNEXPLAINED);
    assertThat(standing("", structural).lacks()).contains(Lack.NO_ASSESSMENT);
    assertThat(standing(ASSESSED, structural + lent(ASSESSED)).lacks())
        .doesNotContainAnyElementsOf(OF_ASSESSMENT);
  }

  private static final List<Lack> OF_ASSESSMENT =
      List.of(
          Lack.NO_ASSESSMENT,
          Lack.ASKS_TOO_LITTLE,
          Lack.LIMIT_UNEXPLAINED,
          Lack.ASSESSMENT_OPEN,
          Lack.ASSESSMENT_FAILS);

  private static String lent(String assessed) {
    return assessed.isEmpty() ? "" : ", assessment: ext";
  }

  @Test
  void anUnmetConditionVoidsTheSignature() {
    String section = "sections: [{id: tube, shape: tube, dimensions: {wall: 2 mm}}]\n";
    SubstitutionStanding standing =
        standing(
            section,
            "grade: finish, sign-offs: [{by: nora, on: 2026-02-12, conditions: [{section: tube,"
                + " at-least: {wall: 3 mm}}, sand it]}]");
    assertThat(standing.lacks()).containsExactly(Lack.CONDITION_UNMET);
  }

  @Test
  void aWithdrawnOneIsWithdrawnFromThatDay() {
    String record = "grade: structural, withdrawn: 2026-02-20";
    assertThat(standing("", record, "2026-02-19").state())
        .isEqualTo(SubstitutionStanding.State.WAITING);
    assertThat(standing("", record, "2026-02-20").state())
        .isEqualTo(SubstitutionStanding.State.WITHDRAWN);
  }

  @Test
  void theHoldPointHoldsUntilSigned() {
    String task = "tasks: [{id: close, what: Close it, takes: 1 d%s}]\n";
    String signed = "grade: finish, hold: close, sign-offs: [{by: nora, on: 2026-02-12}]";
    String unsigned = "grade: finish, hold: close";
    assertThat(hold(task.formatted(""), unsigned)).isEqualTo(HoldPoint.State.HOLDS);
    assertThat(hold(task.formatted(""), signed)).isEqualTo(HoldPoint.State.RELEASED);
    assertThat(hold(task.formatted(", started: 2026-02-12"), signed))
        .isEqualTo(HoldPoint.State.RELEASED);
    assertThat(hold(task.formatted(", started: 2026-02-11"), signed))
        .isEqualTo(HoldPoint.State.PASSED);
    assertThat(hold(task.formatted(", started: 2026-03-03"), unsigned))
        .isEqualTo(HoldPoint.State.HOLDS);
    assertThat(hold(task.formatted(", progress: 10 %"), unsigned))
        .isEqualTo(HoldPoint.State.PASSED);
    assertThat(hold(task.formatted(", progress: 0"), unsigned)).isEqualTo(HoldPoint.State.HOLDS);
    assertThat(hold("", "grade: finish")).isEqualTo(HoldPoint.State.NONE);
  }

  @Test
  void aDayOfTheLogThatNamesTheTaskStartsIt() {
    String yaml =
        """
        tasks: [{id: close, what: Close it, takes: 1 d, started: 2026-02-20}]
        substitutions:
          - {id: sub, instead-of: {what: spruce, qty: 8 m}, why: here, grade: finish, hold: close, sign-offs: [{by: nora, on: 2026-02-12}]}
        ---
        day: 2026-02-10
        tasks: {close: 10 %}
        ---
        """;
    Ledger ledger = Sample.ledger(yaml);
    HoldPoint hold = SubstitutionStandings.on(Facts.of(ledger, Sample.TODAY)).all().get(0).hold();
    assertThat(hold.state()).isEqualTo(HoldPoint.State.PASSED);
    assertThat(hold.begun()).contains(LocalDate.of(2026, 2, 10));
  }

  @Test
  void aChangeAfterTheSignatureOvertakesWorkThatWasBegunInTime() {
    String task = "tasks: [{id: close, what: Close it, takes: 1 d, started: 2026-02-20}]\n";
    SubstitutionStanding standing =
        standing(
            task,
            "grade: finish, hold: close, sign-offs: [{by: nora, on: 2026-02-12, covers:"
                + " 7c1f00000000}]");
    assertThat(standing.lacks()).containsExactly(Lack.STALE);
    assertThat(standing.hold().state()).isEqualTo(HoldPoint.State.OVERTAKEN);
  }

  @Test
  void aShortageFindsItsSubstitutionByEitherReference() {
    Ledger ledger =
        Sample.ledger(
            """
            kit: [{id: stave-s, what: stave, qty: 14 m}]
            shortages:
              - {id: s1, item: stave-s, qty: 4 m, found: 2026-02-01, cause: not-packed}
              - {id: s2, item: stave-s, qty: 4 m, found: 2026-02-01, cause: not-packed, options: [{kind: substitute, substitution: b}]}
            substitutions:
              - {id: a, for: s1, instead-of: {what: spruce, qty: 4 m}, why: here, grade: finish}
              - {id: b, instead-of: {what: spruce, qty: 4 m}, why: here, grade: finish}
            """);
    SubstitutionStandings all = SubstitutionStandings.on(Facts.of(ledger, Sample.TODAY));
    assertThat(ids(all.answering("s1"))).containsExactly("a");
    assertThat(ids(all.answering("s2"))).containsExactly("b");
  }

  private static HoldPoint.State hold(String tasks, String substitution) {
    return standing(tasks, substitution).hold().state();
  }

  private static List<String> ids(List<SubstitutionStanding> standings) {
    return standings.stream().map(standing -> standing.substitution().id()).toList();
  }
}
