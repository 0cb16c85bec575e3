package kitwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Off-cuts of which more is promised than there is. */
class OffcutPromisedTwiceTest {
  private static final OffcutPromisedTwice RULE = new OffcutPromisedTwice();

  /** Five pieces; the fronts ask for two, the staves for so many. */
  private static String rack(String kept, int fronts, int staves, String more) {
    return """
    stock: [{id: larch, what: larch, size: 2450 x 110 x 32 mm, pieces: 5, keep-for: [%s]}]
    tasks:
      - {id: fronts, what: Fronts, takes: 2 d, uses: [{stock: larch, qty: %d}]}
      - {id: staves, what: Staves, takes: 1 d, uses: [{stock: larch, qty: %d}]}
      - {id: close, what: Close, takes: 1 d, after: [staves]}
      - {id: other, what: Other, takes: 1 d}
      - {id: gone, what: Gone, takes: 1 d, withdrawn: 2026-02-01}
      - {id: done, what: Done, takes: 1 d, started: 2026-02-01, finished: 2026-02-02}
    %s
    """
        .formatted(kept, fronts, staves, more);
  }

  private static List<String> told(String yaml) {
    return Sample.findings(RULE, yaml).stream().map(Finding::what).toList();
  }

  @Test
  void thePromiseThatGoesBeyondWhatThereIsIsNamed() {
    assertThat(Sample.words(RULE, rack("", 2, 4, "")))
        .containsExactly(
            """
            WARN offcut-promised-twice 4
            Of larch there are 5, promised to task fronts (2), task staves (4).
            Whoever comes second finds it sawn up.
            Decide who gets it, and give the other work something else or buy more.
            stock larch, task fronts, task staves\
            """);
  }

  @ParameterizedTest
  @CsvSource({
    "2, 3, 0", // exactly as many
    "2, 4, 1", // one more
    "6, 0, 1", // too much for one alone, and another asks for none
    "0, 0, 0"
  })
  void asManyAsThereAreMayBePromised(int fronts, int staves, int findings) {
    assertThat(told(rack("", fronts, staves, ""))).hasSize(findings);
  }

  @ParameterizedTest
  @CsvSource({
    "other, 2, 3, 1", // nothing is left of what is kept
    "other, 2, 2, 0", // one piece is
    "fronts, 2, 3, 0", // what is kept for it, it asks for itself
    "gone, 2, 3, 0", // given up
    "done, 2, 3, 0" // finished
  })
  void whatIsKeptWithoutAnAmountNeedsSomethingToBeLeft(
      String kept, int fronts, int staves, int findings) {
    assertThat(told(rack(kept, fronts, staves, ""))).hasSize(findings);
  }

  @Test
  void whatIsKeptForOneTaskAloneIsNotPromisedTwice() {
    assertThat(told("stock: [{id: a, what: a, qty: 0 kg, keep-for: [t]}]\n" + T)).isEmpty();
    assertThat(
            told(
                "stock: [{id: a, what: a, qty: 1 kg}]\n"
                    + T.replace("d}, ", "d, uses: [{stock: a, qty: 2 kg}]}, ")))
        .as("too much for one is not twice")
        .isEmpty();
    assertThat(told("stock: [{id: a, what: a, qty: 0 kg, keep-for: [t, u]}]\n" + T))
        .as("of nothing nothing is promised")
        .isEmpty();
  }

  private static final String T =
      "tasks: [{id: t, what: T, takes: 1 d}, {id: u, what: U, takes: 1 d}]\n";

  private static final String CUT =
      "cuts: [{id: c, %s, from: [larch], kerf: 3 mm, parts: [{mark: a, length: 400 mm}]}]\n";

  private static final String SUB =
      "substitutions: [{id: sub, instead-of: {what: spruce, qty: 9 m}, use: [{stock: larch, qty:"
          + " %d}], grade: finish, why: w%s}]\n";

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "task: fronts; 0", // its task says itself how much it takes
        "task: other; 1",
        "keep: 300 x 100 mm; 1" // of no task that anybody knows
      })
  void aCutIsOfItsTask(String of, int findings) {
    assertThat(told(rack("", 2, 3, CUT.formatted(of)))).hasSize(findings);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "'for: sub'; ''; 0", // it makes the parts of the substitution
        "'for: sub'; ', hold: close'; 0",
        "'keep-length: 1 m'; ''; 1", // neither is of any work, so not of the same
        "'for: sub-2'; ''; 1", // it makes the parts of another
        "'task: close'; ', hold: close'; 0",
        "'task: other'; ', hold: close'; 1"
      })
  void aCutIsOfTheSubstitutionWhosePartsItMakes(String of, String hold, int findings) {
    assertThat(told(rack("", 2, 0, SUB.formatted(3, hold) + CUT.formatted(of)))).hasSize(findings);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Of the staves' three and the substitution's three, three are meant: with two, five.
        "2; 3; 3; ', hold: close'; 0",
        "3; 3; 3; ', hold: close'; 1", // three and three
        "2; 4; 3; ', hold: close'; 1", // four for the staves, two for the fronts
        "2; 3; 3; ', hold: other'; 1", // nothing leads from the staves to the other work
        "2; 3; 3; ''; 1",
        "2; 3; 3; ', hold: close, withdrawn: 2026-02-01'; 0", // given up
      })
  void aTaskOnTheWayToTheHoldPointIsTheSameWork(
      int fronts, int staves, int taken, String hold, int findings) {
    assertThat(told(rack("", fronts, staves, SUB.formatted(taken, hold)))).hasSize(findings);
  }
}
