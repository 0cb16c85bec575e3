package kitwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wood that a done cut and the log both tell of counts once: the cut’s record is the one. */
class UsedTwiceTest {
  private static final String CUT =
      """
      stock: [{id: larch, what: larch plank, pieces: 6, size: 3000 x 120 x 25 mm}]
      tasks: [{id: battens, what: Saw battens, takes: 2 d, uses: [{stock: larch, qty: 4}]%s}, {id: rail, what: Rail, takes: 1 d}]
      cuts:
        - {id: c, task: battens, from: [larch], kerf: 3 mm, parts: [{mark: B, length: 900 mm, qty: 4}], done: 2026-02-20, used: [{stock: larch, pieces: 2}]}
      """;

  private static String yaml(String day, String used) {
    return CUT.formatted("") + "---\nday: " + day + "\nused: [" + used + "]\n---\n";
  }

  private static String left(String yaml) {
    return Positions.on(Facts.of(Sample.ledger(yaml), Sample.TODAY))
        .allStock()
        .get(0)
        .left()
        .toString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-02-20 | {stock: larch, qty: 2}                | 4 each | 1", // the same wood
        "2026-02-20 | {stock: larch, qty: 2, task: battens} | 4 each | 1",
        "2026-02-20 | {stock: larch, qty: 3}                | 3 each | 1", // one more
        "2026-02-20 | {stock: larch, qty: 1}                | 4 each | 1",
        "2026-02-20 | {stock: larch, qty: 2, task: rail}    | 2 each | 0", // other work
        "2026-02-21 | {stock: larch, qty: 2}                | 2 each | 0", // another day
        "2026-02-21 | {stock: larch, qty: 2, task: rail}    | 2 each | 0",
        "2026-02-21 | {stock: larch, qty: 2, task: battens} | 4 each | 1", // the cut's own work
        "2026-02-19 | {stock: larch, qty: 3, task: battens} | 3 each | 1"
      })
  void theLogOfTheDayAddsOnlyWhatGoesBeyondTheCut(
      String day, String used, String left, int findings) {
    assertThat(left(yaml(day, used))).isEqualTo(left);
    assertThat(Sample.findings(new UsedTwice(), yaml(day, used))).hasSize(findings);
  }

  @Test
  void theLogOfAnotherDayIsToldByThatDay() {
    assertThat(
            Sample.words(
                new UsedTwice(), yaml("2026-02-21", "{stock: larch, qty: 2, task: battens}")))
        .containsExactly(
            """
            NOTE used-twice 7
            The cut c says that it took 2 × larch on 20 February 2026, and the log of 21 \
            February 2026 says that its work used so much.
            It is taken to be the same wood and counts once.
            Leave the line out of the log; if more was used, write into it the task that it went \
            into, where that is another than the cut’s, or record the sum as “pieces” of the cut.
            cut c, stock larch, log day 2026-02-21\
            """);
  }

  /** The work of a cut that names no task is what the substitution holds whose parts it makes. */
  @Test
  void aCutForASubstitutionIsOfTheHeldWork() {
    String yaml =
        yaml("2026-02-21", "{stock: larch, qty: 2, task: %s}")
            .replace("c, task: battens,", "c, for: sub,")
            .replace(
                "tasks:",
                "substitutions: [{id: sub, instead-of: {what: x, qty: 1}, hold: battens, grade:"
                    + " finish, why: w}]\ntasks:");
    assertThat(left(yaml.formatted("battens"))).isEqualTo("4 each");
    assertThat(left(yaml.formatted("rail"))).isEqualTo("2 each");
    assertThat(left(yaml.formatted("rail").replace("02-21", "02-20"))).isEqualTo("2 each");
  }

  @Test
  void twoLinesOfTheLogAreSetOffAgainstTheCutOnce() {
    String yaml = yaml("2026-02-20", "{stock: larch, qty: 1}, {stock: larch, qty: 2}");
    assertThat(left(yaml)).isEqualTo("3 each");
  }

  @Test
  void theLogInAnotherUnitThanPiecesTellsOfItsOwn() {
    String glue = "stock: [{id: larch, what: glue, qty: 5 kg}]\n";
    String yaml = yaml("2026-02-20", "{stock: larch, qty: 1 kg}");
    assertThat(left(glue + yaml.substring(yaml.indexOf("tasks:")))).isEqualTo("4 kg");
  }

  @Test
  void whatIsUsedUpBeyondWhatWasThereNamesTheCutOrTheDayThatTookIt() {
    String cut = CUT.formatted("").replace("pieces: 6", "pieces: 1");
    assertThat(Sample.findings(new StockOverused(), cut).get(0).records())
        .containsExactly("stock larch", "cut c");
    String log =
        """
        stock: [{id: a, what: a, qty: 1}]
        ---
        day: 2026-02-20
        used: [{stock: a, qty: 3}]
        ---
        """;
    assertThat(Sample.findings(new StockOverused(), log).get(0).records())
        .containsExactly("stock a", "log day 2026-02-20");
  }
}
