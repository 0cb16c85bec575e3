package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/**
 * Orders in one currency, payments and refunds in another. Each sum is followed by hand beside it,
 * by the rates of the records first and Regulation (EC) 1103/97 for the others.
 */
class AbroadTest {
  private static Account account(String yaml) {
    String budget =
        yaml.contains("budget:")
            ? ""
            : "budget: [{line: a, title: A, amount: 1000, remaining: 0}]\n";
    return Account.on(Facts.of(Sample.ledger(budget + yaml), Sample.TODAY));
  }

  private static String spending(String... lines) {
    return "spending:\n"
        + String.join(
            "",
            java.util.Arrays.stream(lines)
                .map(line -> "  - {" + line + ", line: a, what: thing}\n")
                .toList());
  }

  @Test
  void aPaymentAtHomePaysAnOrderByTheOrdersOwnRate() {
    // 92.00 EUR / 0.92 = 100.00 USD: all of it.
    LineState line =
        account(
                spending(
                    "id: o, on: 2026-01-10, state: ordered, amount: 100.00 USD, rate: 0.92",
                    "id: p, on: 2026-01-15, state: paid, amount: 92.00 EUR, pays: o"))
            .whole();
    assertThat(line.paid()).hasToString("92.00 EUR");
    assertThat(line.ordered()).hasToString("0.00 EUR");
  }

  @Test
  void aPaymentInAThirdCurrencyGoesThroughHome() {
    // 20 GBP × 1.15 = 23 EUR; / 0.92 = 25 USD; 100 − 40 − 25 = 35 USD; × 0.92 = 32.20 EUR.
    LineState line =
        account(
                spending(
                    "id: o, on: 2026-01-10, state: ordered, amount: 100.00 USD, rate: 0.92",
                    "id: p, on: 2026-01-20, state: paid, amount: 40.00 USD, rate: 0.90, pays: o",
                    "id: q, on: 2026-01-20, state: paid, amount: 20.00 GBP, rate: 1.15, pays: o"))
            .whole();
    assertThat(line.paid()).as("36.00 + 23.00").hasToString("59.00 EUR");
    assertThat(line.ordered()).hasToString("32.20 EUR");
  }

  @Test
  void datedRatesCrossWhereNoRecordHasItsOwn() {
    // 30.00 EUR: / 0.92 × 150.25 = 4899 JPY; / 490.5 = 9.988 KWD. 100.125 − 40.125 − 10.001 − 9.988
    // = 40.011 KWD; × 490.5 = 19625 JPY.
    Account account =
        account(
            """
            build: {name: E, currency: JPY, started: 2026-01-01, launch: 2026-12-31}
            budget: [{line: a, title: A, amount: 100000, remaining: 0}]
            rates:
              - {on: 2026-01-01, from: KWD, to: JPY, rate: 487.355, source: x}
              - {on: 2026-02-01, from: KWD, to: JPY, rate: 490.5, source: x}
              - {on: 2026-01-01, from: USD, to: JPY, rate: 150.25, source: x}
              - {on: 2026-01-01, from: USD, to: EUR, rate: 0.92, source: x}
            """
                + spending(
                    "id: o, on: 2026-01-10, state: ordered, amount: 100.125 KWD",
                    "id: p, on: 2026-01-15, state: paid, amount: 40.125 KWD, pays: o",
                    "id: q, on: 2026-02-03, state: paid, amount: 10.001 KWD, pays: o",
                    "id: r, on: 2026-02-10, state: paid, amount: 30.00 EUR, pays: o"));
    assertThat(account.whole().ordered()).hasToString("19625 JPY");
    assertThat(account.whole().paid()).as("19555 + 4905 + 4899").hasToString("29359 JPY");
    assertThat(account.unvalued()).isEmpty();
  }

