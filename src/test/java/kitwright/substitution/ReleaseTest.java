package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;
import kitwright.value.Place;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;

/** Work goes on only while what it closes up may be built today. */
class ReleaseTest {
  private static final String RECORDS =
      """
      tasks:
        - {id: close, what: Close it, takes: 1 d%s}
        - {id: paint, what: Paint it, takes: 1 d}
      assessments:
        - {id: ext, method: external, by: office, on: 2026-02-01, require: {stiffness: 1, strength: 1}, numbers: {stiffness: 1, strength: %s}, evidence: [{file: there/a.pdf}]}
      substitutions:
        - {id: sub, instead-of: {what: spruce, qty: 8 m}, why: here, grade: structural, assessment: ext, hold: close, proposed: {by: nora, on: 2026-02-01}%s}
      """;

  private static Ledger ledger(String task, String strength, String more) {
    return Sample.ledger(RECORDS.formatted(task, strength, more));
  }

  /** Signed on 12 February for what the record says with that strength. */
  private static String signed(String strength) {
    String signOff =
        ", sign-offs: [{by: office, on: 2026-02-12, covers: %s, evidence: [{file: there/letter.txt,"
            + " sha256: e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855}]}]";
    Ledger ledger = ledger("", strength, signOff.formatted("0".repeat(12)));
    Substitution substitution = ledger.substitutions().get(0);
    return signOff.formatted(
        Statement.of(substitution, substitution.signOffs().get(0), ledger).fingerprint().brief());
  }

  private static SubstitutionStandings standings(Ledger ledger) {
    return SubstitutionStandings.on(Facts.of(ledger, Sample.TODAY));
  }

  private static boolean mayClose(Ledger ledger, String task) {
    Ref ref = new Ref(task, new Place("sample.yaml", 1, 1, 1, 1));
    return Release.on(Facts.of(ledger, Sample.TODAY)).isGiven(ledger.task(ref).orElseThrow());
  }

  /** What a structural part is made of and instead of is not used before somebody has signed. */
  @Test
  void withoutAHoldPointWhateverUsesItsStuffWaits() {
    String records =
        """
        kit: [{id: stave, what: stave, qty: 4}, {id: ply, what: plywood, qty: 4}, {id: nail, what: nail, qty: 9}]
        stock: [{id: larch, what: larch board, qty: 4 each}]
        tasks:
          - {id: glue, what: Glue, takes: 1 d, uses: [{item: stave, qty: 2}]}
          - {id: sheathe, what: Sheathe, takes: 1 d, uses: [{item: ply, qty: 1}]}
          - {id: plane, what: Plane, takes: 1 d, uses: [{stock: larch, qty: 1 each}]}
          - {id: nail-up, what: Nail, takes: 1 d, uses: [{item: nail, qty: 2}]}
        substitutions:
          - {id: sub, instead-of: {item: stave, qty: 2}, use: [{stock: larch, qty: 2 each}, {item: ply, qty: 1}], why: here, grade: GRADE, proposed: {by: nora, on: 2026-02-01}MORE}
        """;
    Ledger open = Sample.ledger(records.replace("GRADE", "structural").replace("MORE", ""));
    assertThat(List.of("glue", "sheathe", "plane")).noneMatch(task -> mayClose(open, task));
    assertThat(mayClose(open, "nail-up")).isTrue();
    Ledger finish = Sample.ledger(records.replace("GRADE", "finish").replace("MORE", ""));
    assertThat(mayClose(finish, "glue")).as("nothing much depends on it").isTrue();
    Ledger withdrawn =
        Sample.ledger(
            records.replace("GRADE", "structural").replace("MORE", ", withdrawn: 2026-02-20"));
    assertThat(mayClose(withdrawn, "glue")).isTrue();
    Ledger named =
        Sample.ledger(records.replace("GRADE", "structural").replace("MORE", ", hold: nail-up"));
    assertThat(mayClose(named, "nail-up")).isFalse();
    assertThat(mayClose(named, "glue")).as("it says what waits").isTrue();
  }

  private static Ledger finish(String signed) {
    return Sample.ledger(
        """
        tasks: [{id: close, what: Close it, takes: 1 d}]
        substitutions:
          - {id: sub, instead-of: {what: spruce, qty: 8 m}, why: here, grade: finish, hold: close, proposed: {by: nora, on: 2026-02-10}, sign-offs: [{by: office, on: %s}]}
        """
            .formatted(signed));
  }

