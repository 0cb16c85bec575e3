package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

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
}
