package kitwright.loan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.ledger.Facts;
import kitwright.network.Plan;
import org.junit.jupiter.api.Test;

/** Tools that are late, gone too soon, or needed longer. Sample's today is Monday, 2 March 2026. */
class ToolsTest {
  private static final String PLANER =
      "borrowed: [{id: planer, tool: planer, from: pell, on: 2026-02-01, condition: good%s}]\n";

  @Test
  void aLateToolIsToldWithTheDaysSinceItWasDue() {
    assertThat(Sample.findings(new ToolOverdue(), PLANER.formatted(", due: 2026-02-14")))
        .extracting(Finding::rule, Finding::what)
        .containsExactly(
            tuple(
                "tool-overdue",
                "The planer was due back with Pell on 14\u00a0February\u00a02026, 16 days ago."));
    assertThat(Sample.findings(new ToolOverdue(), PLANER.formatted(", due: 2026-03-02"))).isEmpty();
  }

  private static List<Finding> gone(String task, String log) {
    return Sample.findings(
        new ToolReturnedWhileNeeded(),
        PLANER.formatted(", returned: 2026-03-01")
            + "tasks: [{id: plane, what: Plane, takes: 5 d, tools: [planer]%s}]\n".formatted(task)
            + log);
  }

  private static String logged(String day, String share) {
    return "---\nday: " + day + "\ntasks: {plane: " + share + "}\n---\n";
  }

  @Test
  void aToolThatWentBackIsMissedByWorkThatTheLogSaysIsUnderWay() {
    assertThat(gone("", logged("2026-02-27", "40 %"))).hasSize(1);
    assertThat(gone("", logged("2026-03-02", "40 %"))).hasSize(1);
    assertThat(gone("", logged("2026-03-03", "40 %"))).isEmpty(); // not known yet
    assertThat(gone("", logged("2026-02-27", "100 %"))).isEmpty();
    assertThat(gone("", "")).isEmpty();
  }

  @Test
  void norByWorkThatIsFinishedOrGivenUp() {
    assertThat(gone(", started: 2026-02-20", "")).hasSize(1);
    assertThat(gone(", started: 2026-02-20, finished: 2026-02-27", "")).isEmpty();
    assertThat(gone(", started: 2026-02-20, withdrawn: 2026-02-27", "")).isEmpty();
    assertThat(gone(", started: 2026-02-20, withdrawn: 2026-03-03", "")).hasSize(1);
  }

  @Test
  void whatIsMissedIsToldWithItsToolItsDayAndItsTask() {
    assertThat(gone(", started: 2026-02-20", ""))
        .extracting(Finding::rule, Finding::what)
        .containsExactly(
            tuple(
                "tool-returned-while-needed",
                "The planer went back on 1\u00a0March\u00a02026, but the task plane that needs it"
                    + " is not finished."));
  }

  private static final String TWO =
      """
      borrowed:
        - {id: planer, tool: planer, from: pell, on: 2026-02-01, condition: good%s}
        - {id: other, tool: %s, from: pell, on: %s, condition: good}
      tasks: [{id: plane, what: Plane, takes: 5 d, started: 2026-02-20%s}]
      """;

  private static List<Finding> goneBeside(String other, String on, String task) {
    return Sample.findings(
        new ToolReturnedWhileNeeded(), TWO.formatted(", returned: 2026-03-01", other, on, task));
  }

  @Test
  void workGoesOnWithAnotherOfTheSameToolThatIsHere() {
    assertThat(goneBeside("planer", "2026-02-01", ", tools: [planer]")).isEmpty();
    assertThat(goneBeside("planer", "2026-02-01", ", tools: [planer, other]")).isEmpty();
    assertThat(goneBeside("planer", "2026-03-03", ", tools: [planer]")).hasSize(1);
    assertThat(goneBeside("sander", "2026-02-01", ", tools: [planer, other]")).hasSize(1);
    assertThat(goneBeside("sander", "2026-02-01", ", tools: [other]")).isEmpty();
  }

