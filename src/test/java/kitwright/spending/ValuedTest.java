package kitwright.spending;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** What each spend counts for on its line, with tax, duty and what rates did. By hand beside it. */
class ValuedTest {
  private static Books books(String spends) {
    return Books.on(
        Facts.of(
            Sample.ledger(
                """
                budget: [{line: a, title: A, amount: 900}, {line: b, title: B, amount: 900}]
                kit: [{id: bolt, what: bolt, qty: 10}, {id: screw, what: screw, qty: 10}]
                rates:
                  - {on: 2026-01-05, from: USD, to: EUR, rate: 0.50, source: bank}
                  - {on: 2026-02-01, from: USD, to: EUR, rate: 0.60, source: bank}
                  - {on: 2026-02-20, from: USD, to: EUR, rate: 0.70, source: bank}
                shortages: [{id: s, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed}]
                substitutions: [{id: x, why: no bolts, instead-of: {item: bolt, qty: 4}, use: [{item: screw, qty: 4}], for: s, grade: finish}]
                borrowed: [{id: saw, tool: saw, from: pell, on: 2026-01-10, condition: good}]
                spending:
                """
                    + spends),
            Sample.TODAY));
  }

  /** 100 USD at 0.60; at 0.50 when the build began: the rate added 10. */
  @Test
  void aForeignPaymentCountsByTheRateOfItsDay() {
    Tally a =
        books(
                "  - {id: p, on: 2026-02-03, line: a, what: w, state: paid, amount: 100 USD, tax:"
                    + " 20 USD, duty: 5 USD}\n")
            .tally("a");
    assertThat(a.paid()).hasToString("60.00 EUR");
    assertThat(a.tax()).hasToString("12.00 EUR");
    assertThat(a.duty()).hasToString("3.00 EUR");
    assertThat(a.byRate()).hasToString("10.00 EUR");
    assertThat(a.unforeseen()).hasToString("0.00 EUR");
  }

  /** Half of it is open: 50 USD at the 0.70 of the day, its tax with it. */
  @Test
  void anOpenOrderCountsByTheRateOfTheDayAskedFor() {
    Tally a =
        books(
                """
                  - {id: o, on: 2026-02-03, line: a, what: w, state: ordered, amount: 100 USD, tax: 20 USD}
                  - {id: p, on: 2026-02-03, line: a, what: w, state: paid, amount: 50 USD, pays: o}
                """)
            .tally("a");
    assertThat(a.ordered()).hasToString("35.00 EUR");
    assertThat(a.tax()).as("half of 20 USD").hasToString("7.00 EUR");
    assertThat(a.byRate()).as("35 − 25, and 30 − 25").hasToString("15.00 EUR");
  }

  @Test
  void anOrderGivenUpCountsNothing() {
    Books books =
        books(
            "  - {id: o, on: 2026-02-03, line: a, what: w, state: ordered, amount: 100, withdrawn:"
                + " 2026-02-10}\n");
    assertThat(books.valued()).isEmpty();
    assertThat(books.holds("a")).isFalse();
  }

  /** 60 of 80 are refused, and as much of its tax. */
  @Test
  void aRefundCountsAsFarAsItIsNotRefused() {
    Books books =
        books(
            """
              - {id: p, on: 2026-02-03, line: a, what: w, state: paid, amount: 20, tax: 4}
              - {id: r, on: 2026-02-10, line: b, what: w, state: refunded, amount: 80, tax: 16, refunds: p}
            """);
    assertThat(books.tally("a").refunded()).as("on the payment’s line").hasToString("20.00 EUR");
    assertThat(books.tally("a").tax()).hasToString("0.00 EUR");
    assertThat(books.holds("b")).isFalse();
    assertThat(books.returned().get(0).isWhole()).isFalse();
    assertThat(books.valued()).extracting(Valued::signed).hasToString("[20.00 EUR, -20.00 EUR]");
  }