  @Test
  void aSignatureFromBeforeTheProposalLetsNothingGoWhateverTheGrade() {
    assertThat(mayClose(finish("2026-02-10"), "close")).isTrue();
    assertThat(mayClose(finish("2026-02-09"), "close")).isFalse();
    assertThat(standings(finish("2026-02-09")).all().get(0).lacks())
        .containsExactly(Lack.BEFORE_PROPOSAL);
  }

  @Test
  void aSubstitutionThatCannotBeReadLetsNothingGo() {
    Ledger ledger =
        Sample.read(RECORDS.formatted("", "1", signed("1") + ", ghost: 1"), new Findings())
            .orElseThrow();
    assertThat(ledger.substitutions()).isEmpty();
    assertThat(mayClose(ledger, "close")).isFalse();
    assertThat(mayClose(ledger, "paint")).isTrue();
  }

  private static String sealed(String... signatures) {
    String all = ", sign-offs: [" + String.join(", ", signatures) + "]";
    Ledger ledger = finishOf(all.replace("NOW", "0".repeat(12)));
    Substitution substitution = ledger.substitutions().get(0);
    String now =
        Statement.of(substitution, substitution.signOffs().get(0), ledger).fingerprint().brief();
    return all.replace("NOW", now);
  }

  private static Ledger finishOf(String signOffs) {
    return Sample.ledger(
        """
        tasks: [{id: close, what: Close it, takes: 1 d}]
        substitutions:
          - {id: sub, instead-of: {what: spruce, qty: 8 m}, why: here, grade: finish, hold: close, proposed: {by: nora, on: 2026-02-10}%s}
        """
            .formatted(signOffs));
  }

  private static final String NOW = "{by: office, on: %s, covers: NOW}";
  private static final String OTHER = "{by: %s, on: %s, covers: 111111111111}";

  @Test
  void ofOneSignerTheLastWordCounts() {
    String now = NOW.formatted("2026-02-12");
    assertThat(mayClose(finishOf(sealed(now)), "close")).isTrue();
    Ledger later = finishOf(sealed(now, OTHER.formatted("office", "2026-02-14")));
    assertThat(mayClose(later, "close")).isFalse();
    assertThat(standings(later).all().get(0).lacks()).containsExactly(Lack.SUPERSEDED, Lack.STALE);
    assertThat(mayClose(finishOf(sealed(now, OTHER.formatted("office", "2026-02-12"))), "close"))
        .as("of one day the one that stands last")
        .isFalse();
    assertThat(mayClose(finishOf(sealed(now, OTHER.formatted("office", "2026-02-11"))), "close"))
        .as("signed anew after a change")
        .isTrue();
    assertThat(mayClose(finishOf(sealed(now, OTHER.formatted("nora", "2026-02-14"))), "close"))
        .as("somebody else’s word takes nothing from it")
        .isTrue();
  }

  @Test
  void whatWasSignedWhenTheWorkBeganIsNotPassedByALaterWord() {
    Ledger ledger =
        finishOf(sealed(NOW.formatted("2026-02-12"), OTHER.formatted("office", "2026-02-25")));
    Ledger begun =
        Sample.ledger(
            """
            tasks: [{id: close, what: Close it, takes: 1 d, started: 2026-02-20}]
            substitutions:
              - {id: sub, instead-of: {what: spruce, qty: 8 m}, why: here, grade: finish, hold: close, proposed: {by: nora, on: 2026-02-10}%s}
            """
                .formatted(
                    sealed(NOW.formatted("2026-02-12"), OTHER.formatted("office", "2026-02-25"))));
    assertThat(hold(ledger)).isEqualTo(HoldPoint.State.HOLDS);
    assertThat(hold(begun)).isEqualTo(HoldPoint.State.OVERTAKEN);
  }

  /** A slip in the name of the held task must not let that task go. */
  @Test
  void aHoldOnATaskThatNobodyKnowsMayBeOnAny() {
    String yaml =
        """
        tasks: [{id: close, what: Close it, takes: 1 d}, {id: paint, what: Paint it, takes: 1 d}]
        substitutions:
          - {id: sub, instead-of: {what: spruce, qty: 8 m}, why: here, grade: finish, hold: %s, proposed: {by: nora, on: 2026-02-10}%s}
        """;
    Ledger slip = Sample.read(yaml.formatted("clsoe", ""), new Findings()).orElseThrow();
    assertThat(mayClose(slip, "close")).isFalse();
    assertThat(mayClose(slip, "paint")).isFalse();
    assertThat(mayClose(Sample.ledger(yaml.formatted("close", "")), "paint")).isTrue();
    String signed = ", sign-offs: [{by: office, on: 2026-02-12}]";
    Ledger released = Sample.read(yaml.formatted("clsoe", signed), new Findings()).orElseThrow();
    assertThat(mayClose(released, "close")).isTrue();
  }

