package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

class SpentTest {
  private static LineState spars(String spends) {
    return account(spends).line("spars").orElseThrow();
  }

  private static Account account(String yaml) {
    return account(yaml, Sample.TODAY);
  }

  private static Account account(String yaml, LocalDate asOf) {
    String budget =
        yaml.contains("budget:") ? "" : "budget: [{line: spars, title: Spars, amount: 1000}]\n";
    return Account.on(Facts.of(Sample.ledger(budget + yaml), asOf));
  }

  @Test
  void anOrderThatIsPaidCountsOnce() {
    LineState line =
        spars(
            """
            spending:
              - {id: o, on: 2026-02-01, line: spars, what: spruce, amount: 300, state: ordered}
              - {id: p, on: 2026-02-10, line: spars, what: spruce, amount: 300, state: paid, pays: o}
            """);
    assertThat(line.paid()).hasToString("300.00 EUR");
    assertThat(line.ordered()).hasToString("0.00 EUR");
  }

  @Test
  void partPaymentsReduceTheOrder() {
    LineState line =
        spars(
            """
            spending:
              - {id: o, on: 2026-02-01, line: spars, what: spruce, amount: 300, state: ordered}
              - {id: p, on: 2026-02-10, line: spars, what: deposit, amount: 90, state: paid, pays: o}
              - {id: q, on: 2026-02-20, line: spars, what: second part, amount: 60, pays: o, state: paid}
            """);
    assertThat(line.paid()).hasToString("150.00 EUR");
    assertThat(line.ordered()).hasToString("150.00 EUR");
    assertThat(line.committed()).hasToString("300.00 EUR");
  }

  @Test
  void aPaymentInFullClosesAnOrderThatWasDearer() {
    LineState line =
        spars(
            """
            spending:
              - {id: o, on: 2026-02-01, line: spars, what: spruce, amount: 300, state: ordered}
              - {id: p, on: 2026-02-10, line: spars, what: spruce, amount: 280, state: paid, pays: o, in-full: yes}
            """);
    assertThat(line.committed()).hasToString("280.00 EUR");
  }

  @Test
  void aWithdrawnOrderCostsNothingFromThatDay() {
    String order =
        """
        spending:
          - {id: o, on: 2026-02-01, line: spars, what: spruce, amount: 300, state: ordered, withdrawn: 2026-02-20}
        """;
    assertThat(spars(order).ordered()).hasToString("0.00 EUR");
    assertThat(account(order, LocalDate.of(2026, 2, 19)).whole().ordered())
        .hasToString("300.00 EUR");
  }

  @Test
  void aRefundComesBackNoMoreThanWasPaid() {
    LineState line =
        spars(
            """
            spending:
              - {id: p, on: 2026-02-01, line: spars, what: spruce, amount: 300, state: paid}
              - {id: r, on: 2026-02-10, line: spars, what: two staves split, amount: 80, state: refunded, refunds: p}
              - {id: s, on: 2026-02-11, line: spars, what: the lot, amount: 400, state: refunded, refunds: p}
            """);
    assertThat(line.refunded()).hasToString("300.00 EUR");
    assertThat(line.spent()).hasToString("0.00 EUR");
  }

  @Test
  void aRefundOfAnOrderTakesFromItsPayments() {
    LineState line =
        spars(
            """
            spending:
              - {id: o, on: 2026-02-01, line: spars, what: spruce, amount: 300, state: ordered}
              - {id: p, on: 2026-02-10, line: spars, what: deposit, amount: 90, state: paid, pays: o}
              - {id: r, on: 2026-02-20, line: spars, what: deposit back, amount: 120, state: refunded, refunds: o}
            """);
    assertThat(line.spent()).hasToString("0.00 EUR");
  }

