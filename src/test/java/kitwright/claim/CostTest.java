package kitwright.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.money.Account;
import kitwright.value.Money;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;

/** Which spending a claim asks back, and how much of it; each sum is followed by hand beside it. */
class CostTest {
  private static final String SHORT =
      """
      budget: [{line: a, title: A, amount: 900}]
      kit: [{id: bolt, what: bolt, qty: 10, price: 30 EUR}]
      deliveries:
        - {id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 6}]}
      shortages: [{id: b, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed}]
      """;

  private static final String SPENT =
      """
      spending:
        - {id: p, on: 2026-01-20, line: a, what: bolts, state: paid, amount: 90, because: b, item: bolt, qty: 3}
        - {id: q, on: 2026-01-21, line: a, what: bolts, state: paid, amount: 96, because: b, item: bolt, qty: 3}
        - {id: r, on: 2026-01-21, line: a, what: bolts, state: paid, amount: 96, replaces: b, item: bolt, qty: 3}
        - {id: loose, on: 2026-01-22, line: a, what: a drill, state: paid, amount: 20}
        - {id: o, on: 2026-01-22, line: a, what: bolts, state: ordered, amount: 80, replaces: b}
        - {id: part, on: 2026-01-23, line: a, what: on account, state: paid, amount: 30, pays: o}
        - {id: gone, on: 2026-01-22, line: a, what: bolts, state: ordered, amount: 70, replaces: b, withdrawn: 2026-01-23}
        - {id: s, on: 2026-01-22, line: a, what: a tap, state: paid, amount: 25, because: b}
        - {id: back, on: 2026-01-24, line: a, what: the tap went back, state: refunded, amount: 25, refunds: s}
        - {id: t, on: 2026-01-22, line: a, what: a die, state: paid, amount: 25, because: b}
        - {id: some, on: 2026-01-24, line: a, what: for the die, state: refunded, amount: 10, refunds: t}
      """;

  private static Ledger ledger(String shortages, String costs) {
    return Sample.ledger(
        SHORT
            + SPENT
            + "claims: [{id: c, against: kit-maker, shortages: %s, sent: 2026-01-25, remedy: refund, costs: %s}]"
                .formatted(shortages, costs));
  }

  private static Facts day(String shortages, String costs) {
    return Facts.of(ledger(shortages, costs), LocalDate.of(2026, 3, 2));
  }

  private static String asked(String shortages, String costs) {
    Facts day = day(shortages, costs);
    List<Money> asked = ClaimStandings.on(day).of("c").orElseThrow().asked();
    Account account = Account.on(day);
    Money back = account.claims().get(0).received();
    assertThat(account.ifGranted().plus(back).toString())
        .as("the account of the money expects what the letter asks")
        .isEqualTo(asked.isEmpty() ? "0.00 EUR" : asked.get(0).toString());
    return asked.toString();
  }

  @Test
  void ofPiecesBoughtBeyondWhatWasMissingNoneIsAsked() {
    // 3 for 90.00, then 1 of 3 for 96.00: 90 + 32.
    assertThat(asked("[b]", "[p, q]")).isEqualTo("[122.00 EUR]");
    // In the order of the claim: 96 + 1 of 3 for 90.
    assertThat(asked("[b]", "[q, p]")).isEqualTo("[126.00 EUR]");
    // The four are made up for by then: nothing of the third.
    assertThat(asked("[b]", "[p, q, r]")).isEqualTo("[122.00 EUR]");
    assertThat(
            ClaimStandings.on(day("[b]", "[p, q, r]"))
                .of("c")
                .orElseThrow()
                .lines()
                .get(0)
                .asking()
                .costs())
        .extracting(cost -> cost.replaced().map(qty -> qty.told()).orElse("all"))
        .containsExactly("all", "1", "0");
  }

  @Test
  void anOrderAndItsPaymentAreOneCost() {
    assertThat(asked("[b]", "[o]")).as("30 of 80 are paid").isEqualTo("[30.00 EUR]");
    assertThat(asked("[b]", "[o, part]")).isEqualTo("[30.00 EUR]");
    assertThat(asked("[b]", "[part]")).isEqualTo("[30.00 EUR]");
    assertThat(asked("[b]", "[o, o]")).isEqualTo("[30.00 EUR]");
  }

  /** 15 of 20 bolts for 90 that were ordered, of which 100 were paid, are 75 of what was paid. */
  @Test
  void ofAnOrderItIsAskedWhatWasPaid() {
    String spends =
        """
        budget: [{line: a, title: A, amount: 900}]
        kit: [{id: bolt, what: bolt, qty: 20, price: 30 EUR}]
        deliveries:
          - {id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 5}]}
        shortages: [{id: b, item: bolt, qty: 15, found: 2026-01-06, cause: not-packed}]
        claims: [{id: c, against: kit-maker, shortages: [b], sent: 2026-01-25, remedy: refund, costs: [o]}]
        spending:
          - {id: o, on: 2026-01-22, line: a, what: bolts, state: ordered, amount: 90, replaces: b, qty: 20}
        """;
    String paid = "  - {id: p, on: %s, line: a, what: bolts, state: paid, amount: %s, pays: o}\n";
    LocalDate today = LocalDate.of(2026, 3, 2);
    Facts none = Facts.of(Sample.ledger(spends), today);
    assertThat(ClaimStandings.on(none).of("c").orElseThrow().asked())
        .as("the goods: what is ordered has cost nothing yet")
        .hasToString("[450.00 EUR]");
    assertThat(Sample.findings(new ClaimCostVoid(), none.ledger(), today))
        .extracting(Finding::what)
        .containsExactly(
            "The claim c names the spend o, which is ordered, and nothing of it is paid yet.");
    Facts dearer = Facts.of(Sample.ledger(spends + paid.formatted("2026-02-01", "100")), today);
    assertThat(ClaimStandings.on(dearer).of("c").orElseThrow().asked()).hasToString("[75.00 EUR]");
    assertThat(Account.on(dearer).claims().get(0).costs()).hasToString("75.00 EUR");
    assertThat(Sample.findings(new ClaimCostVoid(), dearer.ledger(), today)).isEmpty();
  }

