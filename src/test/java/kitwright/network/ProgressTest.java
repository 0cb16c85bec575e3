package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.ledger.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is written of the progress of a task and cannot be, or leaves out its day. */
class ProgressTest {
  private static List<String> told(Rule rule, String task, String log) {
    String yaml = "tasks: [{id: a, what: A, takes: 4 d%s}]\n".formatted(task) + log;
    return Sample.findings(rule, yaml).stream().map(Finding::what).toList();
  }

  private static String log(String day, String share) {
    return "---\nday: " + day + "\ntasks: {a: " + share + "}\n---\n";
  }

  @ParameterizedTest
  @CsvSource({"30 %, 1", "59.9 %, 1", "60 %, 0", "70 %, 0"})
  void progressThatFallsIsTold(String later, int told) {
    String days = log("2026-02-17", "60 %") + log("2026-02-18", later);
    assertThat(told(new ProgressFalls(), "", days)).hasSize(told);
  }

  @Test
  void itIsHeldAgainstTheDayBefore() {
    String days = log("2026-02-17", "60 %") + log("2026-02-18", "30 %") + log("2026-02-19", "40 %");
    assertThat(told(new ProgressFalls(), "", days))
        .containsExactly(
            "“A” is 30 % done by the log of 18\u00a0February\u00a02026, and was 60 % by that of"
                + " 17\u00a0February\u00a02026.");
  }

  @Test
  void whatIsFinishedIsNotDoneInPart() {
    String finished = ", started: 2026-02-10, finished: 2026-02-20";
    assertThat(told(new ProgressDiffers(), finished + ", progress: 40 %", ""))
        .containsExactly(
            "“A” is finished on 20\u00a0February\u00a02026, and 40 % done by its own word.");
    assertThat(told(new ProgressDiffers(), finished + ", progress: 100 %", "")).isEmpty();
    assertThat(told(new ProgressDiffers(), ", started: 2026-02-10, progress: 40 %", "")).isEmpty();
  }

  @Test
  void progressWithoutABeginningIsTold() {
    assertThat(told(new ProgressWithoutDay(), ", progress: 40 %", ""))
        .containsExactly("“A” is begun by its own word, and nobody wrote on which day.");
    assertThat(told(new ProgressWithoutDay(), ", progress: 0 %", "")).isEmpty();
    assertThat(told(new ProgressWithoutDay(), ", progress: 40 %, started: 2026-02-10", ""))
        .isEmpty();
    assertThat(told(new ProgressWithoutDay(), ", progress: 40 %", log("2026-02-17", "40 %")))
        .isEmpty();
  }
}