  /** A kit for 60 and its freight for 40, in one order: no line gives back more than it paid. */
  @Test
  void aRefundOfAnOrderTakesFromTheLinesThatPaidIt() {
    String paid =
        """
        budget: [{line: spars, title: Spars, amount: 100}, {line: freight, title: Freight, amount: 100}]
        spending:
          - {id: o, on: 2026-02-01, line: spars, what: kit, amount: 100, state: ordered}
          - {id: p, on: 2026-02-02, line: spars, what: kit, amount: 60, state: paid, pays: o}
          - {id: q, on: 2026-02-02, line: freight, what: freight, amount: 40, state: paid, pays: o}
        """;
    Account itsOwnFirst =
        account(
            paid
                + "  - {id: r, on: 2026-02-10, line: freight, what: back, amount: 30, state:"
                + " refunded, refunds: o}");
    assertThat(itsOwnFirst.line("spars").orElseThrow().spent()).hasToString("60.00 EUR");
    assertThat(itsOwnFirst.line("freight").orElseThrow().spent()).hasToString("10.00 EUR");
    Account thenTheOthers =
        account(
            paid
                + "  - {id: r, on: 2026-02-10, line: spars, what: back, amount: 70, state:"
                + " refunded, refunds: o}");
    assertThat(thenTheOthers.line("spars").orElseThrow().spent()).hasToString("0.00 EUR");
    assertThat(thenTheOthers.line("freight").orElseThrow().spent()).hasToString("30.00 EUR");
    Account all =
        account(
            paid
                + "  - {id: r, on: 2026-02-10, line: spars, what: back, amount: 70, state:"
                + " refunded, refunds: o}\n"
                + "  - {id: s, on: 2026-02-11, line: spars, what: back, amount: 30, state:"
                + " refunded, refunds: p}");
    assertThat(all.line("spars").orElseThrow().spent()).hasToString("0.00 EUR");
    assertThat(all.line("freight").orElseThrow().spent()).hasToString("0.00 EUR");
    assertThat(all.refused()).isEmpty();
  }

  @Test
  void whatIsBelowZeroIsInNoSumAndIsToldAsLacking() {
    Facts day =
        Facts.of(
            Sample.ledger(
                """
                budget: [{line: spars, title: Spars, amount: 100}, {line: rest, title: Rest, amount: 100}]
                spending: [{id: n, on: 2026-02-01, line: spars, what: back, amount: -20, state: paid}]
                """),
            Sample.TODAY);
    assertThat(Account.on(day).whole().paid()).hasToString("0.00 EUR");
    assertThat(Lacks.on(day)).containsExactly("spend n is below zero, and in no sum");
    assertThat(Lacks.ofLine("spars", day)).hasSize(1);
    assertThat(Lacks.ofLine("rest", day)).isEmpty();
  }

  @Test
  void aRefundThatNamesNothingTakesFromItsLine() {
    LineState line =
        spars(
            """
            spending:
              - {id: p, on: 2026-02-01, line: spars, what: spruce, amount: 30, state: paid}
              - {id: r, on: 2026-02-20, line: spars, what: voucher, amount: 50, state: refunded}
            """);
    assertThat(line.spent()).hasToString("0.00 EUR");
  }

  @Test
  void whatComesAfterTheDayDoesNotCount() {
    Account account =
        account(
            """
            spending:
              - {id: p, on: 2026-02-01, line: spars, what: spruce, amount: 30, state: paid}
              - {id: q, on: 2026-02-20, line: spars, what: spruce, amount: 50, state: paid}
            """,
            LocalDate.of(2026, 2, 19));
    assertThat(account.whole().paid()).hasToString("30.00 EUR");
  }

  @Test
  void moneyOnAnUnknownLineStillCountsInTheWhole() {
    Account account =
        account(
            """
            spending:
              - {id: p, on: 2026-02-01, line: sparrs, what: spruce, amount: 30, state: paid}
            """);
    assertThat(account.elsewhere().orElseThrow().paid()).hasToString("30.00 EUR");
    assertThat(account.whole().paid()).hasToString("30.00 EUR");
  }

  @Test
  void foreignMoneyIsShownWithWhatItsRateHasAdded() {
    Account account =
        account(
            """
            rates:
              - {on: 2026-01-05, from: NZD, to: EUR, rate: 0.50}
              - {on: 2026-02-01, from: NZD, to: EUR, rate: 0.55}
              - {on: 2026-03-01, from: NZD, to: EUR, rate: 0.60}
            spending:
              - {id: p, on: 2026-02-01, line: spars, what: spruce, amount: 100 NZD, tax: 15 NZD, duty: 4 NZD, state: paid}
              - {id: o, on: 2026-02-01, line: spars, what: more spruce, amount: 200 NZD, state: ordered}
            """);
    LineState line = account.line("spars").orElseThrow();
    assertThat(line.paid()).hasToString("55.00 EUR");
    assertThat(line.ordered()).as("at the rate of the day").hasToString("120.00 EUR");
    assertThat(line.byRate()).hasToString("25.00 EUR");
    assertThat(line.tax()).hasToString("8.25 EUR");
    assertThat(line.duty()).hasToString("2.20 EUR");
  }

  @Test
  void withoutARateNothingIsSummedAndTheSpendIsNamed() {
    Account account =
        account(
            """
            spending:
              - {id: p, on: 2026-02-01, line: spars, what: spruce, amount: 100 NZD, state: paid}
            """);
    assertThat(account.whole().paid()).hasToString("0.00 EUR");
    assertThat(account.unvalued()).extracting("id").containsExactly("p");
  }

