package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/** What making a borrowed tool good costs stands in the forecast from the day it is seen. */
class RepairsTest {
  private static final String LEDGER =
      """
      budget: [{line: tools, title: Tools, amount: 100, remaining: 20}, {line: rest, title: Rest, amount: 50, remaining: 0}]
      rates: [{on: 2026-01-01, from: NZD, to: EUR, rate: 0.50, source: x}]
      borrowed:
        - {id: jigsaw, tool: jigsaw, from: pell, on: 2026-02-01, condition: good, repair: {what: bent guide, found: 2026-02-10%s}}
      spending:
        - {id: blades, on: 2026-02-02, line: tools, what: blades, amount: 10, state: paid}
      """;

  private static Account account(String repair, String more, String today) {
    Ledger ledger = Sample.ledger(LEDGER.formatted(repair) + more);
    return Account.on(Facts.of(ledger, LocalDate.parse(today)));
  }

  @Test
  void itIsInTheForecastFromTheDayItWasSeenUntilItIsMadeGood() {
    String repair = ", cost: 15, line: tools, done: 2026-02-20";
    assertThat(account(repair, "", "2026-02-09").whole().forecast()).hasToString("30.00 EUR");
    Account seen = account(repair, "", "2026-02-10");
    assertThat(seen.whole().forecast()).hasToString("45.00 EUR");
    assertThat(seen.line("tools").orElseThrow().repairs()).hasToString("15.00 EUR");
    assertThat(seen.line("tools").orElseThrow().toCome()).hasToString("35.00 EUR");
    assertThat(seen.line("rest").orElseThrow().repairs()).hasToString("0.00 EUR");
    assertThat(account(repair, "", "2026-02-20").whole().forecast()).hasToString("30.00 EUR");
  }

  @Test
  void whatIsPaidForItIsNotToComeOnceMore() {
    String paid =
        "  - {id: guide, on: 2026-02-12, line: tools, what: a guide, amount: 6, state: paid,"
            + " repairs: jigsaw}\n";
    Account account = account(", cost: [10, 15, 30], line: tools", paid, "2026-03-02");
    assertThat(account.repairs().get(0).cost().orElseThrow())
        .hasToString("ThreePoint[low=4.00 EUR, likely=9.00 EUR, high=24.00 EUR]");
    assertThat(account.whole().forecast()).hasToString("45.00 EUR"); // 10 + 6 + 20 + 9
  }

  @Test
  void aCostInForeignMoneyIsInHomeMoney() {
    assertThat(account(", cost: 30 NZD, line: tools", "", "2026-03-02").whole().repairs())
        .hasToString("15.00 EUR");
  }

  @Test
  void aCostThatNobodyKnowsIsNamedAndInNoSum() {
    Account account = account("", "", "2026-03-02");
    assertThat(account.whole().forecast()).hasToString("30.00 EUR");
    assertThat(account.unpricedRepairs())
        .extracting(each -> each.loan().id())
        .containsExactly("jigsaw");
    assertThat(account(", cost: 9 GBP", "", "2026-03-02").unpricedRepairs()).hasSize(1);
  }

  @Test
  void itIsACauseOfItsOwnAndTheCausesStillAddUp() {
    String paid =
        "  - {id: guide, on: 2026-02-12, line: tools, what: a guide, amount: 60, state: paid,"
            + " repairs: jigsaw}\n";
    Ledger ledger = Sample.ledger(LEDGER.formatted(", cost: 75, line: tools") + paid);
    Account account = Account.on(Facts.of(ledger, Sample.TODAY));
    List<Why.Part> parts =
        Why.of(ledger, account).stream().filter(part -> part.line().equals("tools")).toList();
    assertThat(parts)
        .filteredOn(part -> part.cause() == Cause.REPAIR)
        .singleElement()
        .satisfies(
            part -> {
              assertThat(part.amount()).hasToString("75.00 EUR"); // 60 paid, 15 to come
              assertThat(part.of()).contains("jigsaw");
            });
    assertThat(parts.stream().map(Why.Part::amount).reduce((a, b) -> a.plus(b)).orElseThrow())
        .isEqualTo(account.line("tools").orElseThrow().over());
  }

  @Test
  void itsRangeIsInTheRangeOfTheEnd() {
    Ledger ledger = Sample.ledger(LEDGER.formatted(", cost: [10, 15, 30], line: tools"));
    Account account = Account.on(Facts.of(ledger, Sample.TODAY));
    CostRange range = CostRange.of(ledger, account, 20_000, 1);
    // 10 paid, 20 to come, a triangle from 10 by 15 to 30: mean 55/3
    assertThat(Costs.mean(range))
        .isCloseTo(30 + 55 / 3.0, org.assertj.core.data.Offset.offset(0.15));
    assertThat(range.contributions())
        .extracting(each -> each.item().what())
        .containsExactly("repair of jigsaw");
  }

  /** The budget did not foresee it: the rest of the line is still to be spent on what it is for. */
  @Test
  void itsPaymentLeavesTheRestOfTheBudgetAlone() {
    String yaml = LEDGER.formatted(", cost: 15").replace(", remaining: 20", "");
    String paid =
        "  - {id: guide, on: 2026-02-12, line: tools, what: a guide, amount: 6, state: paid%s}\n";
    LocalDate today = Sample.TODAY;
    Account named =
        Account.on(Facts.of(Sample.ledger(yaml + paid.formatted(", repairs: jigsaw")), today));
    assertThat(named.line("tools").orElseThrow().remaining().likely()).hasToString("90.00 EUR");
    Account unnamed = Account.on(Facts.of(Sample.ledger(yaml + paid.formatted("")), today));
    assertThat(unnamed.line("tools").orElseThrow().remaining().likely()).hasToString("84.00 EUR");
  }
}
