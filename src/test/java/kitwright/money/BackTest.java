package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** What claims may bring back, and what is spent; each sum by hand. */
class BackTest {
  private static final String BASE =
      """
      budget: [{line: a, title: A, amount: 900, remaining: 0}, {line: b, title: B, amount: 100, remaining: 0}]
      kit: [{id: bolt, what: bolt, qty: 10, price: 30 EUR}]
      deliveries: [{id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 6}]}]
      shortages: [{id: s, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed}]
      claims: [{id: c, against: kit-maker, shortages: [s], remedy: refund%s}]
      spending:
        - {id: kit, on: 2026-01-02, line: a, what: kit, state: paid, amount: 300}
      %s
      """;

  private static Account account(String claim, String spends) {
    return Account.on(Facts.of(Sample.ledger(BASE.formatted(claim, spends)), Sample.TODAY));
  }

  private static Back back(String claim, String spends) {
    return account(claim, spends).claims().get(0);
  }

  private static final String SENT = ", sent: 2026-01-10";

  @Test
  void aDraftBringsNothing() {
    assertThat(back("", "").state()).isEqualTo(Back.State.DRAFT);
    assertThat(back("", "").ifGranted()).hasToString("0.00 EUR");
  }

  @Test
  void whatIsAskedMayComeLessWhatCame() {
    assertThat(back(SENT, "").ifGranted()).as("4 × 30").hasToString("120.00 EUR");
    String came =
        "  - {id: r, on: 2026-02-01, line: a, what: back, state: refunded, amount: 50, refunds:"
            + " kit, because: s}";
    Back back = back(SENT, came);
    assertThat(back.received()).hasToString("50.00 EUR");
    assertThat(back.ifGranted()).hasToString("70.00 EUR");
    assertThat(account(SENT, came).whole().spent()).as("300 − 50").hasToString("250.00 EUR");
  }

  @Test
  void theEndTakesThePlaceOfWhatWasAsked() {
    String credited = SENT + ", settled: {on: 2026-02-10, how: credited, amount: 80 EUR}";
    Back back = back(credited, "");
    assertThat(back.state()).isEqualTo(Back.State.GRANTED);
    assertThat(back.outstanding()).hasToString("80.00 EUR");
    assertThat(back.ifGranted()).hasToString("0.00 EUR");
    assertThat(back(SENT + ", settled: {on: 2026-02-10, how: refused}", "").state())
        .isEqualTo(Back.State.REFUSED);
    assertThat(back(SENT + ", settled: {on: 2026-03-10, how: refused}", "").state())
        .as("later than today")
        .isEqualTo(Back.State.ASKED);
  }

  /** A refund that names no payment takes from its line what was paid there, and no more. */
  @Test
  void aRefundThatNamesNothingTakesFromItsLine() {
    Account account =
        account(
            "",
            "  - {id: p, on: 2026-01-03, line: b, what: p, state: paid, amount: 40}\n"
                + "  - {id: r, on: 2026-02-01, line: b, what: back, state: refunded, amount: 55}");
    assertThat(account.line("b").orElseThrow().spent()).hasToString("0.00 EUR");
    assertThat(account.whole().spent()).hasToString("300.00 EUR");
    assertThat(account.refused())
        .singleElement()
        .satisfies(each -> assertThat(each.left()).hasToString("40.00 EUR"));
  }

  /** What is asked, of what is paid; the order stands for its payments. */
  @Test
  void aCostIsAskedBackAsFarAsItIsPaid() {
    String costs = SENT + ", costs: [%s]";
    String spends =
        "  - {id: o, on: 2026-01-12, line: a, what: o, state: ordered, amount: 50}\n"
            + "  - {id: p, on: 2026-01-13, line: a, what: p, state: paid, amount: 20, pays: o}";
    assertThat(back(costs.formatted("p"), spends).costs()).hasToString("20.00 EUR");
    assertThat(back(costs.formatted("o"), spends).costs()).as("20 of 50").hasToString("20.00 EUR");
    assertThat(back(costs.formatted("o"), spends).ifGranted())
        .as("4 × 30 + 20")
        .hasToString("140.00 EUR");
  }

  /** A line that has its own end is asked no more; what it brought is granted. */
  @Test
  void aLineThatIsSettledIsAskedNoMore() {
    String lines =
        """
        budget: [{line: a, title: A, amount: 900, remaining: 0}]
        kit: [{id: bolt, what: bolt, qty: 10, price: 30 EUR}, {id: eye, what: eye, qty: 10, price: 5 EUR}]
        deliveries: [{id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 6}, {item: eye, qty: 8}]}]
        shortages:
          - {id: s, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed}
          - {id: t, item: eye, qty: 2, found: 2026-01-06, cause: not-packed}
        claims: [{id: c, against: kit-maker, sent: 2026-01-10, remedy: refund, shortages: [{shortage: s%s}, {shortage: t, remedy: %s}]}]
        spending: [{id: kit, on: 2026-01-02, line: a, what: kit, state: paid, amount: 300}]
        """;
    assertThat(claim(lines.formatted("", "refund")).ifGranted())
        .as("4 × 30 + 2 × 5")
        .hasToString("130.00 EUR");
    assertThat(claim(lines.formatted("", "cost")).goodsOf().keySet())
        .as("what only its costs are asked for is no goods")
        .containsExactly("s");
    String ended = ", settled: [{on: 2026-02-10, how: credited, amount: 100 EUR}]";
    Back back = claim(lines.formatted(ended, "refund"));
    assertThat(back.goodsOf().keySet()).containsExactly("t");
    assertThat(back.granted().orElseThrow()).hasToString("100.00 EUR");
    assertThat(back.ifGranted()).hasToString("10.00 EUR");
    assertThat(back.outstanding()).hasToString("100.00 EUR");
  }

  private static Back claim(String yaml) {
    return Account.on(Facts.of(Sample.ledger(yaml), Sample.TODAY)).claims().get(0);
  }

  /** 100 NZD were granted and came at 0.50; that the rate is 0.60 now is nobody's debt. */
  @Test
  void whatCameWholeIsNotOwedOnceMoreByALaterRate() {
    String rates =
        "rates: [{on: 2026-01-01, from: NZD, to: EUR, rate: 0.50, source: x}, {on: 2026-02-20,"
            + " from: NZD, to: EUR, rate: 0.60, source: x}]\n";
    String settled = SENT + ", settled: {on: 2026-02-10, how: refunded, amount: 100 NZD}";
    String came =
        "  - {id: r, on: 2026-02-12, line: a, what: back, state: refunded, amount: %s NZD, refunds:"
            + " kit, because: s}";
    Back all = claim(rates + BASE.formatted(settled, came.formatted(100)));
    assertThat(all.outstanding()).hasToString("0.00 EUR");
    Back less = claim(rates + BASE.formatted(settled, came.formatted(90)));
    assertThat(less.outstanding()).as("60 − 45").hasToString("15.00 EUR");
  }
}