  private static List<String> lacking(String planer, String other, String task) {
    Facts day =
        Facts.of(Sample.ledger(TWO.formatted(planer, other, "2026-02-01", task)), Sample.TODAY);
    return AtHand.lacking(Plan.on(day).task("plane").orElseThrow(), day);
  }

  @Test
  void aTaskLacksWhatItNamesAndIsNotHere() {
    assertThat(lacking("", "sander", ", tools: [planer, other]")).isEmpty();
    assertThat(lacking(", due: 2026-02-14", "sander", ", tools: [planer]")).isEmpty(); // late, here
    assertThat(lacking(", returned: 2026-03-01", "sander", ", tools: [planer, other]"))
        .containsExactly("planer");
    assertThat(lacking(", returned: 2026-03-01", "planer", ", tools: [planer]")).isEmpty();
    assertThat(lacking("", "sander", ", tools: [router]")).containsExactly("router");
  }

  @Test
  void andWhatWasLentForItAndWentBack() {
    String back = ", returned: 2026-03-01, needed-for: [plane]";
    assertThat(lacking(back, "sander", "")).containsExactly("planer");
    assertThat(lacking(back, "sander", ", tools: [planer]")).containsExactly("planer");
    assertThat(lacking(back, "planer", "")).isEmpty();
    assertThat(lacking(", returned: 2026-03-01, needed-for: [glue]", "sander", "")).isEmpty();
    assertThat(lacking(", needed-for: [plane]", "sander", "")).isEmpty();
    assertThat(
            Sample.findings(
                new ToolReturnedWhileNeeded(), TWO.formatted(back, "sander", "2026-02-01", "")))
        .hasSize(1);
  }

  @Test
  void workBeyondTheDueDayIsWhatEndsAfterIt() {
    assertThat(beyond("2026-03-03")).containsExactly("b"); // a ends on that day
    assertThat(beyond("2026-03-02")).containsExactly("a", "b");
    assertThat(beyond("2026-03-05")).isEmpty();
  }

  private static List<String> beyond(String due) {
    Facts day =
        Facts.of(
            Sample.ledger(
                PLANER.formatted(", due: " + due)
                    + """
                    tasks:
                      - {id: a, what: A, takes: 2 d, tools: [planer]}
                      - {id: b, what: B, takes: 2 d, after: [a], tools: [planer]}
                    """),
            Sample.TODAY);
    return Need.of(LoanStanding.on(day).get(0), Plan.on(day)).beyondDue(Plan.on(day));
  }

  private static Need need(String due, String tasks) {
    var ledger = Sample.ledger(PLANER.formatted(due) + "tasks:\n" + tasks);
    LocalDate today = Sample.TODAY;
    Facts day = Facts.of(ledger, today);
    return Need.of(LoanStanding.on(day).get(0), Plan.on(day));
  }

  @Test
  void aToolIsNeededUntilTheLastOfItsTasksCanBeFinished() {
    Need need =
        need(
            ", due: 2026-03-04, needed-for: [c]",
            """
              - {id: a, what: A, takes: 2 d, tools: [planer]}
              - {id: b, what: B, takes: 2 d, after: [a]}
              - {id: c, what: C, takes: 1 d, after: [b]}
              - {id: d, what: D, takes: 9 d, after: [c]}
            """);
    assertThat(need.tasks()).containsExactly("a", "c");
    assertThat(need.until()).contains(LocalDate.of(2026, 3, 6));
    assertThat(need.isTooLong()).isTrue();
  }

  @Test
  void aToolThatIsBackOrDueLateEnoughIsNotNeededTooLong() {
    String task = "  - {id: a, what: A, takes: 2 d, tools: [planer]}\n";
    assertThat(need(", due: 2026-03-03", task).isTooLong()).isFalse();
    assertThat(need(", due: 2026-03-02", task).isTooLong()).isTrue();
    assertThat(need("", task).isTooLong()).isFalse();
    assertThat(need(", due: 2026-02-20, returned: 2026-02-28", task).isTooLong()).isFalse();
    assertThat(need(", due: 2026-02-20", "  - {id: x, what: X, takes: 1 d}\n").isTooLong())
        .isTrue();
  }
}
