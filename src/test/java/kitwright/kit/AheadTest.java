package kitwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.value.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is promised and not used yet, and what is free. There are ten boards. */
class AheadTest {
  private static final String RACK =
      """
      stock: [{id: larch, what: larch, size: 2450 x 110 x 32 mm, pieces: 10}]
      kit: [{id: bolt, what: bolt, qty: 10}]
      tasks:
        - {id: a, what: A, takes: 2 d, uses: [{stock: larch, qty: 4}, {item: bolt, qty: 4}]}
        - {id: b, what: B, takes: 2 d, after: [a]}
        - {id: c, what: C, takes: 2 d}
        - {id: done, what: D, takes: 1 d, started: 2026-02-01, finished: 2026-02-02%s}
      %s
      """;
  private static final String DONE = ", uses: [{stock: larch, qty: 3}]";
  private static final String SUB =
      """
      substitutions:
        - {id: sub, instead-of: {what: spruce, qty: 9 m}, use: [{stock: larch, qty: %d}], grade: finish, why: w, hold: b}
      """;

  private static Positions positions(String done, String more, String... used) {
    String log =
        used.length == 0
            ? ""
            : "---\nday: 2026-02-10\nused: [" + String.join(", ", used) + "]\n---\n";
    return Positions.on(Facts.of(Sample.ledger(RACK.formatted(done, more) + log), Sample.TODAY));
  }

  private static String ahead(List<Promise> promises) {
    return promises.stream()
        .map(each -> each.to().id() + " " + each.qty().map(Quantity::told).orElse("some"))
        .toList()
        .toString();
  }

  private static String told(Positions positions) {
    StockPosition larch = positions.allStock().get(0);
    return ahead(larch.ahead()) + ", free " + larch.free().told();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "''; [a 4], free 6",
        // 10 less 3 used, less 1 that a still asks for.
        "{stock: larch, qty: 3, task: a}; [a 1], free 6",
        "{stock: larch, qty: 4, task: a}; [], free 6",
        "{stock: larch, qty: 5, task: a}; [], free 5",
        // Used for other work: it does not lessen what a asks for. 10 - 3 - 4.
        "{stock: larch, qty: 3, task: c}; [a 4], free 3",
        // Nobody says for which: a is still ahead, and may want its four.
        "{stock: larch, qty: 3}; [a 4], free 3",
        "{stock: larch, qty: 8, task: c}; [a 4], free 0"
      })
  void whatItsWorkHasUsedIsNotPromisedAnyMore(String used, String told) {
    assertThat(told(used.isEmpty() ? positions("", "") : positions("", "", used))).isEqualTo(told);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Finished work has used what it asked for, logged or not: 10 - 4 - 3.
        "''; [a 4, done 3], free 3",
        "{stock: larch, qty: 3, task: done}; [a 4], free 3",
        "{stock: larch, qty: 2, task: done}; [a 4, done 1], free 3",
        // What the log tells of no work in particular may have been for it.
        "{stock: larch, qty: 2}; [a 4, done 1], free 3",
        // What other work used was not used by it: 10 - 2 - 4 - 3.
        "{stock: larch, qty: 2, task: c}; [a 4, done 3], free 1",
        "'{stock: larch, qty: 2, task: done}, {stock: larch, qty: 2}'; [a 4], free 2"
      })
  void whatFinishedWorkUsedIsGoneOnce(String used, String told) {
    assertThat(told(used.isEmpty() ? positions(DONE, "") : positions(DONE, "", used)))
        .isEqualTo(told);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // b comes after a: of six, a asks for four.
        "6; ''; [sub 6], free 4",
        "3; ''; [sub 3, a 1], free 6",
        "6; {stock: larch, qty: 4, task: a}; [sub 2], free 4",
        "3; {stock: larch, qty: 4, task: a}; [], free 6",
        "6; {stock: larch, qty: 4, task: c}; [sub 6], free 0"
      })
  void whatASubstitutionTakesOnTheWayToItsHoldPointIsOnePromise(
      int taken, String used, String told) {
    String sub = SUB.formatted(taken);
    assertThat(told(used.isEmpty() ? positions("", sub) : positions("", sub, used)))
        .isEqualTo(told);
  }

  private static String told(String yaml) {
    return told(Positions.on(Facts.of(Sample.ledger(yaml), Sample.TODAY)));
  }

  /** What a used beyond what it asked for is not set against b, which comes after it. */
  @Test
  void aTaskStillAsksForItsOwnWhateverWorkBeforeItUsed() {
    String yaml =
        """
        stock: [{id: larch, what: larch, size: 2450 x 110 x 32 mm, pieces: 10}]
        tasks:
          - {id: a, what: A, takes: 2 d, uses: [{stock: larch, qty: 4}]}
          - {id: b, what: B, takes: 2 d, after: [a], uses: [{stock: larch, qty: 2}]}
        ---
        day: 2026-02-10
        used: [{stock: larch, qty: 5, task: a}]
        ---
        """;
    assertThat(told(yaml)).isEqualTo("[b 2], free 3");
  }

  @Test
  void aCircleOfTasksHasAnEnd() {
    String yaml =
        """
        stock: [{id: larch, what: larch, size: 2450 x 110 x 32 mm, pieces: 10}]
        tasks:
          - {id: a, what: A, takes: 2 d, after: [b], uses: [{stock: larch, qty: 4}]}
          - {id: b, what: B, takes: 2 d, after: [a]}
        """
            + SUB.formatted(6);
    assertThat(told(yaml)).isEqualTo("[sub 6], free 4");
  }

  @Test
  void whatIsKeptWithoutAnAmountStaysKept() {
    String cut =
        "cuts: [{id: saw, task: c, from: [larch], kerf: 3 mm, parts: [{mark: a, length: 400 mm}]}]";
    assertThat(told(positions("", cut, "{stock: larch, qty: 10, task: c}")))
        .isEqualTo("[a 4, saw some], free 0");
  }

  @Test
  void aCutThatIsDoneUsesForItsTaskOrForWhatItMakesThePartsOf() {
    String done =
        "cuts: [{id: saw, %s, from: [larch], kerf: 3 mm, done: 2026-02-03, used: [{stock: larch,"
            + " pieces: 3}], parts: [{mark: a, length: 400 mm}]}]";
    assertThat(told(positions("", done.formatted("task: a")))).isEqualTo("[a 1], free 6");
    assertThat(told(positions("", SUB.formatted(6) + done.formatted("for: sub"))))
        .isEqualTo("[sub 3], free 4");
    assertThat(told(positions("", SUB.formatted(6) + done.formatted("keep-length: 1 m"))))
        .isEqualTo("[sub 6], free 1");
  }

  @Test
  void itemsOfTheKitArePromisedLikewise() {
    assertThat(ahead(positions("", "").all().get(0).promises())).isEqualTo("[a 4]");
    assertThat(ahead(positions("", "", "{item: bolt, qty: 3, task: a}").all().get(0).promises()))
        .isEqualTo("[a 1]");
  }
}