  @Test
  void aRefundThatNamesNothingTakesFromItsLineWhatIsLeftThere() {
    String paid =
        """
          - {id: p, on: 2026-02-03, line: a, what: w, state: paid, amount: 20}
          - {id: q, on: 2026-02-03, line: b, what: w, state: paid, amount: 90}
        """;
    Books part =
        books(
            paid + "  - {id: r, on: 2026-02-10, line: a, what: w, state: refunded, amount: 20}\n");
    assertThat(part.tally("a").refunded()).hasToString("20.00 EUR");
    assertThat(part.refused()).isEmpty();
    assertThat(part.returned().get(0).isWhole()).isTrue();
    Books more =
        books(
            paid + "  - {id: r, on: 2026-02-10, line: a, what: w, state: refunded, amount: 80}\n");
    assertThat(more.tally("a").refunded()).hasToString("20.00 EUR");
    assertThat(more.returned().get(0).came()).hasToString("20.00 EUR");
    assertThat(more.refused())
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.asked()).hasToString("80.00 EUR");
              assertThat(each.left()).hasToString("20.00 EUR");
              assertThat(each.isOfUnpaid()).isFalse();
            });
  }

  @Test
  void whatNamesNothingAndHasNoRateIsInNoSum() {
    Books books =
        books(
            """
              - {id: p, on: 2026-02-03, line: a, what: w, state: paid, amount: 20}
              - {id: r, on: 2026-02-10, line: a, what: w, state: refunded, amount: 8 GBP}
            """);
    assertThat(books.tally("a").spent()).hasToString("20.00 EUR");
    assertThat(books.unvalued()).extracting("id").containsExactly("r");
    assertThat(books.returned().get(0).came()).hasToString("8.00 GBP");
  }

  /** Refunds that name what they give back come first, whatever their day. */
  @Test
  void whatIsNamedComesBackBeforeWhatIsNot() {
    Books books =
        books(
            """
              - {id: p, on: 2026-02-03, line: a, what: w, state: paid, amount: 20}
              - {id: r, on: 2026-02-10, line: a, what: w, state: refunded, amount: 15}
              - {id: s, on: 2026-02-11, line: a, what: w, state: refunded, amount: 15, refunds: p}
            """);
    assertThat(books.refused()).extracting(each -> each.refund().id()).containsExactly("r");
    assertThat(books.refused().get(0).left()).hasToString("5.00 EUR");
  }

  @Test
  void noBudgetForesawWhatAShortageOrDamageBroughtAbout() {
    Books books =
        books(
            """
              - {id: p, on: 2026-02-03, line: a, what: w, state: paid, amount: 1, because: s}
              - {id: q, on: 2026-02-03, line: a, what: w, state: paid, amount: 2, substitution: x}
              - {id: m, on: 2026-02-03, line: a, what: w, state: paid, amount: 4, repairs: saw}
              - {id: o, on: 2026-02-03, line: a, what: w, state: ordered, amount: 8, because: s}
              - {id: n, on: 2026-02-03, line: a, what: w, state: paid, amount: 8, pays: o}
              - {id: l, on: 2026-02-03, line: a, what: w, state: paid, amount: 16}
              - {id: r, on: 2026-02-10, line: a, what: w, state: refunded, amount: 1, refunds: p}
            """);
    assertThat(books.tally("a").unforeseen())
        .as("2 + 4 + 8, and 1 that came back")
        .hasToString("14.00 EUR");
    assertThat(books.tally("a").paid()).hasToString("31.00 EUR");
  }

  @Test
  void whatNamesNoLineOfTheBudgetStandsApart() {
    Books books =
        books("  - {id: p, on: 2026-02-03, line: nowhere, what: w, state: paid, amount: 3}\n");
    assertThat(books.tally(Books.NO_LINE).paid()).hasToString("3.00 EUR");
    assertThat(books.holds("nowhere")).isFalse();
  }
}
