package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** What finished tasks took against what was thought. Sample's today is 2 March 2026. */
class LearntTest {
  private static final String TASKS =
      """
      tasks:
        - {id: a, what: A, phase: hull, takes: 8 h}
        - {id: b, what: B, phase: hull, takes: [4 h, 8 h, 9 h]}
        - {id: c, what: C, phase: hull, takes: 2 h}
        - {id: rest, what: R, phase: hull, takes: 9 d}
        - {id: x, what: X, phase: deck, takes: 1 h}
      """;

  private static String log(String day, String hours, String tasks) {
    return "---\nday: " + day + "\nhours: {" + hours + "}\ntasks: {" + tasks + "}\n---\n";
  }

  private static List<Learnt> learnt(String yaml) {
    return Learnt.of(Facts.of(Sample.ledger(yaml), Sample.TODAY));
  }

  /** A took 6 h of 8, B 4 h and then 8 h of 8, C 4 h of 2. */
  @Test
  void theHoursOfWhoeverWorkedLongestAreSharedAmongTheTasksOfADay() {
    String logged =
        TASKS
            + log("2026-02-02", "nora: 6, pell: 2", "a: 100 %")
            + log("2026-02-03", "nora: 8", "b: 50 %, c: 100 %")
            + log("2026-02-04", "nora: 8", "b: 100 %")
            + log("2026-02-05", "nora: 1", "x: 100 %");
    assertThat(learnt(logged)).containsExactly(new Learnt("hull", 3, 0.75, 1.5, 2));
  }

  @Test
  void twoTasksTellNothingNorDoesAPhaseThatIsOver() {
    String two =
        TASKS + log("2026-02-02", "nora: 6", "a: 100 %") + log("2026-02-03", "nora: 8", "b: 100 %");
    assertThat(learnt(two)).isEmpty();
    String over =
        TASKS.replace("takes: 9 d}", "takes: 9 d, finished: 2026-02-20}")
            + log("2026-02-02", "nora: 6", "a: 100 %, b: 100 %, c: 100 %");
    assertThat(learnt(over)).isEmpty();
  }

  /** Without hours nobody knows how long it took; without a phase, what it tells of. */
  @Test
  void onlyWorkWithHoursAPhaseAndAnEstimateTellsAnything() {
    String logged = days("nora: 2", "100 %");
    assertThat(learnt(TASKS + logged)).hasSize(1);
    assertThat(learnt(TASKS + days("", "100 %"))).isEmpty();
    assertThat(learnt(TASKS + days("nora: 2", "90 %"))).as("not done").isEmpty();
    assertThat(learnt(TASKS.replace("C, phase: hull", "C") + logged)).isEmpty();
    assertThat(learnt(TASKS.replace("takes: 2 h", "takes: 0 h") + logged)).isEmpty();
  }

  private static String days(String hours, String share) {
    return log("2026-02-02", "nora: 4", "a: 100 %")
        + log("2026-02-03", "nora: 8", "b: 100 %")
        + log("2026-02-04", hours, "c: " + share)
        + log("2026-02-05", "nora: 3", "");
  }

  @Test
  void whatIsLoggedLaterIsNotKnownYet() {
    String later = TASKS + log("2026-03-03", "nora: 6", "a: 100 %, b: 100 %, c: 100 %");
    assertThat(learnt(later)).isEmpty();
  }
}
