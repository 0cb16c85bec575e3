package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rates that cannot be trusted, deposits that nobody asks back, payments that name no order. */
class MoneyRulesTest {
  private static List<String> told(Rule rule, String yaml) {
    return Sample.findings(rule, yaml).stream().map(Finding::what).toList();
  }

  private static String spend(String amount, String rate) {
    return "  - {id: p, on: 2026-02-03, line: a, what: x, amount: %s, state: paid, rate: %s}\n"
        .formatted(amount, rate);
  }

  private static final String LINE = "budget: [{line: a, title: A, amount: 900}]\n";

  @ParameterizedTest
  @CsvSource({
    "100 JPY, 163.9, true",
    "100 JPY, 0.0061, false",
    "100 JPY, 1, false",
    "100 USD, 1.087, false",
    "100 KWD, 3.0, false"
  })
  void aCurrencyWithoutCentsIsWorthLessThanOneWithThem(String amount, String rate, boolean told) {
    assertThat(told(new RateDoubtful(), LINE + "spending:\n" + spend(amount, rate)))
        .hasSize(told ? 1 : 0);
  }

  @Test
  void whetherABudgetSufficesThatCannotBeReadNobodyCanTell() {
    String budget =
        """
        budget: [{line: a, title: A, amount: 50}, {line: b, title: B, amount: %s}]
        spending: [{id: p, on: 2026-02-03, line: a, what: x, amount: %s, state: paid}]
        """;
    assertThat(unsound(new BuildOverBudget(), budget.formatted("lots", "60")))
        .containsExactly(
            "Whether the build is over its budget nobody can tell: spent and ordered are 60.00 EUR"
                + " in all, and budget line b cannot be read.");
    assertThat(unsound(new BuildOverBudget(), budget.formatted("lots", "40"))).isEmpty();
    assertThat(unsound(new BuildOverBudget(), budget.formatted("5", "60")))
        .containsExactly(
            "Spent and ordered are 60.00 EUR in all, 5.00 EUR over the budget of 55.00 EUR.");
    String forecast = budget.replace("amount: 50", "amount: 50, remaining: 30");
    assertThat(unsound(new ForecastOverBudget(), forecast.formatted("lots", "40")))
        .singleElement()
        .asString()
        .startsWith("“A” is forecast");
    assertThat(unsound(new ForecastOverBudget(), forecast.formatted("5", "40")))
        .hasSize(2)
        .anyMatch(each -> each.startsWith("The build is forecast"));
  }

