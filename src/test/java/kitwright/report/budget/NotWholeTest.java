package kitwright.report.budget;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.money.Account;
import kitwright.money.CostRange;
import kitwright.money.Lacks;
import kitwright.report.Told;
import kitwright.report.words.Sheet;
import org.junit.jupiter.api.Test;

/** Where a part of the money cannot be read or converted, no sum is told as if it were whole. */
class NotWholeTest {
  private static final String BUDGET =
      """
      rates: [{on: 2026-01-01, from: USD, to: EUR, rate: 0.90, source: the bank}]
      budget:
        - {line: a, title: A, amount: 900, remaining: [10, 20, 50]}
        - {line: b, title: B, amount: %s}
      spending:
        - {id: p, on: 2026-01-09, line: a, what: courier, state: paid, amount: 100 USD}
        - {id: q, on: 2026-01-09, line: a, what: courier, state: paid, amount: %s}
      """;

  private static Facts day(String line, String spend) {
    Findings faults = new Findings();
    return Facts.of(Sample.read(BUDGET.formatted(line, spend), faults).orElseThrow(), Sample.TODAY);
  }

  private static Sheet budget(Facts now) {
    return BudgetReport.sheet(now, CostRange.of(now.ledger(), Account.on(now)), false);
  }

  @Test
  void whatIsWholeLacksNothing() {
    Facts whole = day("50", "10");
    assertThat(Lacks.on(whole)).isEmpty();
    assertThat(Told.markdown(budget(whole)))
        .doesNotContain("cannot be told whole")
        .contains("stay within the budget");
  }

  @Test
  void anUnreadableLineOrSpendLeavesTheSumsAndTheChancesOpen() {
    Facts lineLost = day("5o", "10");
    assertThat(Lacks.on(lineLost)).containsExactly("budget line b cannot be read");
    assertThat(Lacks.ofSpending(lineLost)).isEmpty();
    Facts spendLost = day("50", "1x0");
    assertThat(Lacks.on(spendLost)).containsExactly("spend q cannot be read");
    assertThat(Lacks.ofSpending(spendLost)).containsExactly("spend q cannot be read");
    assertThat(Told.markdown(budget(spendLost)))
        .contains("As far as it can be told: the build is forecast to end at")
        .contains("These sums cannot be told whole: spend q cannot be read.")
        .contains("What the chances are nobody can tell, since spend q cannot be read.")
        .doesNotContain("stay within the budget");
    assertThat(budget(spendLost).slots().json())
        .contains("\"lacking\": [\n    \"spend q cannot be read\"\n  ]");
  }

  @Test
  void aLineIsLeftOpenByWhatMayBelongToIt() {
    assertThat(Lacks.ofLine("a", day("50", "1x0"))).containsExactly("spend q cannot be read");
    assertThat(Lacks.ofLine("b", day("50", "1x0"))).as("q names the line a").isEmpty();
    assertThat(Lacks.ofLine("a", day("5o", "10"))).as("the line b is another").isEmpty();
    assertThat(Told.markdown(BudgetLineTold.sheet("a", day("50", "1x0"))))
        .contains("These sums cannot be told whole: spend q cannot be read.");
  }

  @Test
  void aMissingPartWhosePriceNobodyKnowsLeavesTheForecastOpen() {
    String part =
        BUDGET.formatted("50", "10")
            + """
            kit: [{id: rail, what: rail, qty: 4}]
            shortages: [{id: s, item: rail, qty: 2, found: 2026-02-02, cause: damaged}]
            """;
    String why = "nobody has said what it costs to get round the shortage s.";
    Facts day = Facts.of(Sample.ledger(part), Sample.TODAY);
    assertThat(Told.markdown(budget(day)))
        .contains("As far as it can be told: the build is forecast to end at")
        .contains("These sums cannot be told whole: " + why);
    assertThat(Told.markdown(BudgetLineTold.sheet("a", day))).contains(why);
  }

  @Test
  void whatHasNoRateIsLackingToo() {
    Facts noRate = day("50", "10 GBP");
    assertThat(Lacks.on(noRate)).containsExactly("there is no rate for 10.00 GBP of the spend q");
    assertThat(Lacks.ofLine("a", noRate)).hasSize(1);
    assertThat(Lacks.ofLine("b", noRate)).isEmpty();
  }

  @Test
  void whatMayHoldMoneyIsLackingToo() {
    Findings faults = new Findings();
    Facts day =
        Facts.of(
            Sample.read(BUDGET.formatted("50", "10") + "spendings: [{id: r}]\n", faults)
                .orElseThrow(),
            Sample.TODAY);
    assertThat(Lacks.on(day))
        .singleElement()
        .asString()
        .contains("“spendings”")
        .endsWith("cannot be read, and may hold some of it");
  }

  @Test
  void eachRateStandsBesideWhatItConverted() {
    assertThat(budget(day("50", "10")).slots().json())
        .contains("\"one-is\": 0.9,")
        .contains("\"as-written\": \"1\u00a0USD = 0.90\u00a0EUR on 2026-01-01\"")
        .contains("\"source\": \"the bank\"");
    assertThat(BudgetLineTold.sheet("a", day("50", "10")).slots().json())
        .contains("\"amount\": \"100.00 USD\",")
        .contains("\"amount.currency\": \"USD\",\n      \"one-is\": 0.9,");
    assertThat(budget(day("50", "10 GBP, rate: 1.20")).slots().json())
        .contains("\"as-written\": \"1\u00a0GBP = 1.2\u00a0EUR, on the record itself\"");
    assertThat(budget(day("9 CHF", "10")).slots().json()).doesNotContain("\"CHF\",");
  }
}
