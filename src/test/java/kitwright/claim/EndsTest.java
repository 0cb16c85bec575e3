package kitwright.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.value.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Four bolts at 30 EUR are short. One was bought for 50 EUR and its cost is asked, three are still
 * owed: each end of the line takes its pieces and brings its money once.
 */
class EndsTest {
  private static final String YAML =
      """
      budget: [{line: a, title: A, amount: 900}]
      kit: [{id: bolt, what: bolt, qty: 10, price: 30 EUR}]
      shortages: [{id: b, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed}]
      spending: [{id: p, on: 2026-01-20, line: a, what: bolt, state: paid, amount: 50, because: b, item: bolt, qty: 1}]
      claims: [{id: c, against: kit-maker, sent: 2026-01-25, remedy: %s, costs: [p], shortages: [{shortage: b, settled: [%s]}]}]
      """;

  private static ClaimStanding claim(String remedy, String ends) {
    return ClaimStandings.on(Facts.of(Sample.ledger(YAML.formatted(remedy, ends)), Sample.TODAY))
        .of("c")
        .orElseThrow();
  }

  /** What is open of what was bought, of what is owed, what was granted, what is still to come. */
  private static String told(ClaimStanding claim) {
    String open =
        claim.lines().stream().map(line -> line.open().told()).collect(Collectors.joining(" + "));
    return (open + "; " + sums(claim.granted()) + "; " + sums(claim.open())).strip();
  }

  private static String sums(List<Money> sums) {
    return sums.stream().map(Money::toString).collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "replacement | ''                                                      | 1 + 3; ; 50.00"
            + " EUR",
        "replacement | '{on: 2026-02-01, how: replaced, qty: 3}'               | 1 + 0; ; 50.00"
            + " EUR",
        "replacement | '{on: 2026-02-01, how: replaced, qty: 2}'               | 1 + 1; ; 50.00"
            + " EUR",
        // Goods first; what they send beyond the owed is in the place of what was bought.
        "replacement | '{on: 2026-02-01, how: replaced, qty: 4}'               | 0 + 0; ; ",
        "replacement | '{on: 2026-02-01, how: credited, qty: 1, amount: 45}'   | 0 + 3; 45.00 EUR;"
            + " 45.00 EUR",
        "replacement | '{on: 2026-02-01, how: refused, qty: 1}'                | 0 + 3; ; ",
        // 1 of 2 is half of it: 20 for the one that was bought, 20 for one that is owed.
        "replacement | '{on: 2026-02-01, how: credited, qty: 2, amount: 40}'   | 0 + 2; 40.00 EUR;"
            + " 40.00 EUR",
        "replacement | '{on: 2026-02-01, how: refunded, amount: 100}'          | 0 + 0; 100.00 EUR;"
            + " 100.00 EUR",
        "credit      | '{on: 2026-02-01, how: credited, qty: 3, amount: 90}'   | 1 + 0; 90.00 EUR;"
            + " 140.00 EUR",
        "credit      | '{on: 2026-02-01, how: refunded, qty: 1, amount: 50}'   | 0 + 3; 50.00 EUR;"
            + " 140.00 EUR",
        "refund      | '{on: 2026-02-01, how: refunded, qty: 3, amount: 90}, {on: 2026-02-02, how:"
            + " refused}' | 0 + 0; 90.00 EUR; 90.00 EUR",
        // A third of 10.00 is 3.33; the rest is 6.67.
        "price-reduction | '{on: 2026-02-01, how: credited, qty: 3, amount: 10}' | 0 + 1; 10.00"
            + " EUR; 40.00 EUR",
        // Nobody knows how many bolts a kilogram is; the money was granted all the same.
        "replacement | '{on: 2026-02-01, how: credited, qty: 1 kg, amount: 9}' | 1 + 3; 9.00 EUR;"
            + " 59.00 EUR"
      })
  void eachEndTakesItsPiecesAndBringsItsMoneyOnce(String remedy, String ends, String told) {
    assertThat(told(claim(remedy, ends))).isEqualTo(told);
  }

  @ParameterizedTest
  @CsvSource({"3, 0", "4, 0", "5, 1"})
  void moreThanTheWholeLineIsTold(int replaced, int findings) {
    String yaml =
        YAML.formatted("replacement", "{on: 2026-02-01, how: replaced, qty: " + replaced + "}");
    assertThat(Sample.findings(new SettlementContradictory(), yaml)).hasSize(findings);
  }
}
