package kitwright.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** What of the money that a claim asks has come back: as the books count it. By hand beside it. */
class CameBackTest {
  private static final String BASE =
      """
      budget: [{line: a, title: A, amount: 900}]
      kit: [{id: bolt, what: bolt, qty: 10}]
      rates: [{on: 2026-01-01, from: USD, to: EUR, rate: 0.90, source: bank}]
      deliveries: [{id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 6}]}]
      shortages: [{id: s, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed}]
      claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement, costs: [%s], sent: 2026-02-01}]
      spending:
      %s\
      """;

  private static final String ORDER = "id: o, on: 2026-01-10, state: ordered, amount: 100";
  private static final String PAYMENT = "id: p, on: 2026-01-11, state: paid, amount: 100";

  private static ClaimStanding claim(String cost, String... spends) {
    String lines =
        Arrays.stream(spends)
            .map(line -> "  - {" + line + ", line: a, what: courier}\n")
            .collect(Collectors.joining());
    return ClaimStandings.on(Facts.of(Sample.ledger(BASE.formatted(cost, lines)), Sample.TODAY))
        .of("c")
        .orElseThrow();
  }

  private static String refund(String of, String on, String amount) {
    return "id: r-%s, on: %s, state: refunded, amount: %s, refunds: %s"
        .formatted(on, on, amount, of);
  }

  private static void isTold(ClaimStanding claim, String asked, String came, String open) {
    assertThat(claim.asked()).hasToString(asked);
    assertThat(claim.paid()).hasToString(came);
    assertThat(claim.open()).hasToString(open);
  }

  @Test
  void whatCameSinceItWentOutIsTakenOff() {
    isTold(
        claim("p", PAYMENT, refund("p", "2026-02-01", "40")),
        "[100.00 EUR]",
        "[40.00 EUR]",
        "[60.00 EUR]");
  }

  @Test
  void whatCameBeforeItWentOutIsNotAsked() {
    isTold(
        claim("p", PAYMENT, refund("p", "2026-01-31", "40")), "[60.00 EUR]", "[]", "[60.00 EUR]");
    isTold(claim("p", PAYMENT, refund("p", "2026-01-31", "100")), "[]", "[]", "[]");
  }

  @Test
  void theRefundOfAnUnpaidOrderIsNoMoney() {
    isTold(claim("o", ORDER, refund("o", "2026-01-31", "100")), "[]", "[]", "[]");
    isTold(claim("o", ORDER, refund("o", "2026-02-10", "100")), "[]", "[]", "[]");
    String part = "id: p, on: 2026-01-11, state: paid, amount: 60, pays: o";
    isTold(
        claim("o", ORDER, part, refund("o", "2026-02-10", "100")),
        "[60.00 EUR]",
        "[60.00 EUR]",
        "[]");
  }

  @Test
  void whatIsRefundedBeforeItIsPaidIsNoMoney() {
    isTold(
        claim("p", PAYMENT, refund("p", "2026-01-10", "100")),
        "[100.00 EUR]",
        "[]",
        "[100.00 EUR]");
  }

  @Test
  void noMoreComesBackThanWasPaid() {
    isTold(
        claim("p", PAYMENT, refund("p", "2026-02-10", "70"), refund("p", "2026-02-11", "70")),
        "[100.00 EUR]",
        "[100.00 EUR]",
        "[]");
  }

  @Test
  void anOrderAndItsPaymentComeBackTogether() {
    String paid = PAYMENT + ", pays: o";
    isTold(claim("o", ORDER, paid, refund("p", "2026-01-31", "100")), "[]", "[]", "[]");
    isTold(claim("p", ORDER, paid, refund("o", "2026-01-31", "100")), "[]", "[]", "[]");
    isTold(
        claim("o", ORDER, paid, refund("p", "2026-02-10", "30")),
        "[100.00 EUR]",
        "[30.00 EUR]",
        "[70.00 EUR]");
  }

  /** 80 of 100 were paid first, then 20: what names the order alone gives back the others first. */
  @Test
  void aRefundOfTheOrderGivesBackItsOtherPaymentsFirst() {
    String first = "id: q, on: 2026-01-10, state: paid, amount: 80, pays: o";
    String mine = "id: p, on: 2026-01-11, state: paid, amount: 20, pays: o";
    isTold(
        claim("p", ORDER, first, mine, refund("o", "2026-01-31", "80")),
        "[20.00 EUR]",
        "[]",
        "[20.00 EUR]");
    isTold(
        claim("p", ORDER, first, mine, refund("o", "2026-01-31", "85")),
        "[15.00 EUR]",
        "[]",
        "[15.00 EUR]");
  }

  /** What names a payment as if it were its order belongs to no purchase but itself. */
  @Test
  void aPaymentThatPaysAPaymentIsAPurchaseOfItsOwn() {
    String other = "id: o, on: 2026-01-10, state: paid, amount: 80";
    isTold(
        claim("p", other, PAYMENT + ", pays: o", refund("o", "2026-02-10", "30")),
        "[100.00 EUR]",
        "[]",
        "[100.00 EUR]");
  }