  private static HoldPoint.State hold(Ledger ledger) {
    return standings(ledger).all().get(0).hold().state();
  }

  private static Finding passed(Ledger ledger) {
    List<Finding> found = Sample.findings(new HoldPointPassed(), ledger, Sample.TODAY);
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  @Test
  void nothingUnsignedFailingOrChangedSinceReleasesItsTask() {
    assertThat(mayClose(ledger("", "1.1", signed("1.1")), "close")).isTrue();
    assertThat(mayClose(ledger("", "1.1", ""), "close")).isFalse();
    assertThat(mayClose(ledger("", "0.9", signed("0.9")), "close")).isFalse();
    assertThat(mayClose(ledger("", "1.2", signed("1.1")), "close")).isFalse();
    assertThat(mayClose(ledger("", "1.1", ""), "paint")).isTrue();
  }

  @Test
  void aHoldPointIsReleasedOnlyWhereThePartMayBeBuiltToday() {
    assertThat(hold(ledger("", "1.1", signed("1.1")))).isEqualTo(HoldPoint.State.RELEASED);
    assertThat(hold(ledger("", "1.2", signed("1.1")))).isEqualTo(HoldPoint.State.HOLDS);
    assertThat(hold(ledger(", started: 2026-02-20", "1.1", signed("1.1"))))
        .isEqualTo(HoldPoint.State.RELEASED);
    assertThat(hold(ledger(", started: 2026-02-20", "1.2", signed("1.1"))))
        .isEqualTo(HoldPoint.State.OVERTAKEN);
    assertThat(hold(ledger(", started: 2026-02-11", "1.2", signed("1.1"))))
        .isEqualTo(HoldPoint.State.PASSED);
    assertThat(hold(ledger(", started: 2026-02-20", "0.9", signed("0.9"))))
        .as("a signature under a check that fails")
        .isEqualTo(HoldPoint.State.OVERTAKEN);
  }

  @Test
  void aBeginningOnADayThatNothingTellsMayHaveBeenBeforeTheSignature() {
    Ledger ledger = ledger(", progress: 10 %", "1.1", signed("1.1"));
    assertThat(hold(ledger)).isEqualTo(HoldPoint.State.PASSED);
    assertThat(passed(ledger).what())
        .isEqualTo(
            "The task close is under way, begun on a day that nothing tells, but sub was signed on"
                + " 12\u00a0February\u00a02026, perhaps only after that.");
    assertThat(passed(ledger).mend()).endsWith("Write the day on which it began under “started”.");
  }

  @Test
  void workBegunUnderAnOlderStatementIsStopped() {
    Finding found = passed(ledger(", started: 2026-02-20", "1.2", signed("1.1")));
    assertThat(found.what())
        .isEqualTo(
            "The task close is under way, begun on 20\u00a0February\u00a02026, but sub does not"
                + " stand today, though it was signed on 12\u00a0February\u00a02026: the record has"
                + " changed since it was signed.");
    assertThat(found.follows()).endsWith("it was signed under an older statement.");
    assertThat(found.mend()).startsWith("Stop the task");
  }

  @Test
  void whatHasEndedCannotBeStoppedButMayHaveToBeOpenedUp() {
    Finding closed = passed(ledger(", started: 2026-02-20, finished: 2026-02-21", "1.1", ""));
    assertThat(closed.what())
        .isEqualTo(
            "The task close has ended, begun on 20\u00a0February\u00a02026, but sub is not"
                + " signed.");
    assertThat(closed.follows()).contains("was closed up before anybody entitled had looked");
    assertThat(closed.mend())
        .startsWith("Ask the signer whether it may stay closed or must be opened up");
    Finding byProgress = passed(ledger(", started: 2026-02-20, progress: 100 %", "1.1", ""));
    assertThat(byProgress.what()).contains("has ended");
    Finding underWay = passed(ledger(", started: 2026-02-20, progress: 99 %", "1.1", ""));
    assertThat(underWay.what()).contains("is under way");
  }
}
