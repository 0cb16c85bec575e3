package kitwright.loan;

import static org.assertj.core.api.Assertions.assertThat;

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
        .extracting(Finding::what)
        .containsExactly("The planer was due back with Pell on 2026-02-14, 16 days ago.");
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

  private static Need need(String due, String tasks) {
    var ledger = Sample.ledger(PLANER.formatted(due) + "tasks:\n" + tasks);
    LocalDate today = Sample.TODAY;
    Facts day = Facts.of(ledger, today);
    return Need.of(Standing.on(day).get(0), Plan.on(day));
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
    assertThat(need.from()).contains(LocalDate.of(2026, 3, 2));
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
