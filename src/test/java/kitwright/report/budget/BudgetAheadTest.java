package kitwright.report.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import kitwright.report.Told;
import org.junit.jupiter.api.Test;

class BudgetAheadTest {
  private static final String SPARS =
      """
      budget:
        - {line: spars, title: Spars, amount: 100, remaining: [10, 20, 60]}
        - {line: rig, title: Rig, amount: 50, remaining: 30}
      kit: [{id: stave, what: stave, qty: 4, price: 3}]
      tasks:
        - {id: plane, what: Plane, takes: 1 d, budget: spars, started: 2026-02-02, finished: 2026-02-02}
        - {id: oil, what: Oil, takes: 1 d, budget: spars}
      shortages:
        - id: s
          item: stave
          qty: 1
          found: 2026-02-02
          cause: not-packed
          line: spars
          options: [{kind: wait}, {kind: buy, cost: 30}]
      spending:
        - {id: a, on: 2026-01-10, line: spars, what: wood, amount: 40, state: paid}
        - {id: b, on: 2026-01-28, line: spars, what: glue, amount: 15, state: ordered}
        - {id: c, on: 2026-02-20, line: spars, what: glue, amount: 15, state: paid, pays: b}
      """;

  private static List<List<String>> table(String head) {
    return Told.tables(Told.markdown(BudgetReport::sheets, SPARS)).stream()
        .filter(table -> table.get(0).contains(head))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theLastReadingOfEachMonthStandsBesideTheDrawing() {
    assertThat(table("Together"))
        .containsExactly(
            List.of("By", "Paid", "Ordered", "Together"),
            List.of("2026-01-28", "40.00", "15.00", "55.00"),
            List.of("2026-02-20", "55.00", "0.00", "55.00"),
            List.of("2026-03-02", "55.00", "0.00", "55.00"));
  }

  /** By hand: (10 + 20 + 60) / 3 for the range; half of 30 for the two ways out. */
  @Test
  void fromTheForecastToTheAverageEachCostAddsItsPart() {
    assertThat(table("On average"))
        .containsExactly(
            List.of("Cost", "In the forecast", "On average", "Adds"),
            List.of("shortage s", "0.00", "15.00", "+15.00"),
            List.of("still to come: Spars", "20.00", "30.00", "+10.00"),
            List.of("The end", "105.00", "130.00", "+25.00"));
    assertThat(Told.words(Told.markdown(BudgetReport::sheets, SPARS)))
        .contains("On average they end at 130.00 EUR, 25.00 EUR above the forecast");
  }

  /** Chances say nothing of what nobody has estimated: that is told before they are believed. */
  @Test
  void whatNobodyHasEstimatedIsToldBesideTheChances() {
    assertThat(Told.markdown(BudgetReport::sheets, SPARS)).doesNotContain("nobody has estimated");
    assertThat(unestimated(", remaining: 30", ""))
        .contains(
            "of “Rig” what is left of the budget counts as sure, for want of “remaining: [low,"
                + " likely, high]”.");
    assertThat(unestimated("options: [{kind: wait}, {kind: buy, cost: 30}]", "remark: none"))
        .contains("to get round s counts as nothing, since no way out of it states its cost.");
    assertThat(unestimated("{kind: wait}, {kind: buy, cost: 30}", "{kind: buy}"))
        .as("what is bought for nobody knows how much does not cost nothing")
        .contains("to get round s counts as nothing");
    String noRate = SPARS.replace("amount: 15, state: ordered", "amount: 15 GBP, state: ordered");
    assertThat(Told.words(Told.markdown(BudgetReport::sheets, noRate)))
        .contains(
            "What the chances are nobody can tell, since there is no rate for 15.00 GBP of the"
                + " spend b.");
  }

  private static String unestimated(String stated, String left) {
    String report = Told.words(Told.markdown(BudgetReport::sheets, SPARS.replace(stated, left)));
    assertThat(report).contains("The true chances are worse or wider");
    return report;
  }

  @Test
  void noChanceOfTheMoneyIsCertain() {
    String rich = SPARS.replace("title: Spars, amount: 100", "title: Spars, amount: 900");
    assertThat(Told.words(Told.markdown(BudgetReport::sheets, rich)))
        .contains("above 99.9 % stay within the budget");
    String poor = SPARS.replace("title: Spars, amount: 100", "title: Spars, amount: 1");
    assertThat(Told.words(Told.markdown(BudgetReport::sheets, poor)))
        .contains("below 0.1 % stay within the budget");
  }

  @Test
  void theQuantilesRiseAndLieWithinTheirInterval() {
    List<List<String>> rows = table("To end below");
    assertThat(rows).hasSize(5);
    BigDecimal before = BigDecimal.ZERO;
    for (List<String> row : rows.subList(1, 5)) {
      BigDecimal end = new BigDecimal(row.get(1));
      String[] ends = row.get(3).split(" to ");
      assertThat(end)
          .isGreaterThan(before)
          .isBetween(new BigDecimal(ends[0]), new BigDecimal(ends[1]));
      before = end;
    }
  }

  @Test
  void moneyAgainstWorkLeavesOutLinesThatNoTaskEarns() {
    List<List<String>> rows = table("What it says");
    assertThat(rows)
        .contains(
            List.of(
                "earned value (EV)", "50.00 EUR", "The work that is done was to cost 50.00 EUR."),
            List.of("actual cost (AC)", "55.00 EUR", "It has cost 55.00 EUR so far."));
    assertThat(Told.words(Told.markdown(BudgetReport::sheets, SPARS)))
        .contains("No task earns these lines, and they are in no figure here: Rig.");
  }

  @Test
  void whereNothingIsUncertainNoRangeIsTold() {
    String certain =
        SPARS
            .replace("[10, 20, 60]", "20")
            .replace("options: [{kind: wait}, {kind: buy, cost: 30}]", "");
    assertThat(Told.markdown(BudgetReport::sheets, certain)).doesNotContain("Where it may end");
  }
}
