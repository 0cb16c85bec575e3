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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
    assertThat(buying.outcome()).startsWith("Least of what is compared: no plan by cross-cuts");
    assertThat(buying.leftOut()).containsExactly("“no price” is not compared: it has no price.");
  }

  @Test
  void provedLeastWhereEveryOfferHasAPrice() {
    Buying buying = offered("{what: board, size: 2000 x 100 x 20 mm, price: 9 EUR}");
    assertThat(buying.cost()).hasToString("9.00 EUR");
    assertThat(buying.outcome()).startsWith("Proved least");
    assertThat(buying.leftOut()).isEmpty();
  }

  /** A price that cannot be used is neither nothing nor what the others cost. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "size: 2000 x 100 x 20 mm, price: 10 EUR/kg | its price, 10 EUR/kg, does not fit its size:"
            + " its material has no density here.",
        "size: 2000 x 100 mm, price: 10 EUR/kg | its price, 10 EUR/kg, does not fit its size: it"
            + " has no thickness.",
        "size: 2000 x 100 mm, price: 10 EUR/l | its price, 10 EUR/l, does not fit its size: it has"
            + " no thickness.",
        "size: 2000 x 100 x 20 mm, price: 10 EUR/box | its price, 10 EUR/box, does not fit its"
            + " size: it is not for a piece, a length, an area, a volume or a weight.",
        "size: 2000 x 100 x 20 mm, price: 10 JPY | its price, 10 JPY, has no rate to EUR.",
        "price: 10 EUR | it has no size."
      })
  void whatHasNoUsablePriceIsNotCompared(String keys, String why) {
    String odd = "{what: odd, " + keys + "}";
    Buying alone = offered(odd);
    assertThat(alone.pieces()).isEmpty();
    assertThat(alone.leftOut()).containsExactly("“odd” is not compared: " + why);
    Buying beside = offered(odd + ", {what: board, size: 2000 x 100 x 20 mm, price: 90 EUR}");
    assertThat(names(beside)).isEqualTo(Map.of("board", 1));
    assertThat(beside.cost()).hasToString("90.00 EUR");
    assertThat(beside.outcome()).startsWith("Least of what is compared");
  }

  private static Buying offered(String offers) {
    String yaml =
        """
        stock: [{id: o, what: oak, size: 2000 x 100 x 20 mm, worth: 20 EUR}]
        cuts: [{id: c, from: [o], kerf: 3 mm, parts: [{mark: a, length: 1500 mm, qty: 2}], buy: [OFFERS]}]
        """;
    Facts day = Facts.of(Sample.ledger(yaml.replace("OFFERS", offers)), Sample.TODAY);
    Effort effort = Effort.steps(2_000_000);
    CutPlan plan = CutPlan.of(day.ledger().cuts().get(0), day, effort);
    return Buying.of(plan, day, effort).orElseThrow();
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
