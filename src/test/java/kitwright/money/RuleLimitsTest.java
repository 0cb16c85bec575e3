package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where each rule about money begins to fire, and where it does not yet. */
class RuleLimitsTest {
  private static final String LINE = "budget: [{line: a, title: A, amount: 100}]\n";

  private static List<Finding> found(Rule rule, String yaml) {
    return Sample.findings(rule, Sample.ledger(yaml), Sample.TODAY);
  }

  private static List<String> whats(Rule rule, String yaml) {
    return found(rule, yaml).stream().map(each -> each.what().replace('\u00a0', ' ')).toList();
  }

  private static String spends(String... lines) {
    StringBuilder all = new StringBuilder(LINE).append("spending:\n");
    for (String line : lines) {
      all.append("  - {line: a, what: x, ").append(line).append("}\n");
    }
    return all.toString();
  }

  private static final String ORDER = "id: o, on: 2026-02-01, amount: 50, state: ordered";

  @Test
  void whatIsPaidInFullNamesItsOrder() {
    assertThat(
            whats(
                new SpendContradictory(),
                spends(ORDER, "id: p, on: 2026-02-10, amount: 5, state: paid, in-full: yes")))
        .containsExactly("The spend p says that nothing more is owed, and names no order.");
  }

  /** A key goes with one state; the sign in the last column is what a builder would be told. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "state: paid, pays: o |",
        "state: ordered, pays: o | Only a payment pays an order",
        "state: refunded, pays: o | Only a payment pays an order",
        "state: refunded, refunds: o |",
        "state: paid, refunds: o | Only a refund gives something back",
        "state: ordered, refunds: o | Only a refund gives something back",
        "state: paid, pays: o, in-full: yes |",
        "state: ordered, withdrawn: 2026-02-20 |",
        "state: paid, withdrawn: 2026-02-20 | Only an order can be given up",
        "state: paid |",
      })
  void aKeyThatDoesNotGoWithItsStateIsNamed(String keys, String told) {
    List<String> whats =
        whats(new SpendContradictory(), spends(ORDER, "id: p, on: 2026-02-10, amount: 5, " + keys));
    if (told == null) {
      assertThat(whats).isEmpty();
    } else {
      String state = keys.replaceFirst("state: (\\w+).*", "$1");
      assertThat(whats).containsExactly(told + "; the spend p is in state “" + state + "”.");
    }
  }

  /** The rate of a spend turns its own currency into the build's. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5 NZD | 0 | The rate 0 of the spend p is not above zero.",
        "5 NZD | -0.5 | The rate -0.5 of the spend p is not above zero.",
        "5 NZD | 0.5 |",
        "5 NZD | 1 |",
        "5 EUR | 1.00 |",
        "5 EUR | 1.01 | The spend p gives a rate from EUR into EUR.",
      })
  void aSpendsRateIsAboveZeroAndNoneTurnsHomeIntoHome(String amount, String rate, String told) {
    String yaml =
        spends("id: p, on: 2026-02-10, state: paid, amount: " + amount + ", rate: " + rate);
    assertThat(whats(new RateImpossible(), yaml))
        .containsExactlyElementsOf(told == null ? List.of() : List.of(told));
  }

  private static String refunded(String... amounts) {
    String[] lines = new String[amounts.length + 1];
    lines[0] = "id: p, on: 2026-02-01, amount: 30, state: paid";
    for (int i = 0; i < amounts.length; i++) {
      lines[i + 1] = "id: r%d, on: 2026-02-1%d, state: refunded, %s".formatted(i, i, amounts[i]);
    }
    return spends(lines);
  }

  @Test
  void aRefundSaysWhatWasLeftToComeBack() {
    Rule rule = new RefundBeyondPayment();
    assertThat(whats(rule, refunded("amount: 30, refunds: p"))).isEmpty();
    assertThat(whats(rule, refunded("amount: 30.01, refunds: p")))
        .containsExactly(
            "The refund r0 gives back 30.01 EUR, but of spend p only 30.00 EUR were paid and not"
                + " yet refunded.");
    String twice = refunded("amount: 30, refunds: p", "amount: 5, refunds: p");
    assertThat(whats(rule, twice))
        .containsExactly(
            "The refund r1 gives back 5.00 EUR, but all that was paid for spend p had come back"
                + " already.");
    assertThat(found(rule, twice))
        .extracting(Finding::follows)
        .containsExactly("It does not count as come back; a refund never makes money.");
  }

  @Test
  void aRefundThatNamesNoPaymentIsHeldAgainstItsLine() {
    Rule rule = new RefundBeyondPayment();
    assertThat(whats(rule, refunded("amount: 30"))).isEmpty();
    assertThat(whats(rule, refunded("amount: 40")))
        .containsExactly(
            "The refund r0 gives back 40.00 EUR, but only 30.00 EUR were paid on the line a by"
                + " 10 February 2026 and not yet refunded.");
    assertThat(whats(rule, refunded("amount: 30", "amount: 5")))
        .containsExactly(
            "The refund r1 gives back 5.00 EUR, but nothing was paid on the line a by 11"
                + " February 2026 and not yet refunded.");
  }

  /** That nothing was paid for it at all is told by refund-of-unpaid, once. */
  @Test
  void aRefundOfWhatNobodyPaidIsToldByOneRule() {
    String yaml = spends(ORDER, "id: r, on: 2026-02-10, amount: 5, state: refunded, refunds: o");
    assertThat(whats(new RefundBeyondPayment(), yaml)).isEmpty();
    assertThat(whats(new RefundOfUnpaid(), yaml)).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({
    "'tax: 5', 0",
    "'tax: 5, duty: 5', 0", // exactly all of it
    "'tax: 5, duty: 5.01', 1",
    "'duty: 10', 0",
    "'duty: 10.01', 1",
    "'tax: 10.01', 1"
  })
  void taxAndDutyTogetherAreAPartOfTheAmount(String parts, int told) {
    List<Finding> found =
        found(
            new TaxBeyondAmount(),
            spends("id: p, on: 2026-02-10, amount: 10, state: paid, " + parts));
    assertThat(found).hasSize(told);
    String key = parts.startsWith("tax") ? "tax:" : "duty:";
    String line = "  - {line: a, what: x, id: p, on: 2026-02-10, amount: 10, state: paid, " + parts;
    assertThat(found)
        .allSatisfy(
            each -> assertThat(each.at().column()).isEqualTo(line.indexOf(key) + key.length() + 2));
  }

  /** The budget is 100. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "100 | 50 |",
        "100.01 | 50 | WARN, It eats 0.01 EUR of the contingency of 50.00 EUR.",
        "150 | 50 | WARN, It eats 50.00 EUR of the contingency of 50.00 EUR.",
        "150.01 | 50 | STOP, The contingency of 50.00 EUR does not cover it.",
      })
  void aBuildIsOverItsBudgetOnlyBeyondItAndWorseBeyondTheContingency(
      String paid, String kept, String told) {
    String yaml =
        "build: {name: E, currency: EUR, started: 2026-01-05, contingency: " + kept + "}\n";
    List<Finding> found =
        found(
            new BuildOverBudget(),
            yaml + spends("id: p, on: 2026-02-10, state: paid, amount: " + paid));
    assertThat(found)
        .extracting(each -> each.severity() + ", " + each.follows().replace('\u00a0', ' '))
        .containsExactlyElementsOf(told == null ? List.of() : List.of(told));
    assertThat(found)
        .allSatisfy(
            each ->
                assertThat(yaml.substring(each.at().column() - 1))
                    .startsWith(told.startsWith("WARN") ? kept : "EUR"));
  }

  @Test
  void withoutABudgetNothingIsOverIt() {
    String yaml = "spending: [{id: p, on: 2026-02-10, line: a, what: x, amount: 5, state: paid}]\n";
    assertThat(whats(new BuildOverBudget(), yaml)).isEmpty();
    assertThat(whats(new ForecastOverBudget(), yaml)).isEmpty();
  }

  /** One line of 100 and a contingency of 50; what is paid, and what the line says is to come. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "60 | 40 | ",
        "60 | 40.01 | NOTE The contingency of 50.00 EUR would pay for it., WARN line",
        "60 | 90 | NOTE The contingency of 50.00 EUR would pay for it., WARN line",
        "60 | 90.01 | WARN That is 0.01 EUR more than the budget and the contingency of"
            + " 50.00 EUR together., WARN line",
        "100 | 0.01 | NOTE The contingency of 50.00 EUR would pay for it., WARN line",
        // the line and the build are over already; what the forecast adds is told while it is new
        "110 | 10 | ",
        "110 | 50 | WARN That is 10.00 EUR more than the budget and the contingency of 50.00 EUR"
            + " together.",
        "150 | 1 | WARN That is 1.00 EUR more than the budget and the contingency of 50.00 EUR"
            + " together.",
        "151 | 1 | ",
      })
  void aForecastIsToldUntilTheBudgetItselfIsPassed(String paid, String remaining, String told) {
    String yaml =
        "build: {name: E, currency: EUR, started: 2026-01-05, contingency: 50}\n"
            + spends("id: p, on: 2026-02-10, state: paid, amount: " + paid)
                .replace("amount: 100}]", "amount: 100, remaining: " + remaining + "}]");
    assertThat(String.join(", ", forecast(yaml))).isEqualTo(told == null ? "" : told);
  }

  private static List<String> forecast(String yaml) {
    return found(new ForecastOverBudget(), yaml).stream()
        .map(
            each ->
                each.severity()
                    + (each.what().startsWith("The build")
                        ? " " + each.follows().replace('\u00a0', ' ')
                        : " line"))
        .toList();
  }

  @Test
  void whatIsOnlyGuessedFromTheWorkIsANote() {
    String yaml =
        spends("id: p, on: 2026-02-10, state: paid, amount: 90")
            + """
            tasks:
              - {id: b, what: B, takes: 1 d, budget: a, started: 2026-02-01, finished: 2026-02-01}
              - {id: c, what: C, takes: 1 d, budget: a}
            """;
    assertThat(found(new ForecastOverBudget(), yaml).get(1))
        .satisfies(
            each -> assertThat(each.severity()).hasToString("NOTE"),
            each -> assertThat(each.mend()).contains("remaining: …"));
  }

  /** A twentieth is “nearly”. */
  @ParameterizedTest
  @CsvSource({"94.99, 0", "95, 1", "99.99, 1", "100, 0"})
  void anOrderIsNearlyPaidWhereATwentiethOrLessStaysOpen(String paid, int told) {
    assertThat(
            whats(
                new OrderNearlyPaid(),
                spends(
                    "id: o, on: 2026-02-01, amount: 100, state: ordered",
                    "id: p, on: 2026-02-03, state: paid, pays: o, amount: " + paid)))
        .hasSize(told);
  }

  @Test
  void theLastPaymentIsWhereTheRestIsSaidToBeNoneWhateverTheOrderOfTheRecords() {
    assertThat(
            found(
                new OrderNearlyPaid(),
                spends(
                    "id: o, on: 2026-02-01, amount: 100, state: ordered",
                    "id: late, on: 2026-02-20, state: paid, pays: o, amount: 49",
                    "id: early, on: 2026-02-03, state: paid, pays: o, amount: 50")))
        .singleElement()
        .satisfies(each -> assertThat(each.records()).containsExactly("spend late", "spend o"));
  }

  @Test
  void oneDayHasOneRateOfAPairWhicheverWayItIsWritten() {
    String rates =
        """
        rates:
          - {on: 2026-01-20, from: EUR, to: EUR, rate: 1, source: x}
          - {on: 2026-01-20, from: EUR, to: EUR, rate: 1, source: x}
          - {on: 2026-01-20, from: %s, to: %s, rate: 2, source: x}
          - {on: %s, from: NZD, to: EUR, rate: 0.5, source: x}
        """;
    Rule rule = new RateTwice();
    assertThat(whats(rule, rates.formatted("EUR", "NZD", "2026-01-20"))).hasSize(1);
    assertThat(whats(rule, rates.formatted("NZD", "EUR", "2026-01-20"))).hasSize(1);
    assertThat(whats(rule, rates.formatted("EUR", "NZD", "2026-01-21"))).isEmpty();
    assertThat(whats(rule, rates.formatted("EUR", "USD", "2026-01-20"))).isEmpty();
  }

  @Test
  void aRateThatIsLeftOutIsNoMeasureForOthers() {
    String rates =
        """
        rates:
          - {on: 2026-01-20, from: USD, to: EUR, rate: %s, source: x}
          - {on: 2026-01-21, from: USD, to: EUR, rate: 0.9, source: x}
        """;
    Rule rule = new RateDoubtful();
    Findings none = new Findings();
    rule.examine(
        kitwright.ledger.Facts.of(
            Sample.read(rates.formatted("0"), new Findings()).orElseThrow(), Sample.TODAY),
        none);
    assertThat(none.inOrder()).isEmpty();
    assertThat(whats(rule, rates.formatted("0.2"))).hasSize(1);
    assertThat(whats(rule, "rates: [{on: 2026-01-20, from: USD, to: USD, rate: 9, source: x}]\n"))
        .isEmpty();
  }
}