  /** 45 EUR / 0.90 = 50 USD. */
  @Test
  void aRefundInOtherMoneyIsTakenOffByTheRateOfItsDay() {
    isTold(
        claim("p", PAYMENT + " USD", refund("p", "2026-02-10", "45 EUR")),
        "[100.00 USD]",
        "[45.00 EUR]",
        "[50.00 USD]");
    isTold(
        claim("p", PAYMENT + " USD", refund("p", "2026-01-31", "45 EUR")),
        "[50.00 USD]",
        "[]",
        "[50.00 USD]");
  }

  @Test
  void whatHasNoRateIntoWhatIsAskedIsToldAndNotTakenOff() {
    ClaimStanding claim = claim("p", PAYMENT, refund("p", "2026-02-10", "45 GBP"));
    isTold(claim, "[100.00 EUR]", "[45.00 GBP]", "[100.00 EUR]");
    assertThat(claim.cameBack().unreckoned()).hasToString("[45.00 GBP]");
  }

  /** 35 USD were granted for goods of 4 × 30 EUR; 27 EUR / 0.90 = 30 USD of them came. */
  @Test
  void ofWhatIsOverTheRestOfWhatWasGrantedIsOpen() {
    ClaimStanding claim =
        ClaimStandings.on(
                Facts.of(
                    Sample.ledger(
                        BASE.formatted(
                                "",
                                "  - {id: k, on: 2026-01-02, line: a, what: kit, state: paid,"
                                    + " amount: 300}\n"
                                    + "  - {id: r, on: 2026-02-20, line: a, what: credit, state:"
                                    + " refunded, amount: 27, because: s, refunds: k}\n")
                            .replace("qty: 10}", "qty: 10, price: 30 EUR}")
                            .replace("remedy: replacement", "remedy: credit")
                            .replace(
                                "sent: 2026-02-01",
                                "sent: 2026-02-01, settled: {on: 2026-02-10, how: credited,"
                                    + " amount: 35 USD}")),
                    Sample.TODAY))
            .of("c")
            .orElseThrow();
    isTold(claim, "[120.00 EUR]", "[27.00 EUR]", "[5.00 USD]");
  }

  private static String because(String on, String more) {
    return "id: b, on: " + on + ", state: refunded, amount: 30, because: s" + more;
  }

  /**
   * What the seller gave back for the shortage is come back, whenever it came; what it gave back of
   * a cost before it was asked is not, whatever else it names.
   */
  @Test
  void forTheShortageItCountsFromTheFirstDayOn() {
    String other = "id: k, on: 2026-01-02, state: paid, amount: 300";
    isTold(
        claim("p", PAYMENT, other, because("2026-01-20", ", refunds: k")),
        "[100.00 EUR]",
        "[30.00 EUR]",
        "[70.00 EUR]");
    isTold(
        claim("p", PAYMENT, because("2026-01-20", "")),
        "[100.00 EUR]",
        "[30.00 EUR]",
        "[70.00 EUR]");
    isTold(
        claim("p", PAYMENT, because("2026-01-20", ", refunds: p")),
        "[70.00 EUR]",
        "[]",
        "[70.00 EUR]");
    isTold(
        claim("p", ORDER, PAYMENT + ", pays: o", because("2026-01-20", ", refunds: o")),
        "[70.00 EUR]",
        "[]",
        "[70.00 EUR]");
    isTold(
        claim("o", ORDER, PAYMENT + ", pays: o", because("2026-01-20", ", refunds: p")),
        "[70.00 EUR]",
        "[]",
        "[70.00 EUR]");
  }

  /** By the rate of the purchase, 0.80, where it has one, not by that of the day. */
  @Test
  void ofAPurchaseInTheMoneyThatIsAskedItIsTakenOffByTheRateOfThePurchase() {
    isTold(
        claim("p", PAYMENT + " USD, rate: 0.80", refund("p", "2026-02-10", "40 EUR")),
        "[100.00 USD]",
        "[40.00 EUR]",
        "[50.00 USD]");
  }

  private static final String TWO =
      """
      budget: [{line: a, title: A, amount: 900}]
      rates: [{on: 2026-01-01, from: USD, to: EUR, rate: 0.90, source: bank}]
      kit: [{id: bolt, what: bolt, qty: 10, price: 30 EUR}]
      deliveries: [{id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 5}]}]
      shortages: [{id: s, item: bolt, qty: 5, found: 2026-01-06, cause: not-packed}]
      claims:
        - {id: second, against: kit-maker, sent: 2026-02-10, remedy: refund, shortages: [{shortage: s, qty: 3}]}
        - {id: first, against: kit-maker, sent: 2026-01-22, remedy: refund, shortages: [{shortage: s, qty: 2}]%s}
      spending:
        - {id: p, on: 2026-01-10, line: a, what: kit, amount: 300, state: paid}
      """;