  @Test
  void theContingencyPaysForWhatTheForecastIsBeyondTheBudget() {
    Account account =
        account(
            """
            build: {name: Sample, currency: EUR, started: 2026-01-05, contingency: 500}
            spending:
              - {id: p, on: 2026-02-01, line: spars, what: spruce, amount: 1200, state: paid}
            """);
    assertThat(account.whole().over()).hasToString("200.00 EUR");
    assertThat(account.contingencyLeft().orElseThrow()).hasToString("300.00 EUR");
  }

  @Test
  void claimsAreKeptApart() {
    Account account =
        account(
            """
            kit: [{id: stave, what: stave, qty: 14 m, price: 10 EUR/m}]
            shortages: [{id: short, item: stave, qty: 4 m, found: 2026-01-24, cause: not-packed}]
            claims:
              - {id: c, against: kit-maker, shortages: [short], sent: 2026-01-26, remedy: credit, costs: [p]}
            spending:
              - {id: p, on: 2026-02-01, line: spars, what: courier, amount: 25, state: paid, because: short}
            """);
    assertThat(account.whole().spent()).hasToString("25.00 EUR");
    assertThat(account.ifGranted()).hasToString("65.00 EUR");
  }

  @Test
  void aRefundOfExactlyWhatWasPaidIsNoneTooMany() {
    Account account =
        account(
            """
            spending:
              - {id: p, on: 2026-02-10, line: spars, what: spruce, amount: 40, state: paid}
              - {id: r, on: 2026-02-20, line: spars, what: back, amount: 40, state: refunded, refunds: p}
            """);
    assertThat(account.refused()).isEmpty();
    assertThat(account.whole().spent()).hasToString("0.00 EUR");
  }

  /** A line that has got back more than it paid lends nothing to a refund that names nothing. */
  @Test
  void aRefundThatNamesNothingTakesNoMoreThanItsLineAndTheWholeHaveSpent() {
    Account account =
        account(
            """
            budget: [{line: spars, title: Spars, amount: 100}, {line: rest, title: Rest, amount: 100}]
            spending:
              - {id: p, on: 2026-02-10, line: spars, what: spruce, amount: 40, state: paid}
              - {id: q, on: 2026-02-11, line: rest, what: rope, amount: 30, state: paid}
              - {id: r, on: 2026-02-20, line: spars, what: back, amount: 25, state: refunded}
              - {id: s, on: 2026-02-21, line: spars, what: back, amount: 25, state: refunded}
            """);
    assertThat(account.line("spars").orElseThrow().refunded()).hasToString("40.00 EUR");
    assertThat(account.refused())
        .singleElement()
        .satisfies(each -> assertThat(each.left()).hasToString("15.00 EUR"));
  }

  /** Half of it is ordered, half promised: what the way out costs is not all in the order. */
  @Test
  void onlyWhatIsOrderedWholeHasItsCostInTheOrder() {
    String yaml =
        """
        budget: [{line: spars, title: Spars, amount: 1000, remaining: 0}]
        kit: [{id: stave, what: stave, qty: 6}]
        deliveries: [{id: d, received: 2026-01-22, from: kit-maker, counted: [{item: stave, qty: 0}]}]
        shortages: [{id: s, item: stave, qty: 6, found: 2026-01-24, cause: not-packed, line: spars, options: [{kind: buy, cost: 90}], decided: {option: buy, on: 2026-02-01, by: nora}}]
        claims: [{id: c, against: kit-maker, shortages: [s], sent: 2026-01-25, remedy: replacement, events: [{on: 2026-02-01, what: promised, qty: 3, expect: 2026-03-20}]}]
        spending: [{id: o, on: 2026-02-02, line: spars, what: staves, amount: 45, state: ordered, replaces: s, qty: %d%s}]
        """;
    assertThat(on(yaml.formatted(3, ", expected: 2026-03-10"))).hasToString("90.00 EUR");
    assertThat(on(yaml.formatted(6, ", expected: 2026-03-10"))).hasToString("45.00 EUR");
    String alone = yaml.replaceFirst("claims: .*\n", "");
    assertThat(on(alone.formatted(6, ""))).as("no day is named").hasToString("45.00 EUR");
    assertThat(on(alone.formatted(6, ", expected: 2026-02-20")))
        .as("late")
        .hasToString("45.00 EUR");
    assertThat(on(alone.formatted(3, ""))).as("half of it").hasToString("90.00 EUR");
  }

  private static kitwright.value.Money on(String yaml) {
    return Account.on(kitwright.ledger.Facts.of(Sample.ledger(yaml), Sample.TODAY))
        .whole()
        .forecast();
  }
}
