package kitwright.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** What came of a claim: granted, come back, still open, and what its letter goes on telling. */
class AnsweredTest {
  private static final String SHORT =
      """
      budget: [{line: a, title: A, amount: 900}]
      kit:
        - {id: bolt, what: bolt, qty: 10, price: 30 EUR}
        - {id: stave, what: stave, qty: 20 m, price: 9 EUR/kg}
      deliveries:
        - {id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 6}, {item: stave, qty: 10 m}]}
      shortages:
        - {id: b, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed}
        - {id: s, item: stave, qty: 10 m, found: 2026-01-06, cause: not-packed}
      """;

  private static ClaimStanding claim(String more, String today) {
    return ClaimStandings.on(day(more, today)).of("c").orElseThrow();
  }

  private static Facts day(String more, String today) {
    return Facts.of(Sample.ledger(SHORT + more), LocalDate.parse(today));
  }

  private static String refund(String events) {
    return "claims: [{id: c, against: kit-maker, sent: 2026-01-10, remedy: refund, shortages: [b,"
        + " s], events: ["
        + events
        + "]}]\n";
  }

  private static String granted(String events) {
    return claim(refund(events), "2026-03-02").granted().toString();
  }

  @Test
  void theLastWordOnMoneyIsWhatIsGranted() {
    String all = "{on: 2026-02-0%d, what: granted, amount: %d EUR}";
    assertThat(granted(all.formatted(1, 50))).isEqualTo("[50.00 EUR]");
    assertThat(granted(all.formatted(2, 60) + ", " + all.formatted(1, 50)))
        .isEqualTo("[60.00 EUR]");
    assertThat(granted("{on: 2026-02-01, what: promised, amount: 50 EUR}")).isEqualTo("[]");
  }

  @Test
  void ofOneThingAloneTheWordIsOfItsLine() {
    String one = "{on: 2026-02-01, what: %s, of: [%s], amount: 50 EUR}";
    ClaimStanding standing = claim(refund(one.formatted("granted", "b")), "2026-03-02");
    assertThat(standing.lines().get(0).granted()).hasToString("[50.00 EUR]");
    assertThat(standing.lines().get(1).granted()).isEmpty();
    assertThat(granted(one.formatted("granted", "b"))).isEqualTo("[50.00 EUR]");
    assertThat(granted(one.formatted("paid", "b"))).isEqualTo("[]");
    assertThat(granted(one.formatted("granted", "b, s")))
        .as("how much of it is for which nobody says")
        .isEqualTo("[]");
  }

  @Test
  void anEndSaysMoreThanAWord() {
    String end =
        refund("{on: 2026-02-01, what: granted, amount: 50 EUR}")
            .replace(
                "events:", "settled: {on: 2026-02-03, how: refunded, amount: 40 EUR}, events:");
    assertThat(claim(end, "2026-03-02").granted()).hasToString("[40.00 EUR]");
    assertThat(claim(end, "2026-02-02").granted()).hasToString("[50.00 EUR]");
    assertThat(claim(end, "2026-03-02").open()).hasToString("[40.00 EUR]");
    assertThat(claim(end, "2026-02-02").open()).as("all that is asked").hasToString("[120.00 EUR]");
  }

  @Test
  void onlyWhatBelongsToItHasComeBackForIt() {
    String spending =
        """
        spending:
          - {id: k, on: 2026-01-02, line: a, what: kit, state: paid, amount: 400}
          - {id: p, on: 2026-01-08, line: a, what: taps, state: paid, amount: 20, because: s}
          - {id: r1, on: 2026-02-01, line: a, what: back, state: refunded, amount: 1, because: b}
          - {id: r2, on: 2026-02-01, line: a, what: back, state: refunded, amount: 2, refunds: p}
          - {id: r3, on: 2026-02-01, line: a, what: back, state: refunded, amount: 4, refunds: k}
          - {id: r4, on: 2026-02-01, line: a, what: back, state: refunded, amount: 8}
        """;
    ClaimStanding standing =
        claim(refund("").replace("events: []", "costs: [p]") + spending, "2026-03-02");
    assertThat(standing.paid()).as("1 for the bolts, 2 of the taps").hasToString("[3.00 EUR]");
    assertThat(standing.asked()).as("4 × 30 and the taps").hasToString("[140.00 EUR]");
    assertThat(standing.open()).hasToString("[137.00 EUR]");
  }

  @Test
  void whatThePriceDoesNotFitHasNoWorth() {
    ClaimStanding standing = claim(refund("").replace("refund,", "replacement,"), "2026-03-02");
    assertThat(standing.lines().get(1).value()).as("metres at a price a kilogram").isEmpty();
    assertThat(
            standing
                .lines()
                .get(1)
                .asking()
                .value(standing.lines().get(1).qty(), day(refund(""), "2026-03-02").ledger()))
        .isEmpty();
    assertThat(standing.goods()).hasToString("[120.00 EUR]");
  }

