package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Work that has begun, or is finished, before what it waits for. Today is 2 March 2026. */
class EarlyWorkTest {
  private static final String FRAMES = "“Plank” has begun, though “Frames”, which it waits for, ";

  private static List<String> told(Rule rule, String frames, String plank) {
    return told(
        rule,
        "tasks:\n  - {id: frames, what: Frames, takes: 5 d, "
            + frames
            + "}\n  - {id: plank, what: Plank, takes: 4 d, "
            + plank
            + "}\n");
  }

  private static List<String> told(Rule rule, String yaml) {
    Findings out = new Findings();
    rule.examine(Facts.of(Sample.read(yaml, new Findings()).orElseThrow(), Sample.TODAY), out);
    return out.inOrder().stream().map(Finding::what).toList();
  }

  private static final String OPEN = "place: indoors";
  private static final String DONE = "started: 2026-02-20, finished: 2026-02-27";
  private static final String AFTER = "after: [{task: frames, lag: 0 d}]";
  private static final String BEGUN = AFTER + ", started: 2026-02-28";

  @Test
  void begunBeforeWhatItWaitsForIsFinishedOrCured() {
    BegunEarly rule = new BegunEarly();
    assertThat(told(rule, OPEN, BEGUN)).containsExactly(FRAMES + "is not finished.");
    assertThat(told(rule, DONE + ", wait: 240 h", BEGUN))
        .containsExactly(FRAMES + "is still to cure.");
    assertThat(told(rule, DONE, BEGUN)).as("finished").isEmpty();
    assertThat(told(rule, OPEN, AFTER)).as("not begun").isEmpty();
    assertThat(told(rule, OPEN + ", withdrawn: 2026-02-20", BEGUN)).as("given up").isEmpty();
    assertThat(told(rule, OPEN, BEGUN + ", finished: 2026-03-01"))
        .as("finished work is told by another rule")
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "after: [ghost], started: 2026-02-28", // a name of nothing
        "after: [plank], started: 2026-02-28" // itself
      })
  void whatIsToldByOtherRulesIsNotToldAgain(String plank) {
    assertThat(told(new BegunEarly(), OPEN, plank)).isEmpty();
  }

  @Test
  void theLinkThatWasNotKeptIsPointedAt() {
    String yaml =
        """
        tasks:
          - {id: ready, what: Ready, takes: 1 d, finished: 2026-02-20}
          - {id: frames, what: Frames, takes: 5 d}
          - id: plank
            what: Plank
            takes: 4 d
            started: 2026-02-28
            after:
              - ready
              - frames
        """;
    assertThat(Sample.findings(new BegunEarly(), yaml))
        .singleElement()
        .satisfies(each -> assertThat(each.at().line()).isEqualTo(10));
  }

  @Test
  void finishedBeforeWhatItWaitsFor() {
    TaskBeforePredecessor rule = new TaskBeforePredecessor();
    String finished = AFTER + ", finished: 2026-03-01";
    assertThat(told(rule, OPEN, finished))
        .containsExactly("“Plank” is finished, though “Frames”, which it waits for, is not.");
    assertThat(told(rule, DONE, finished)).isEmpty();
    assertThat(told(rule, OPEN, BEGUN)).as("begun work is told by another rule").isEmpty();
    assertThat(told(rule, OPEN, AFTER)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "5 w; 'takes: 260 w'; 0",
        "5 w; 'takes: 261 w'; 1", // five working years
        "5 w; 'takes: [1 d, 2 d, 300 w]'; 1",
        "43800 h; 'takes: 1 d'; 0", // five years on the clock
        "43801 h; 'takes: 1 d'; 1",
        "5 w; 'takes: 1 d, after: [{task: a, lag: 260 w}]'; 0",
        "5 w; 'takes: 1 d, after: [{task: a, lag: 261 w}]'; 1"
      })
  void moreThanFiveYearsIsASlipOfTheHand(String wait, String more, int told) {
    String yaml =
        "tasks:\n  - {id: a, what: A, takes: 1 d, wait: "
            + wait
            + "}\n  - {id: b, what: B, "
            + more;
    assertThat(told(new DurationBeyondReason(), yaml + "}\n")).hasSize(told);
  }

  @Test
  void eightTasksInARingAreAllNamed() {
    StringBuilder tasks =
        new StringBuilder("tasks:\n  - {id: s, what: S, takes: 1 h, after: [s]}\n");
    for (int i = 0; i < 8; i++) {
      tasks.append(
          "  - {id: t%d, what: T%d, takes: 1 h, after: [t%d]}\n".formatted(i, i, (i + 7) % 8));
    }
    assertThat(told(new TaskCycle(), tasks.toString()))
        .as("and what waits for itself alone is told by another rule")
        .containsExactly(
            "Each of these tasks waits for the one before it, round and round: “T0” → “T1” → “T2” →"
                + " “T3” → “T4” → “T5” → “T6” → “T7” → “T0”.");
  }
}
