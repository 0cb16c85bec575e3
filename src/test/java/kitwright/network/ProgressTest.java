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

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "2026-02-19; 40 %; 0", // what was written before it was finished
        "2026-02-20; 40 %; 1",
        "2026-02-21; 40 %; 1",
        "2026-02-20; 100 %; 0"
      })
  void aLogThatLeavesSomethingOfFinishedWorkIsTold(String day, String share, int told) {
    String finished = ", started: 2026-02-10, finished: 2026-02-20";
    assertThat(told(new ProgressDiffers(), finished, log(day, share))).hasSize(told);
    assertThat(told(new ProgressDiffers(), finished + GIVEN_UP, log(day, share))).isEmpty();
  }

  /** By the later word it is not finished; by one of the same day it is. */
  @ParameterizedTest
  @CsvSource({
    "2026-02-20, 'It counts as finished, and what follows as free to begin.'",
    "2026-02-21, 'The later word counts: it is not finished, and what follows waits for it.'"
  })
  void whatFollowsFromItIsWhatThePlanGoesBy(String day, String follows) {
    String yaml =
        "tasks: [{id: a, what: A, takes: 4 d, started: 2026-02-10, finished: 2026-02-20}]\n"
            + log(day, "40 %");
    assertThat(Sample.findings(new ProgressDiffers(), yaml))
        .extracting(Finding::follows)
        .containsExactly(follows);
  }

  private static final String GIVEN_UP = ", withdrawn: 2026-02-25";

  @Test
  void whatWasGivenUpNeedsNoDay() {
    assertThat(told(new ProgressWithoutDay(), ", progress: 40 %" + GIVEN_UP, "")).isEmpty();
    assertThat(told(new ProgressWithoutDay(), ", progress: 100 %" + GIVEN_UP, "")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "''; It counts as finished on the day on which you ask.",
        "', wait: 24 h'; It counts as finished on the day on which you ask, so that its wait of 24"
            + " h never ends.",
        "', started: 2026-02-10'; It counts as finished on 13 February 2026, by the day it began"
            + " and the time it takes.",
        "', started: 2026-02-10, wait: 24 h'; It counts as finished on 13 February 2026, by the day"
            + " it began and the time it takes, and its wait of 24 h runs from there."
      })
  void workThatIsAllDoneWithoutADayIsTold(String more, String follows) {
    String yaml = "tasks: [{id: a, what: A, takes: 4 d, progress: 100 %" + more + "}]\n";
    assertThat(Sample.findings(new ProgressWithoutDay(), yaml))
        .extracting(each -> each.follows().replace('\u00a0', ' '))
        .containsExactly(follows);
    String finished = yaml.replace("}", ", finished: 2026-02-20}");
    assertThat(Sample.findings(new ProgressWithoutDay(), finished)).isEmpty();
  }

  @Test
  void moreThanAllCannotBeDoneInATaskNorInTheLog() {
    assertThat(told(new ProgressImpossible(), ", progress: 100 %", log("2026-02-17", "100 %")))
        .isEmpty();
    assertThat(told(new ProgressImpossible(), ", progress: 101 %", log("2026-02-17", "140 %")))
        .containsExactly(
            "The log of 2026-02-17 says that “A” is 140 % done.",
            "The task says that “A” is 101 % done.");
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