  @Test
  void whatCostNothingIsNotAsked() {
    // 4 × 30.00 of goods, as without any cost.
    assertThat(asked("[b]", "[]")).isEqualTo("[120.00 EUR]");
    assertThat(asked("[b]", "[gone]")).isEqualTo("[120.00 EUR]");
    assertThat(asked("[b]", "[back]")).isEqualTo("[120.00 EUR]");
    assertThat(asked("[b]", "[s]")).isEqualTo("[120.00 EUR]");
    assertThat(asked("[b]", "[t]")).as("10 of 25 had come back").isEqualTo("[135.00 EUR]");
    assertThat(asked("[b]", "[s]".replace("s", "loose"))).isEqualTo("[140.00 EUR]");
  }

  @Test
  void whatALineNamesIsItsReplacementWhateverElseTheSpendSays() {
    assertThat(asked("[{shortage: b, costs: [loose]}]", "[]")).isEqualTo("[20.00 EUR]");
    assertThat(asked("[{shortage: b, costs: [gone]}]", "[]")).isEqualTo("[120.00 EUR]");
  }

  @Test
  void whoAsksTheCostAndNamesNoneAsksAllThatWasBoughtForIt() {
    String line = "[{shortage: b, remedy: cost%s}]";
    ClaimStanding all = ClaimStandings.on(day(line.formatted(""), "[]")).of("c").orElseThrow();
    // What is paid, no order that is paid in part, none that was given up; no refund; nothing
    // unlinked.
    assertThat(all.lines().get(0).asking().costs())
        .extracting(cost -> cost.spend().id())
        .containsExactly("p", "q", "r", "part");
    ClaimStanding one =
        ClaimStandings.on(day(line.formatted(", costs: [q]"), "[]")).of("c").orElseThrow();
    assertThat(one.lines().get(0).asking().costs())
        .extracting(cost -> cost.spend().id())
        .containsExactly("q");
  }

  private static List<String> told(String shortages, String costs) {
    return Sample.findings(new ClaimCostVoid(), ledger(shortages, costs), LocalDate.of(2026, 3, 2))
        .stream()
        .map(Finding::what)
        .toList();
  }

  @Test
  void whatIsNamedAndNotAskedIsTold() {
    assertThat(told("[b]", "[p, loose, t]")).isEmpty();
    assertThat(told("[b]", "[gone, back, s, o, part]"))
        .containsExactly(
            "The claim c names the spend gone, which was given up.",
            "The claim c names the spend back, which is money that came back.",
            "The claim c names the spend s, which was given back in full before the claim went"
                + " out.",
            "The claim c names the spend part, which pays the order o that it asks for too.");
    assertThat(told("[{shortage: b, remedy: credit, costs: [p]}]", "[]"))
        .containsExactly(
            "The claim c names the spend p for a line that asks for something else than its cost.");
  }

  @Test
  void whatComesBackAfterTheLetterWasBroughtByIt() {
    Ledger later =
        Sample.ledger(
            SHORT
                + SPENT.replace("2026-01-24", "2026-01-25")
                + "claims: [{id: c, against: kit-maker, shortages: [b], sent: 2026-01-25, remedy:"
                + " refund, costs: [s]}]");
    ClaimStanding claim =
        ClaimStandings.on(Facts.of(later, LocalDate.of(2026, 3, 2))).of("c").orElseThrow();
    assertThat(claim.asked()).hasToString("[145.00 EUR]");
    assertThat(claim.paid()).hasToString("[25.00 EUR]");
    assertThat(claim.open()).hasToString("[120.00 EUR]");
  }

  @Test
  void whatIsOwedNoMoreIsExpectedByNobody() {
    Ledger ledger =
        Sample.ledger(
            SHORT.replace(
                    "shortages:",
                    "  - {id: e, received: 2026-02-05, from: kit-maker, counted: [{item: bolt, qty:"
                        + " 3}]}\nshortages:")
                + "claims: [{id: c, against: kit-maker, shortages: [b], sent: 2026-01-25, remedy:"
                + " refund}]");
    Facts day = Facts.of(ledger, LocalDate.of(2026, 3, 2));
    assertThat(ClaimStandings.on(day).of("c").orElseThrow().open()).hasToString("[30.00 EUR]");
    assertThat(Account.on(day).ifGranted()).hasToString("30.00 EUR");
  }

  @Test
  void whatNobodyFindsIsNamed() {
    Claim claim = ledger("[b, gone, {shortage: b, costs: [x]}]", "[p, y, y]").claims().get(0);
    assertThat(Asking.unfound(claim, ledger("[b]", "[]")))
        .extracting(Ref::id)
        .containsExactly("gone", "y", "x");
    Ledger noItem =
        Sample.ledger(
            "shortages: [{id: b, item: nut, qty: 4, found: 2026-01-06, cause: not-packed}]");
    assertThat(Asking.unfound(ledger("[b]", "[]").claims().get(0), noItem))
        .extracting(Ref::id)
        .containsExactly("nut");
    assertThat(Asking.unfound(ledger("[b]", "[p]").claims().get(0), ledger("[b]", "[p]")))
        .isEmpty();
  }
}
