package kitwright.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.money.Account;
import kitwright.value.Money;
import org.junit.jupiter.api.Test;

/** What a claim asks, is granted and gets, line by line; each sum is followed by hand beside it. */
class LinesTest {
  private static final String SHORT =
      """
      budget: [{line: a, title: A, amount: 900}]
      kit:
        - {id: bolt, what: bolt, qty: 10, price: 30 EUR}
        - {id: stave, what: stave, qty: 20 m, price: 11.40 NZD/m}
      deliveries:
        - {id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 6}, {item: stave, qty: 10 m}]}
      shortages:
        - {id: b, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed}
        - {id: s, item: stave, qty: 10 m, found: 2026-01-06, cause: not-packed}
      """;

  private static Facts day(String more, String today) {
    return Facts.of(Sample.ledger(SHORT + more), LocalDate.parse(today));
  }

  private static ClaimStanding claim(String more) {
    return ClaimStandings.on(day(more, "2026-03-02")).of("c").orElseThrow();
  }

  private static List<String> told(List<Money> sums) {
    return sums.stream().map(Money::toString).toList();
  }

  private static final String BOUGHT =
      "spending: [{id: p, on: 2026-01-20, line: a, what: bolts, state: paid, amount: 133.33,"
          + " because: b, item: bolt, qty: 4}]\n";

  @Test
  void theCostOfAReplacementIsAskedInsteadOfTheGoods() {
    String claim =
        "claims: [{id: c, against: kit-maker, shortages: [b], sent: 2026-01-10, remedy: refund,"
            + " costs: [p]}]\n";
    ClaimStanding standing = claim(BOUGHT + claim);
    assertThat(told(standing.asked())).as("not 120.00 besides").containsExactly("133.33 EUR");
    assertThat(standing.lines())
        .singleElement()
        .satisfies(line -> assertThat(line.remedy()).isEqualTo(Claim.Remedy.COST));
    assertThat(Account.on(day(BOUGHT + claim, "2026-03-02")).ifGranted()).hasToString("133.33 EUR");
    ClaimStanding asSent =
        ClaimStandings.on(day(BOUGHT + claim, "2026-01-10")).of("c").orElseThrow();
    assertThat(told(asSent.asked())).as("on the day it was sent").containsExactly("120.00 EUR");
  }

  @Test
  void onlySoManyPiecesAreAskedAsCostAsWereBought() {
    ClaimStanding standing =
        claim(
            BOUGHT.replace("qty: 4", "qty: 1")
                + "claims: [{id: c, against: kit-maker, shortages: [b], sent: 2026-01-10, remedy:"
                + " refund, costs: [p]}]\n");
    // 133.33 for the one that was bought, 3 × 30.00 for the others.
    assertThat(told(standing.asked())).containsExactly("223.33 EUR");
    assertThat(standing.lines()).extracting(line -> line.qty().told()).containsExactly("1", "3");
  }

  @Test
  void eachLineAsksForItself() {
    ClaimStanding standing =
        claim(
            """
            claims:
              - id: c
                against: kit-maker
                sent: 2026-01-10
                remedy: replacement
                shortages: [{shortage: b, qty: 1}, {shortage: b, remedy: refund}, {shortage: s, remedy: credit}]
            """);
    // Goods 1 × 30.00; money 3 × 30.00 EUR and 10 m × 11.40 NZD.
    assertThat(told(standing.goods())).containsExactly("30.00 EUR");
    assertThat(told(standing.asked())).containsExactly("90.00 EUR", "114.00 NZD");
    assertThat(told(standing.open())).containsExactly("90.00 EUR", "114.00 NZD");
  }

  private static final String PARTED =
      """
      claims:
        - id: c
          against: kit-maker
          sent: 2026-01-10
          remedy: refund
          shortages:
            - {shortage: b, settled: [{on: 2026-02-01, how: refunded, qty: 3, amount: 80 EUR}]}
            - shortage: s
              remedy: credit
              settled: {on: 2026-02-02, how: credited, amount: 60 NZD}
          events: [{on: 2026-01-30, what: granted, of: b, amount: 75 EUR}]
      """;

  @Test
  void aLineMayEndInPartAndForLess() {
    ClaimStanding standing = claim(PARTED);
    assertThat(standing.state()).as("one bolt is open").isEqualTo(ClaimStanding.State.ANSWERED);
    assertThat(told(standing.granted())).containsExactly("80.00 EUR", "60.00 NZD");
    // Bolts: 80.00 granted for three, 30.00 asked for the fourth; staves: over, 60 of 114 granted.
    assertThat(told(standing.open())).containsExactly("110.00 EUR", "60.00 NZD");
    ClaimStanding over = claim(PARTED.replace("qty: 3, ", ""));
    assertThat(over.state()).isEqualTo(ClaimStanding.State.SETTLED);
    assertThat(told(over.open())).containsExactly("80.00 EUR", "60.00 NZD");
  }

  @Test
  void whatCameBackIsTakenOffInItsOwnCurrency() {
    String back =
        "spending: [{id: r, on: 2026-02-20, line: a, what: back, state: refunded, amount: 50 EUR,"
            + " because: b}, {id: k, on: 2026-01-02, line: a, what: kit, state: paid, amount: 400"
            + " EUR}]\n";
    ClaimStanding over = claim(PARTED.replace("qty: 3, ", "") + back);
    assertThat(told(over.paid())).containsExactly("50.00 EUR");
    assertThat(told(over.open())).containsExactly("30.00 EUR", "60.00 NZD");
  }

  @Test
  void whatWasGrantedIsTheLastWordUntilItEnds() {
    String open =
        PARTED.replaceAll("(?m), settled: \\[.*\\]}$", "}").replaceAll("(?m)^ *settled: .*\\n", "");
    ClaimStanding standing = claim(open);
    assertThat(told(standing.granted())).containsExactly("75.00 EUR");
    assertThat(standing.state()).isEqualTo(ClaimStanding.State.ANSWERED);
  }

  @Test
  void whatWasSentAnswersTheGoodsFirst() {
    ClaimStanding standing =
        claim(
            """
            claims:
              - id: c
                against: kit-maker
                sent: 2026-01-10
                remedy: refund
                shortages: [{shortage: b, qty: 2}, {shortage: b, qty: 2, remedy: replacement}]
            """);
    assertThat(standing.lines()).extracting(line -> line.sent().told()).containsExactly("0", "0");
    String crate =
        SHORT.replace(
            "shortages:",
            "  - {id: e, received: 2026-02-05, from: kit-maker, counted: [{item: bolt, qty: 3}]}\n"
                + "shortages:");
    ClaimStanding after =
        ClaimStandings.on(
                Facts.of(
                    Sample.ledger(
                        crate
                            + """
                            claims:
                              - id: c
                                against: kit-maker
                                sent: 2026-01-10
                                remedy: refund
                                shortages: [{shortage: b, qty: 2}, {shortage: b, qty: 2, remedy: replacement}]
                            """),
                    LocalDate.of(2026, 3, 2)))
            .of("c")
            .orElseThrow();
    assertThat(after.lines()).extracting(line -> line.sent().told()).containsExactly("1", "2");
    assertThat(told(after.asked()))
        .as("one of two is still owed in money")
        .containsExactly("30.00 EUR");
  }
}