  @Test
  void aWordIsOfTheDayOnWhichItCame() {
    String words = "{on: 2026-02-01, what: %s}, {on: 2026-02-02, what: acknowledged}";
    assertThat(claim(refund(words.formatted("sent")), "2026-03-02").state())
        .isEqualTo(ClaimStanding.State.ACKNOWLEDGED);
    for (String what : List.of("answered", "promised", "granted", "delivered", "paid")) {
      assertThat(claim(refund(words.formatted(what)), "2026-03-02").state())
          .as("acknowledging after it was " + what + " takes nothing back")
          .isEqualTo(ClaimStanding.State.ANSWERED);
    }
    assertThat(claim(refund(words.formatted("refused")), "2026-03-02").state())
        .isEqualTo(ClaimStanding.State.REFUSED);
    assertThat(
            claim(
                    refund("{on: 2026-02-01, what: refused}, {on: 2026-02-02, what: reminded}"),
                    "2026-03-02")
                .state())
        .isEqualTo(ClaimStanding.State.REFUSED);
  }

  @Test
  void aPartOfALineEndsAPartOfIt() {
    String parted =
        "claims: [{id: c, against: kit-maker, sent: 2026-01-10, remedy: refund, shortages:"
            + " [{shortage: b, settled: [{on: 2026-02-01, how: refunded, qty: 1, amount: 30},"
            + " {on: 2026-02-02, how: refused, qty: %d}]}]}]\n";
    assertThat(claim(parted.formatted(3), "2026-03-02").lines().get(0).isOver()).isTrue();
    assertThat(claim(parted.formatted(2), "2026-03-02").lines().get(0).isOver()).isFalse();
    assertThat(claim(parted.formatted(3), "2026-02-01").lines().get(0).isOver()).isFalse();
    assertThat(claim(refund(""), "2026-03-02").lines().get(0).isOver()).isFalse();
  }

  @Test
  void twoLinesOfOneShortageShareIt() {
    String two =
        "claims: [{id: c, against: kit-maker, sent: 2026-01-10, remedy: refund, shortages:"
            + " [{shortage: b, qty: 1, remedy: replacement}, b, {shortage: s, qty: 3 m}]}]\n";
    assertThat(claim(two, "2026-03-02").lines())
        .extracting(line -> line.qty().told())
        .containsExactly("1", "3", "3 m");
  }

  @Test
  void aLetterGoesOnTellingWhatItToldOnTheDayItWasSent() {
    String later =
        SHORT.replace(
            "shortages:",
            "  - {id: e, received: 2026-02-05, from: kit-maker, counted: [{item: bolt, qty: 3}]}\n"
                + "shortages:");
    Facts now = Facts.of(Sample.ledger(later + refund("")), LocalDate.of(2026, 3, 2));
    assertThat(ClaimStandings.on(now).of("c").orElseThrow().asked()).hasToString("[30.00 EUR]");
    assertThat(ClaimStandings.asTold("c", now).orElseThrow().asked()).hasToString("[120.00 EUR]");
    assertThat(ClaimStandings.asTold("none", now)).isEmpty();
    Facts before = now.on(LocalDate.of(2026, 1, 9));
    assertThat(ClaimStandings.asTold("c", before).orElseThrow().isDraft()).isTrue();
    Facts draft =
        Facts.of(
            Sample.ledger(later + refund("").replace("sent: 2026-01-10, ", "")),
            LocalDate.of(2026, 3, 2));
    assertThat(ClaimStandings.asTold("c", draft).orElseThrow().asked())
        .as("a draft is told as of today")
        .hasToString("[30.00 EUR]");
  }

  private static List<String> uncounted(String settled, String counted) {
    String yaml =
        SHORT.replace(
                "shortages:",
                counted.isEmpty()
                    ? "shortages:"
                    : "  - {id: e, received: 2026-02-05, from: kit-maker, counted: [{item: bolt,"
                        + " qty: "
                        + counted
                        + "}]}\nshortages:")
            + "claims: [{id: c, against: kit-maker, sent: 2026-01-10, remedy: replacement,"
            + " shortages: [{shortage: b, settled: "
            + settled
            + "}]}]\n";
    return Sample.findings(
            new ReplacementUncounted(), Sample.ledger(yaml), LocalDate.of(2026, 3, 2))
        .stream()
        .map(Finding::what)
        .toList();
  }

  @Test
  void aLineThatWasReplacedIsCounted() {
    String told = "The claim c is settled as replaced, but no count since shows %s × bolt.";
    assertThat(uncounted("{on: 2026-02-01, how: replaced}", "")).containsExactly(told.formatted(4));
    assertThat(uncounted("{on: 2026-02-01, how: replaced}", "1"))
        .containsExactly(told.formatted(3));
    assertThat(uncounted("{on: 2026-02-01, how: replaced}", "4")).isEmpty();
    assertThat(uncounted("[{on: 2026-02-01, how: replaced, qty: 2}]", "1"))
        .containsExactly(told.formatted(1));
    assertThat(uncounted("[{on: 2026-02-01, how: replaced, qty: 2}]", "2")).isEmpty();
    assertThat(uncounted("{on: 2026-02-01, how: refused}", "")).isEmpty();
  }
}