  private static void areTold(String ended, String first, String second, String... refunds) {
    String lines =
        Arrays.stream(refunds)
            .map(
                each ->
                    "  - {id: r%s, line: a, what: bolts, state: refunded, refunds: p, because: s}\n"
                        .formatted(each))
            .collect(Collectors.joining());
    Facts day = Facts.of(Sample.ledger(TWO.formatted(ended) + lines), Sample.TODAY);
    assertThat(ClaimStandings.on(day).of("first").orElseThrow())
        .extracting(each -> each.paid() + " " + each.open())
        .isEqualTo(first);
    assertThat(ClaimStandings.on(day).of("second").orElseThrow())
        .extracting(each -> each.paid() + " " + each.open())
        .isEqualTo(second);
  }

  /** It was taken off both: of 3 bolts for 90 the second still asked 30. */
  @Test
  void whatCameForOneClaimIsNotTakenOffAnother() {
    areTold("", "[60.00 EUR] []", "[] [90.00 EUR]", "1, on: 2026-02-02, amount: 60");
    areTold(
        ", settled: {on: 2026-02-01, how: refunded, amount: 40 EUR}",
        "[40.00 EUR] []",
        "[20.00 EUR] [70.00 EUR]",
        "1, on: 2026-02-12, amount: 60");
  }

  /** 100 on one day, after both had gone out: 60 for two bolts, 40 of 90 for the others. */
  @Test
  void oneRefundForTwoClaimsIsPartedTheOldestFirst() {
    areTold(
        "",
        "[60.00 EUR] []",
        "[40.00 EUR] [50.00 EUR]",
        "1, on: 2026-02-12, amount: 10",
        "2, on: 2026-02-13, amount: 90");
  }

  /** 60 EUR were due and 50 USD are 45 EUR; 100 USD are 90 EUR, of which 15 EUR are 16.67 USD. */
  @Test
  void whatCameInOtherMoneyIsPartedByTheRateOfItsDay() {
    areTold(
        "",
        "[66.67 USD] []",
        "[83.33 USD] [15.00 EUR]",
        "1, on: 2026-02-12, amount: 50 USD",
        "2, on: 2026-02-13, amount: 100 USD");
  }

  /** Nothing more was to come for the first, and the second had not gone out. */
  @Test
  void whatIsBeyondAllThatHadGoneOutBelongsToTheLastOfThem() {
    areTold("", "[70.00 EUR] []", "[] [90.00 EUR]", "1, on: 2026-02-02, amount: 70");
    areTold("", "[] [60.00 EUR]", "[] [90.00 EUR]", "1, on: 2026-01-05, amount: 70");
  }

  @Test
  void whatBelongsToOneClaimAloneFillsItBeforeWhatIsParted() {
    String own =
        TWO.replace(
            "remedy: refund, shortages: [{shortage: s, qty: 2}]",
            "remedy: refund, costs: [q], shortages: [{shortage: s, qty: 2}]");
    Facts day =
        Facts.of(
            Sample.ledger(
                own.formatted("")
                    + """
                      - {id: q, on: 2026-01-12, line: a, what: courier, amount: 20, state: paid}
                      - {id: r, on: 2026-02-12, line: a, what: bolts, amount: 100, state: refunded, refunds: p, because: s}
                      - {id: t, on: 2026-02-13, line: a, what: courier, amount: 20, state: refunded, refunds: q}
                    """),
            Sample.TODAY);
    assertThat(ClaimStandings.on(day).of("first").orElseThrow().paid()).hasToString("[80.00 EUR]");
    assertThat(ClaimStandings.on(day).of("second").orElseThrow().paid()).hasToString("[40.00 EUR]");
  }

  @Test
  void moreThanWasGrantedOrAskedIsTold() {
    assertThat(beyond("", "1, on: 2026-02-12, amount: 150")).isEmpty();
    assertThat(beyond("", "1, on: 2026-02-12, amount: 151"))
        .containsExactly(
            "With the refund r1 91.00 EUR have come back for the claim second, which asks 90.00"
                + " EUR.");
    String settled = ", settled: {on: 2026-02-01, how: refunded, amount: 40 EUR}";
    assertThat(beyond(settled, "1, on: 2026-02-02, amount: 40.01"))
        .containsExactly(
            "With the refund r1 40.01 EUR have come back for the claim first, which granted 40.00"
                + " EUR.");
    assertThat(beyond(settled, "1, on: 2026-02-02, amount: 46 USD"))
        .as("41.40: the rates of two days")
        .isEmpty();
    assertThat(beyond(settled, "1, on: 2026-02-02, amount: 47 USD")).as("42.30").hasSize(1);
    assertThat(beyond(", settled: {on: 2026-02-01, how: refunded}", "1, on: 2026-02-02, amount: 5"))
        .as("nobody says how much")
        .isEmpty();
    assertThat(beyond(", settled: {on: 2026-02-01, how: refused}", "1, on: 2026-02-02, amount: 5"))
        .containsExactly(
            "With the refund r1 5.00 EUR have come back for the claim first, which granted"
                + " nothing.");
  }

  private static List<String> beyond(String ended, String refund) {
    String yaml =
        TWO.formatted(ended)
            + "  - {id: r%s, line: a, what: bolts, state: refunded, refunds: p, because: s}\n"
                .formatted(refund);
    return Sample.findings(new RefundBeyondGranted(), yaml).stream()
        .map(each -> each.what().replace('\u00a0', ' '))
        .toList();
  }
}