  /** What is found where a record cannot be read. */
  private static List<String> unsound(Rule rule, String yaml) {
    return Sample.findings(rule, Sample.read(yaml, new Findings()).orElseThrow(), Sample.TODAY)
        .stream()
        .map(each -> each.what().replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void theSameHoldsFromHomeIntoIt() {
    String rate = "rates: [{on: 2026-02-01, from: EUR, to: JPY, rate: %s}]\n";
    assertThat(told(new RateDoubtful(), rate.formatted("0.0061")))
        .containsExactly(
            "The rate EUR-JPY-2026-02-01 takes one EUR as 0.0061 JPY; it looks the wrong way"
                + " round: one JPY is worth less.");
    assertThat(told(new RateDoubtful(), rate.formatted("163.9"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "0.92, false", // the same
    "0.85, false", // the market
    "1.087, true", // turned
    "1.30, false",
    "1.40, true", // half as much again is no market
    "0.60, true",
    "0.63, false",
    "9.2, true"
  })
  void aRateIsHeldAgainstTheLastOfItsPair(String rate, boolean told) {
    String rates = "rates: [{on: 2026-02-01, from: USD, to: EUR, rate: 0.92}]\n";
    assertThat(told(new RateDoubtful(), rates + LINE + "spending:\n" + spend("100 USD", rate)))
        .hasSize(told ? 1 : 0);
  }

  @Test
  void ratesNearToOneTurnedCannotBeToldApart() {
    String rates =
        "rates: [{on: 2026-02-01, from: CHF, to: EUR, rate: 1.03},"
            + " {on: 2026-02-02, from: EUR, to: CHF, rate: 1.03}]\n";
    assertThat(told(new RateDoubtful(), rates)).isEmpty();
  }

  @Test
  void oneThatIsDoubtfulIsNoMeasureForTheNext() {
    String rates =
        "rates: [{on: 2026-02-01, from: USD, to: EUR, rate: 0.92},"
            + " {on: 2026-02-02, from: EUR, to: USD, rate: 0.92},"
            + " {on: 2026-02-03, from: USD, to: EUR, rate: 0.92}]\n";
    assertThat(told(new RateDoubtful(), rates))
        .containsExactly(
            "The rate EUR-USD-2026-02-02 takes one EUR as 0.92 USD; it looks the wrong way round"
                + " beside one USD as 0.92 EUR (sample.yaml:1:10).");
  }

  private static final String ORDER =
      LINE
          + """
          spending:
            - {id: o, on: 2026-02-01, line: a, what: o, amount: 300 EUR, to: yard, state: ordered%s}
            - {id: p, on: %s, line: %s, what: p, amount: %s, to: %s, state: paid%s}
          """;

  private static List<String> kept(String order, String payment, String more) {
    String yaml = ORDER.formatted(order, "2026-02-02", "a", "100 EUR", "yard", payment) + more;
    return told(new DepositOnWithdrawn(), yaml);
  }

  private static final String UP = ", withdrawn: 2026-02-20";

  @Test
  void whatWasPaidForAnOrderGivenUpIsAskedBack() {
    assertThat(kept(UP, ", pays: o", ""))
        .containsExactly(
            "The order o was given up on 20\u00a0February\u00a02026, and 100.00\u00a0EUR that were"
                + " paid for it have not come back.");
    assertThat(kept("", ", pays: o", "")).isEmpty();
    assertThat(kept(UP, "", "")).isEmpty();
    assertThat(kept(UP, ", pays: o, in-full: yes", "")).isEmpty();
    assertThat(kept(", withdrawn: 2026-03-20", ", pays: o", "")).as("not yet").isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"p, 100 EUR, 0", "o, 100 EUR, 0", "p, 60 EUR, 1", "z, 100 EUR, 1"})
  void lessWhatCameBack(String of, String amount, int told) {
    String back =
        "  - {id: z, on: 2026-02-01, line: a, what: z, amount: 9 EUR, state: paid}\n"
            + "  - {id: r, on: 2026-02-25, line: a, what: r, amount: %s, state: refunded,"
            + " refunds: %s}\n";
    assertThat(kept(UP, ", pays: o", back.formatted(amount, of))).hasSize(told);
  }

  @ParameterizedTest
  @CsvSource({
    "2026-02-02, a, 300 EUR, yard, 1",
    "2026-02-01, a, 300 EUR, other, 1", // the same line
    "2026-02-02, b, 300 EUR, yard, 1", // the same firm
    "2026-02-02, b, 300 EUR, other, 0",
    "2026-01-31, a, 300 EUR, yard, 0", // paid before it was ordered
    "2026-02-02, a, 299 EUR, yard, 0"
  })
  void aPaymentOfAsMuchAsAnOpenOrderIsAskedAbout(
      String on, String line, String amount, String to, int told) {
    String yaml =
        ORDER
            .formatted("", on, line, amount, to, "")
            .replace("amount: 900}]", "amount: 900}, {line: b, title: B, amount: 9}]");
    assertThat(told(new PaymentUnlinked(), yaml)).hasSize(told);
  }

  @Test
  void anOrderGivenUpOrPaidIsNotAskedFor() {
    String p = "2026-02-02";
    assertThat(told(new PaymentUnlinked(), ORDER.formatted(UP, p, "a", "300 EUR", "yard", "")))
        .isEmpty();
    String paid =
        ORDER.formatted("", p, "a", "300 EUR", "yard", "")
            + "  - {id: q, on: 2026-02-02, line: a, what: q, amount: 9 EUR, state: paid, pays:"
            + " o}\n";
    assertThat(told(new PaymentUnlinked(), paid)).isEmpty();
    String twice =
        ORDER.formatted("", p, "a", "300 EUR", "yard", "")
            + "  - {id: q, on: 2026-02-09, line: a, what: q, amount: 300 EUR, state: paid}\n";
    assertThat(told(new PaymentUnlinked(), twice)).as("one order, one payment").hasSize(1);
  }

  private static final String TWICE =
      """
      budget: [{line: a, title: A, amount: 900}, {line: b, title: B, amount: 900}]
      kit: [{id: bolt, what: bolt, qty: 10}]
      spending:
        - {id: p, on: 2026-02-01, line: a, what: bolts and nuts, amount: 30 EUR, state: paid%s}
        - {id: q, on: %s, line: %s, what: "%s", amount: %s, state: %s%s}
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "\"\" | 2026-02-01 | a | Bolts  and nuts | 30.00 EUR | paid | \"\" | 1",
        ", to: yard | 2026-02-01 | a | bolts and nuts | 30 EUR | paid | , to: Yard | 1",
        ", to: yard | 2026-02-01 | a | bolts and nuts | 30 EUR | paid | \"\" | 1", // nobody else
        ", item: bolt | 2026-02-01 | a | M8 | 30 EUR | paid | , item: bolt | 1", // the same thing
        ", item: bolt, qty: 5 | 2026-02-01 | a | M8 | 30 EUR | paid | , item: bolt, qty: 6 | 0",
        "\"\" | 2026-02-02 | a | bolts and nuts | 30 EUR | paid | \"\" | 0",
        "\"\" | 2026-02-01 | b | bolts and nuts | 30 EUR | paid | \"\" | 0", // half on each line
        "\"\" | 2026-02-01 | a | bolts, invoice 2 | 30 EUR | paid | \"\" | 0",
        "\"\" | 2026-02-01 | a | bolts and nuts | 30.01 EUR | paid | \"\" | 0",
        "\"\" | 2026-02-01 | a | bolts and nuts | 30 EUR | ordered | \"\" | 0",
        ", to: yard | 2026-02-01 | a | bolts and nuts | 30 EUR | paid | , to: smith | 0",
        ", pays: o | 2026-02-01 | a | bolts and nuts | 30 EUR | paid | , pays: n | 0",
        ", pays: o | 2026-02-01 | a | bolts and nuts | 30 EUR | paid | \"\" | 1",
        ", receipt: [1.jpg] | 2026-02-01 | a | bolts and nuts | 30 EUR | paid | , receipt: [2.jpg]"
            + " | 0",
        ", receipt: [1.jpg] | 2026-02-01 | a | bolts and nuts | 30 EUR | paid | , receipt: [1.jpg]"
            + " | 1",
        ", because: s | 2026-02-01 | a | bolts and nuts | 30 EUR | paid | , because: t | 0"
      })
  void whatIsWrittenDownTwiceIsAskedAbout(
      String first,
      String on,
      String line,
      String what,
      String amount,
      String state,
      String second,
      int told) {
    String yaml = TWICE.formatted(first, on, line, what, amount, state, second);
    assertThat(told(new SpendTwice(), yaml)).hasSize(told);
  }

  @Test
  void ordersAndRefundsAreWrittenDownTwiceToo() {
    String spends =
        """
        budget: [{line: a, title: A, amount: 900}]
        spending:
          - {id: p, on: 2026-01-20, line: a, what: mast, amount: 300 EUR, state: paid}
          - {id: o, on: 2026-02-01, line: a, what: mast, amount: 30 EUR, state: ordered}
          - {id: n, on: 2026-02-01, line: a, what: mast, amount: 30 EUR, state: ordered%s}
          - {id: r, on: 2026-02-02, line: a, what: mast, amount: 30 EUR, state: refunded, refunds: p}
          - {id: s, on: 2026-02-02, line: a, what: mast, amount: 30 EUR, state: refunded%s}
        """;
    assertThat(Sample.words(new SpendTwice(), spends.formatted("", "")))
        .satisfiesExactlyInAnyOrder(
            order -> assertThat(order).contains("30.00 EUR ordered on the same day"),
            refund -> assertThat(refund).contains("30.00 EUR back on the same day"));
    assertThat(told(new SpendTwice(), spends.formatted(", withdrawn: 2026-02-03", ", refunds: o")))
        .as("one was given up, and each gives back something else")
        .isEmpty();
  }

  @Test
  void aRefundThatNamesNothingGivesBackNoMoreThanWasPaidOnItsLineByThen() {
    String early =
        """
        budget: [{line: a, title: A, amount: 900}]
        spending:
          - {id: p, on: 2026-02-01, line: a, what: mast, amount: 5 EUR, state: paid}
          - {id: r, on: 2026-02-02, line: a, what: mast, amount: 30 EUR, state: refunded}
          - {id: q, on: 2026-02-03, line: a, what: boom, amount: 100 EUR, state: paid}
        """;
    assertThat(Sample.words(new RefundBeyondPayment(), early))
        .singleElement()
        .asString()
        .contains("but only 5.00 EUR were paid on the line a by 2 February 2026 and not yet")
        .contains("correct its day");
  }

  /** 300 paid of 200; whether the spend that cannot be read was paid or came back nobody knows. */
  private static final String UNREAD =
      """
      budget: [{line: a, title: A, amount: 200}, {line: b, title: B, amount: %s, remaining: 250}]
      spending:
        - {id: p, on: 2026-01-10, line: a, what: mast, amount: 300, state: paid}
        - {id: r, on: 2026-01-11, line: b, what: mast, amount: 30, state: refunded}
        - {id: q, on: 2026-01-12, line: %s, what: mast, amount: much, state: paid}
      """;

  private static List<String> unread(Rule rule, String budget, String line) {
    Ledger ledger = Sample.read(UNREAD.formatted(budget, line), new Findings()).orElseThrow();
    return Sample.findings(rule, ledger, Sample.TODAY).stream()
        .map(each -> (each.what() + each.follows()).replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void aSumThatLacksASpendThatNobodyCanReadIsToldAsFarAsItCanBe() {
    String why = "It cannot be told whole: spend q cannot be read.";
    assertThat(unread(new LineOverBudget(), "200", "a"))
        .singleElement()
        .asString()
        .startsWith("As far as it can be told, “A” stands at 300.00 EUR spent")
        .endsWith(why);
    assertThat(unread(new LineOverBudget(), "200", "b"))
        .as("it stands on another line")
        .singleElement()
        .asString()
        .startsWith("“A” stands at 300.00 EUR spent")
        .doesNotContain("cannot be");
    assertThat(unread(new BuildOverBudget(), "20", "b"))
        .singleElement()
        .asString()
        .startsWith("As far as it can be told, spent and ordered are 300.00 EUR in all")
        .endsWith(why);
    assertThat(unread(new ForecastOverBudget(), "200", "b"))
        .satisfiesExactlyInAnyOrder(
            line ->
                assertThat(line)
                    .startsWith("As far as it can be told, “B” is forecast to end at 250.00 EUR")
                    .endsWith(why),
            whole ->
                assertThat(whole)
                    .startsWith("As far as it can be told, the build is forecast")
                    .endsWith(why));
    assertThat(unread(new RefundBeyondPayment(), "200", "b"))
        .singleElement()
        .asString()
        .startsWith("As far as it can be told, the refund r gives back 30.00 EUR, but nothing was")
        .endsWith(why);
  }
}