  @Test
  void aRefundAtHomeGivesBackAForeignPayment() {
    // 46 EUR / 0.92 = 50 USD of 100.
    String paid = "id: p, on: 2026-01-10, state: paid, amount: 100.00 USD, rate: 0.92";
    Account half =
        account(
            spending(
                paid, "id: r, on: 2026-02-15, state: refunded, amount: 46.00 EUR, refunds: p"));
    assertThat(half.whole().spent()).hasToString("46.00 EUR");
    assertThat(half.unvalued()).isEmpty();
    Account tooMuch =
        account(
            spending(
                paid,
                "id: r, on: 2026-02-15, state: refunded, amount: 46.00 EUR, refunds: p",
                "id: s, on: 2026-02-16, state: refunded, amount: 69.00 EUR, refunds: p"));
    assertThat(tooMuch.whole().spent()).as("no refund makes money").hasToString("0.00 EUR");
    assertThat(tooMuch.refused())
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.asked()).hasToString("75.00 USD");
              assertThat(each.left()).hasToString("50.00 USD");
            });
  }

  @Test
  void aLineThatStandsTwiceHoldsItsSpendsOnce() {
    Account account =
        account(
            "budget: [{line: a, title: A, amount: 1000, remaining: 0}, {line: a, title: B, amount:"
                + " 500}]\n"
                + spending("id: p, on: 2026-01-10, state: paid, amount: 38.00"));
    assertThat(account.lines())
        .extracting(each -> each.paid().toString())
        .containsExactly("38.00 EUR", "0.00 EUR");
    assertThat(account.whole().paid()).hasToString("38.00 EUR");
  }

  @Test
  void whatAShortageCostsComesOnTopOfWhatTheBudgetIsFor() {
    // 500 are for planned things; the 250 of the bought winch come on top, before and after.
    String kit =
        """
        budget: [{line: a, title: A, amount: 500}]
        kit: [{id: winch, what: winch, qty: 1}]
        shortages:
          - id: s
            item: winch
            qty: 1
            found: 2026-02-10
            cause: not-packed
            line: a
            options: [{kind: buy, cost: 250}]
        """;
    assertThat(account(kit).whole().forecast()).hasToString("750.00 EUR");
    String bought = "id: p, on: 2026-02-20, state: paid, amount: 250.00, replaces: s";
    assertThat(account(kit + spending(bought)).whole().forecast()).hasToString("750.00 EUR");
    String planned = "id: q, on: 2026-02-21, state: paid, amount: 100.00";
    assertThat(account(kit + spending(bought, planned)).whole().forecast())
        .as("a planned purchase is within the 500")
        .hasToString("750.00 EUR");
  }

  /** A spend, a budget, what remains of one, a way out, a repair and a price: each is named. */
  @Test
  void whatHasNoRateIsNamedWithTheLineThatLacksIt() {
    String yaml =
        """
        budget: [{line: a, title: A, amount: 1000, remaining: 100 GBP}, {line: b, title: B, amount: 500 AUD}]
        kit: [{id: win, what: winch, qty: 2, price: 300 NZD}, {id: top, what: top, qty: 1, price: 20 NZD}]
        shortages: [{id: s, item: win, qty: 1, found: 2026-02-03, cause: not-packed, line: a, options: [{kind: buy, cost: 200 USD}]}]
        spending: [{id: p, on: 2026-02-06, line: a, what: glue, state: paid, amount: 10 GBP}]
        borrowed: [{id: saw, tool: saw, from: pell, on: 2026-02-01, condition: ok, repair: {what: bent, found: 2026-02-10, cost: 9 CHF, line: a}}]
        """;
    kitwright.ledger.Facts day = kitwright.ledger.Facts.of(Sample.ledger(yaml), Sample.TODAY);
    assertThat(WithoutRate.of(day))
        .extracting(each -> each.words() + ", " + each.line().orElse("whole"))
        .containsExactly(
            "10.00 GBP of the spend p, a",
            "100.00 GBP of the budget line a, a",
            "500.00 AUD of the budget line b, b",
            "200.00 USD of the shortage s, a",
            "9.00 CHF of the loan saw, a",
            "300.00 NZD of the kit item win, whole");
    String rates =
        """
        rates:
          - {on: 2026-01-01, from: GBP, to: EUR, rate: 1.15, source: x}
          - {on: 2026-01-01, from: AUD, to: EUR, rate: 0.6, source: x}
          - {on: 2026-01-01, from: USD, to: EUR, rate: 0.9, source: x}
          - {on: 2026-01-01, from: CHF, to: EUR, rate: 1.05, source: x}
          - {on: 2026-01-01, from: NZD, to: EUR, rate: 0.5, source: x}
        """;
    assertThat(WithoutRate.of(kitwright.ledger.Facts.of(Sample.ledger(yaml + rates), Sample.TODAY)))
        .isEmpty();
  }
}
