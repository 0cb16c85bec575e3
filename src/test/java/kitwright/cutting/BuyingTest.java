package kitwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.Sample;
import kitwright.cutting.solve.Effort;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** The least to buy so that every part can be made; the sums are worked by hand. */
class BuyingTest {
  private static final String LEDGER =
      """
      stock: [{id: oak, what: oak, size: 3000 x 100 x 20 mm, pieces: PIECES, grain: along, worth: 20 EUR}]
      cuts:
        - {id: c, from: [oak], kerf: 3 mm, parts: [{mark: a, length: 1400 mm, width: 100 mm, qty: 5}],
           buy: [{what: long, size: 3000 x 100 x 20 mm, grain: along, price: 9 EUR/m, lead: 5 d},
                 {what: short, size: 1500 x 110 x 20 mm, grain: along, price: 14 EUR LEAD}, {what: no price, size: 9000 x 900 mm}]}
      """;

  private static Optional<Buying> buying(String pieces, String lead) {
    Facts day =
        Facts.of(
            Sample.ledger(LEDGER.replace("PIECES", pieces).replace("LEAD", lead)), Sample.TODAY);
    Cut cut = day.ledger().cuts().get(0);
    Effort effort = Effort.steps(2_000_000);
    return Buying.of(CutPlan.of(cut, day, effort), day, effort);
  }

  private static Map<String, Integer> names(Buying buying) {
    return buying.pieces().entrySet().stream()
        .collect(Collectors.toMap(each -> each.getKey().what(), Map.Entry::getValue));
  }

  @Test
  void theLeastIsBoughtAndTheLongestLeadCounts() {
    // Three parts are missing: a long board (27) gives two, a short one (14) gives one.
    Buying buying = buying("1", ", lead: 9 d").orElseThrow();
    assertThat(names(buying)).isEqualTo(Map.of("long", 1, "short", 1));
    assertThat(buying.cost()).hasToString("41.00 EUR");
    assertThat(buying.lead()).contains(9);
    assertThat(buying.missing()).isEmpty();
    assertThat(buying.outcome()).startsWith("Proved least");
  }

  @Test
  void whatLiesOnTheRackCostsNothingMore() {
    assertThat(names(buying("2", "").orElseThrow())).isEqualTo(Map.of("short", 1));
    assertThat(buying("3", "")).isEmpty();
  }

  @Test
  void aLeadThatIsNotStatedIsNotGuessed() {
    assertThat(buying("1", "").orElseThrow().lead()).isEmpty();
  }
}
