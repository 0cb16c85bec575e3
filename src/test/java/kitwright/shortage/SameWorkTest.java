package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.kit.OffcutPromisedTwice;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a substitution takes, and the tasks on the way to its hold point ask for, is asked for once.
 * There are six boards of larch.
 */
class SameWorkTest {
  private static final String YAML =
      """
      stock: [{id: larch, what: larch, size: 2450 x 110 x 32 mm, pieces: 6}]
      tasks:
        - {id: far, what: Far, takes: 1 d}
        - {id: plane, what: Plane, takes: 1 d, after: [far]%s}
        - {id: close, what: Close, takes: 1 d, after: [plane]%s}
        - {id: other, what: Other, takes: 1 d, uses: [{stock: larch, qty: 2}]}
      substitutions:
        - {id: sub, instead-of: {what: spruce, qty: 10 m}, use: [{stock: larch, qty: %d}], grade: finish, why: w, hold: close,
           sign-offs: [{by: nora, on: 2026-02-12}]}
      """;

  private static List<String> wanted(String plane, String close, int taken, String log) {
    String yaml = YAML.formatted(plane, close, taken) + log;
    return LookAhead.on(Facts.of(Sample.ledger(yaml), Sample.TODAY)).all().stream()
        .map(each -> each.task() + " " + each.qty().told())
        .sorted()
        .toList();
  }

  private static String uses(int qty) {
    return ", uses: [{stock: larch, qty: " + qty + "}]";
  }

  private static String log(String used) {
    return "---\nday: 2026-02-20\nused: [" + used + "]\n---\n";
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "0; 0; 4; close 4, other 2", // nobody else asks for it
        "0; 4; 4; close 4, other 2", // the held task says so itself
        "0; 3; 4; close 4, other 2",
        "0; 5; 4; close 5, other 2",
        "4; 0; 4; other 2, plane 4", // the task before it says so
        "3; 0; 4; close 1, other 2, plane 3",
        "5; 0; 4; other 2, plane 5",
        "2; 1; 4; close 2, other 2, plane 2", // 4 less 2 less 1, and its own 1
      })
  void whatIsAskedForOnTheWayIsAskedForOnce(int plane, int close, int taken, String wanted) {
    assertThat(wanted(plane == 0 ? "" : uses(plane), close == 0 ? "" : uses(close), taken, ""))
        .containsExactly(wanted.split(", "));
  }

  @Test
  void whatTheWorkBeforeUsedIsNotAskedForAgain() {
    String finished = ", started: 2026-02-19, finished: 2026-02-20";
    String four = log("{stock: larch, qty: 4, task: plane}");
    assertThat(wanted(uses(4) + finished, "", 4, four)).containsExactly("other 2");
    assertThat(wanted(uses(4) + finished, "", 4, "")).as("not logged").containsExactly("other 2");
    assertThat(wanted(finished, "", 4, four)).as("only logged").containsExactly("other 2");
    assertThat(wanted("", "", 4, log("{stock: larch, qty: 3, task: plane}")))
        .containsExactly("close 1", "other 2");
    assertThat(wanted("", "", 4, log("{stock: larch, qty: 3, task: close}")))
        .as("by the held task itself")
        .containsExactly("close 1", "other 2");
    assertThat(wanted("", "", 4, log("{stock: larch, qty: 3, task: other}")))
        .as("by other work")
        .containsExactly("close 4");
  }

  @Test
  void whatIsAskedForOnceAnswersOneSubstitution() {
    String second =
        """
          - {id: too, instead-of: {what: pine, qty: 3 m}, use: [{stock: larch, qty: 3}], grade: finish, why: w, hold: close,
             sign-offs: [{by: nora, on: 2026-02-12}]}
        """;
    // Four and three are taken; the planing asks for five of the seven.
    assertThat(wanted(uses(5), "", 4, second)).containsExactly("close 2", "other 2", "plane 5");
  }

  @Test
  void theRuleOfPromisesAgrees() {
    // Four for the mast and two for the other work are six.
    String fits = YAML.formatted(uses(4), "", 4);
    assertThat(Sample.words(new OffcutPromisedTwice(), fits)).isEmpty();
    assertThat(LookAhead.on(Facts.of(Sample.ledger(fits), Sample.TODAY)).shortages()).isEmpty();
    String seven = YAML.formatted(uses(4), "", 5);
    assertThat(Sample.words(new OffcutPromisedTwice(), seven)).hasSize(1);
    assertThat(LookAhead.on(Facts.of(Sample.ledger(seven), Sample.TODAY)).shortages()).hasSize(1);
  }
}
