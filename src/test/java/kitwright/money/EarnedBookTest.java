package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EarnedBookTest {
  private static final String FENCE =
      """
      budget:
        - {line: fence, title: Fence, amount: 4000}
        - {line: tools, title: Tools, amount: 100}
      tasks:
        - {id: north, what: North side, takes: 1 d, budget: fence, started: 2026-02-24, finished: 2026-02-24}
        - {id: east, what: East side, takes: 8 h, budget: fence, started: 2026-02-25, finished: 2026-02-25}
        - {id: south, what: South side, takes: 1 d, budget: fence, started: 2026-02-26, progress: 50 %}
        - {id: west, what: West side, takes: 1 d, budget: fence}
      spending:
        - {id: p, on: 2026-02-26, line: fence, what: boards, amount: 2800, state: paid}
      """;

  private static EarnedBook book(String yaml) {
    Ledger ledger = Sample.ledger(yaml);
    return EarnedBook.of(
        ledger,
        Account.on(Facts.of(ledger, Sample.TODAY)),
        task -> task.equals("west") ? BigDecimal.ZERO : BigDecimal.ONE);
  }

  private static EarnedValue fence(String yaml) {
    return Optional.ofNullable(book(yaml).lines().get("fence")).orElseThrow();
  }

  /** The fence of earned-value.csv, told as a ledger: four sides of a day at 1000 each. */
  @Test
  void tasksEarnTheirShareOfTheLineByTheirDuration() {
    EarnedValue fence = fence(FENCE);
    assertThat(fence.plannedValue()).hasToString("3000.00 EUR");
    assertThat(fence.earnedValue()).hasToString("2500.00 EUR");
    assertThat(fence.actualCost()).hasToString("2800.00 EUR");
    assertThat(fence.endAtCostIndex().orElseThrow()).hasToString("4480.00 EUR");
  }

  @Test
  void linesThatNoTaskEarnsAreNamedAndInNoFigure() {
    assertThat(book(FENCE).unearned()).containsExactly("tools");
    assertThat(book(FENCE).whole().orElseThrow().atCompletion()).hasToString("4000.00 EUR");
  }

  @Test
  void progressMovesWhatIsEarned() {
    EarnedValue fence = fence(FENCE.replace("progress: 50 %", "progress: 10 %"));
    assertThat(fence.earnedValue()).hasToString("2100.00 EUR");
  }

  @Test
  void everyFigureHasASentence() {
    EarnedValue fence = fence(FENCE);
    List<Figure> figures = Figures.of(fence, fence.endAtBudgetRate());
    assertThat(figures)
        .extracting(Figure::abbreviation)
        .containsExactly(
            "BAC", "PV", "EV", "AC", "CV", "SV", "CPI", "SPI", "EAC", "EAC", "EAC", "EAC", "ETC",
            "VAC", "TCPI");
    assertThat(figures).allSatisfy(figure -> assertThat(figure.says()).endsWith("."));
    assertThat(figures)
        .extracting(Figure::says)
        .contains(
            "The work done has cost 300.00 EUR more than it was to cost; material bought ahead of"
                + " the work counts as cost.",
            "Each EUR spent has bought work worth 0.893.",
            "To end on budget, each EUR left must buy work worth 1.250.");
  }

  @Test
  void aSpentBudgetIsNotReachable() {
    EarnedValue fence = fence(FENCE.replace("2800", "4100"));
    assertThat(Figures.of(fence, fence.endAtBudgetRate()))
        .last()
        .satisfies(figure -> assertThat(figure.value()).isEqualTo("not reachable"));
  }

  @Test
  void beforeAnythingIsSpentOrDoneNothingIsDivided() {
    EarnedValue none =
        new EarnedValue(
            java.util.Currency.getInstance("EUR"),
            BigDecimal.TEN,
            BigDecimal.ZERO,
            BigDecimal.ZERO,
            BigDecimal.ZERO);
    assertThat(none.costIndex()).isEmpty();
    assertThat(none.scheduleIndex()).isEmpty();
    assertThat(none.endAtCostIndex()).isEmpty();
    assertThat(none.endAtBothIndices()).isEmpty();
    assertThat(Figures.of(none, none.endAtBudgetRate())).hasSize(15);
  }

  /** BAC 1000; what was planned, earned and spent; the sentence of one figure. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "500, 500, 500 | CV | 0.00 EUR | The work done has cost what it was to cost.",
        "500, 500, 400 | CV | 100.00 EUR | The work done has cost 100.00 EUR less than it was to"
            + " cost; material bought ahead of the work counts as cost.",
        "500, 500, 600 | CV | −100.00 EUR | The work done has cost 100.00 EUR more than it was to"
            + " cost; material bought ahead of the work counts as cost.",
        "500, 500, 400 | SV | 0.00 EUR | As much is done as was planned.",
        "500, 400, 400 | SV | −100.00 EUR | Work worth 100.00 EUR less than planned is done.",
        "500, 600, 400 | SV | 100.00 EUR | Work worth 100.00 EUR more than planned is done.",
        "500, 600, 0 | CPI | not yet | Nothing is spent yet, so that it cannot be told.",
        "500, 600, 500 | CPI | 1.200 | Each EUR spent has bought work worth 1.200.",
        "0, 600, 500 | SPI | not yet | Nothing was planned to be done yet, so that it cannot be"
            + " told.",
        "500, 600, 500 | SPI | 1.200 | For each 1.000 of work planned by now, 1.200 is done.",
        "500, 500, 900 | VAC | 0.00 EUR | It ends on its budget.",
        "500, 500, 950 | VAC | −50.00 EUR | It ends 50.00 EUR over its budget.",
        "500, 500, 850 | VAC | 50.00 EUR | It ends 50.00 EUR under its budget.",
        "500, 500, 850 | ETC | 100.00 EUR | 100.00 EUR are still to be spent.",
        "500, 500, 750 | TCPI | 2.000 | To end on budget, each EUR left must buy work worth 2.000.",
        "500, 500, 1000 | TCPI | not reachable | The budget is spent: no way of working ends on"
            + " it.",
      })
  void eachFigureSaysWhichWayItIs(String amounts, String name, String value, String says) {
    String[] each = amounts.split(", ");
    EarnedValue ev =
        new EarnedValue(
            java.util.Currency.getInstance("EUR"),
            new BigDecimal("1000"),
            new BigDecimal(each[0]),
            new BigDecimal(each[1]),
            new BigDecimal(each[2]));
    assertThat(Figures.of(ev, ev.actualCost().plus(Costs.euro(100))))
        .filteredOn(figure -> figure.abbreviation().equals(name))
        .singleElement()
        .satisfies(
            figure -> assertThat(figure.value().replace('\u00a0', ' ')).isEqualTo(value),
            figure -> assertThat(figure.says().replace('\u00a0', ' ')).isEqualTo(says));
  }

  /** One after another is nothing, the two others 500. */
  @ParameterizedTest
  @CsvSource({"0, 500, 500", "500, 0, 500", "500, 500, 0"})
  void byBothIndicesNothingIsForetoldWhereOneOfThemIsNothing(int planned, int earned, int actual) {
    EarnedValue ev =
        new EarnedValue(
            java.util.Currency.getInstance("EUR"),
            new BigDecimal("1000"),
            BigDecimal.valueOf(planned),
            BigDecimal.valueOf(earned),
            BigDecimal.valueOf(actual));
    assertThat(ev.endAtBothIndices()).isEmpty();
  }

  @Test
  void workThatIsGivenUpEarnsNothingAndIsNotPlanned() {
    EarnedValue fence =
        fence(
            FENCE.replace(
                "takes: 1 d, budget: fence}", "takes: 1 d, budget: fence, withdrawn: 2026-02-20}"));
    assertThat(fence.plannedValue()).hasToString("4000.00 EUR");
    assertThat(fence.earnedValue()).hasToString("3333.33 EUR");
  }
}
