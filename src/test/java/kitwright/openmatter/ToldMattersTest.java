package kitwright.openmatter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.substitution.SubstitutionUnsigned;
import org.junit.jupiter.api.Test;

/**
 * What an open list says of two cleats that were counted short, whatever became of them: what is
 * open, whom it waits for, what to do next, the last day to act, and the work it stops. Sample's
 * today is Monday, 2 March 2026; ordering takes ten days, and the supplier wants to be told within
 * fourteen of receipt.
 */
class ToldMattersTest {
  private static final String LEDGER =
      """
      parties:
        - {id: kit-maker, name: Redshank Kit Boats, role: supplier, notice: 14 d}
        - {id: shop, name: Chandler, role: supplier}
        - {id: nora, name: Nora, role: builder}
      budget: [{line: l, title: l, amount: 900}]
      kit: [{id: cleat, what: cleat, qty: 4, lead: 10 d}, {id: winch, what: winch, qty: 0}]
      tasks:
        - {id: long, what: Long work, takes: 15 d}
        - {id: side, what: Side work, takes: 1 d, uses: [{item: cleat, qty: 4}]}
      deliveries:
        - {id: d, received: 2026-02-20, from: kit-maker, packed: [{item: cleat, qty: 4}], counted: [{item: cleat, qty: 2}]}
      """;

  @Test
  void whatWasCountedShortIsToBeRecorded() {
    assertThat(told(""))
        .containsExactly(
            "kit item cleat | 2 × cleat: counted short, not recorded | you | record it as a"
                + " shortage and claim it; if you buy it, order it by 10\u00a0March\u00a02026 | by"
                + " 2026-03-06 | stops side, needed by 2026-03-20");
  }

  @Test
  void whatNobodyHasCountedMayNotHaveComeAtAll() {
    String counts = "kit item cleat | 4 × cleat: nobody has counted it | you | %s";
    String nothing = LEDGER.replaceFirst("(?s)deliveries:.*", "");
    assertThat(toldOf(nothing))
        .anyMatch(
            matter ->
                matter.startsWith(
                    counts.formatted("record the delivery that brings it, and count it |")));
    String other = nothing + "deliveries: [{id: d, received: 2026-02-20, from: kit-maker}]\n";
    assertThat(toldOf(other)).anyMatch(matter -> matter.startsWith(counts.formatted("count it |")));
  }

  @Test
  void aToolThatIsNotHereIsNeededBeforeItsWork() {
    String lent =
        "borrowed: [{id: saw, tool: band saw, from: shop, on: 2026-02-01, condition: good,"
            + " needed-for: [side]%s}]\n";
    assertThat(told(lent.formatted(""))).noneMatch(matter -> matter.contains("saw"));
    assertThat(told(lent.formatted(", returned: 2026-02-20")))
        .contains(
            "loan saw | band saw: not here | you | ask Chandler for it once more, or get another |"
                + " stops side, needed by 2026-03-20");
    String named = LEDGER.replace("takes: 1 d, ", "takes: 1 d, tools: [router], ");
    assertThat(toldOf(named))
        .contains(
            "task side | router: not here | you | get one and write it down under “borrowed”, or"
                + " correct its name | stops side, needed by 2026-03-20");
  }

  @Test
  void aShortageIsToldByItsCause() {
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause:"
                    + " not-packed}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | you | claim it from the supplier (or buy) | by"
                + " 2026-03-06 | stops side, needed by 2026-03-20");
    assertThat(
            told("shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: damaged}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: damaged | you | claim it from the supplier (or buy) | by"
                + " 2026-03-06 | stops side, needed by 2026-03-20");
    assertThat(told("shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: wrong}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: wrong ones came | you | claim it from the supplier (or buy) |"
                + " by 2026-03-06 | stops side, needed by 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: undersize}]\n"))
        .containsExactly(
            "kit item cleat | 2 × cleat: counted short, not recorded | you | record it as a"
                + " shortage and claim it; if you buy it, order it by 10\u00a0March\u00a02026 | by"
                + " 2026-03-06 | stops side, needed by 2026-03-20",
            "shortage s | 2 × cleat: undersize | you | claim it from the supplier (or buy) | by"
                + " 2026-03-06 | stops side, needed by 2026-03-20");
    assertThat(
            told("shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: used-up}]\n"))
        .containsExactly(
            "kit item cleat | 2 × cleat: counted short, not recorded | you | record it as a"
                + " shortage and claim it; if you buy it, order it by 10\u00a0March\u00a02026 | by"
                + " 2026-03-06 | stops side, needed by 2026-03-20",
            "shortage s | 2 × cleat: used up | you | get it another way: nobody owes what was used"
                + " up (or buy) | by 2026-03-06 | stops side, needed by 2026-03-20");
  }

  @Test
  void aClaimIsSentAndPressed() {
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "claims: [{id: c, against: kit-maker, shortages: [s], remedy:"
                    + " replacement}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | you | send the drafted claim (or buy) | by"
                + " 2026-03-06 | stops side, needed by 2026-03-20",
            "claim c | drafted, not sent | you | send it | by 2026-03-06 | stops side, needed by"
                + " 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement,"
                    + " sent: 2026-02-25, reply-by: 2026-03-20}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | Redshank Kit Boats | press for an answer to c"
                + " now: on 20\u00a0March\u00a02026 it will be too late to get it otherwise (or"
                + " buy) | by 2026-03-10 | stops side, needed by 2026-03-20",
            "claim c | sent, no word since; reply due in 18 days | Redshank Kit Boats | press for"
                + " an answer now: on 20\u00a0March\u00a02026 it will be too late to get it"
                + " otherwise | by 2026-03-20 | stops side, needed by 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: winch, qty: 2, found: 2026-02-20, cause: wrong}]\n"
                    + "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement,"
                    + " sent: 2026-02-25}]\n"))
        .as("no day was asked for, and no work waits")
        .contains(
            "claim c | sent, no word since | Redshank Kit Boats | press for an answer: no day was"
                + " asked for");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement,"
                    + " sent: 2026-02-25, reply-by: 2026-02-27}]\n"))
        .containsExactly(
            "claim c | sent, no word since; reply 3 days overdue | Redshank Kit Boats | remind"
                + " them, or do as the letter says | by 2026-02-27 | stops side, needed by"
                + " 2026-03-20",
            "shortage s | 2 × cleat: not packed | Redshank Kit Boats | press for an answer to c (or"
                + " buy) | by 2026-03-10 | stops side, needed by 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement,"
                    + " reply-by: 2026-03-03, sent: 2026-02-25, events: [{on: 2026-02-26, what:"
                    + " acknowledged}]}]\n"))
        .containsExactly(
            "claim c | received by them, not answered; reply due in 1 day | Redshank Kit Boats |"
                + " wait until 3\u00a0March\u00a02026 | by 2026-03-03 | stops side, needed by"
                + " 2026-03-20",
            "shortage s | 2 × cleat: not packed | Redshank Kit Boats | wait for the answer to c"
                + " until 3\u00a0March\u00a02026 (or buy) | by 2026-03-10 | stops side, needed by"
                + " 2026-03-20");
  }

  @Test
  void anAnswerIsSettledAndAPromiseSeenTo() {
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement,"
                    + " sent: 2026-02-25, events: [{on: 2026-02-26, what: answered}]}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | you | settle what was answered to c (or buy) | by"
                + " 2026-03-10 | stops side, needed by 2026-03-20",
            "claim c | answered, not settled | Redshank Kit Boats | settle it, or write again |"
                + " stops side, needed by 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement,"
                    + " sent: 2026-02-25, events: [{on: 2026-02-26, what: promised, expect:"
                    + " 2026-03-10}]}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | Redshank Kit Boats | see that it comes on"
                + " 10\u00a0March\u00a02026 | expected 2026-03-10 | stops side, needed by"
                + " 2026-03-20",
            "claim c | answered, not settled | Redshank Kit Boats | see that it comes on"
                + " 10\u00a0March\u00a02026 | expected 2026-03-10 | stops side, needed by"
                + " 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement,"
                    + " sent: 2026-02-25, events: [{on: 2026-02-26, what: promised, qty: 1, expect:"
                    + " 2026-03-10}]}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed; 1 to come 10\u00a0March\u00a02026 | you | settle"
                + " what was answered to c (or buy) | by 2026-03-10 | stops side, needed by"
                + " 2026-03-20",
            "claim c | answered, not settled | Redshank Kit Boats | see that it comes on"
                + " 10\u00a0March\u00a02026 | expected 2026-03-10 | stops side, needed by"
                + " 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement,"
                    + " sent: 2026-02-25, events: [{on: 2026-02-26, what: promised, expect:"
                    + " 2026-02-28}]}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed; 2 due 28\u00a0February\u00a02026 did not come |"
                + " you | ask again: what was promised did not come (or buy) | by 2026-03-10 |"
                + " stops side, needed by 2026-03-20",
            "claim c | answered, not settled | Redshank Kit Boats | ask again: they promised it for"
                + " 28\u00a0February\u00a02026 | stops side, needed by 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement,"
                    + " sent: 2026-02-25, events: [{on: 2026-02-26, what: disputed}]}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | you | settle what was answered to c (or buy) | by"
                + " 2026-03-10 | stops side, needed by 2026-03-20",
            "claim c | disputed | Redshank Kit Boats | answer them with the evidence |"
                + " stops side, needed by 2026-03-20");
  }

  @Test
  void aClaimThatBringsNoGoodsLeavesTheShortage() {
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement,"
                    + " sent: 2026-02-25, events: [{on: 2026-02-26, what: refused}]}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | you | settle what was answered to c (or buy) | by"
                + " 2026-03-10 | stops side, needed by 2026-03-20",
            "claim c | refused, not settled | Redshank Kit Boats | answer them with the evidence |"
                + " stops side, needed by 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement,"
                    + " sent: 2026-02-25, settled: {on: 2026-02-26, how: credited}}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | you | get it another way: the claim brings no"
                + " goods (or buy) | by 2026-03-10 | stops side, needed by 2026-03-20");
  }

  @Test
  void anOrderCoversItsOwnQuantityOnly() {
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "spending: [{id: o, on: 2026-02-24, line: l, what: cleats, amount: 9, state:"
                    + " ordered, replaces: s, to: shop, qty: 2, expected: 2026-03-12}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | Chandler | see that it comes on"
                + " 12\u00a0March\u00a02026 | expected 2026-03-12 | stops side, needed by"
                + " 2026-03-20",
            "spend o | cleats: ordered, not here | Chandler | see that it comes on"
                + " 12\u00a0March\u00a02026 | expected 2026-03-12 | stops side, needed by"
                + " 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "spending: [{id: o, on: 2026-02-24, line: l, what: cleats, amount: 9, state:"
                    + " ordered, replaces: s, to: shop, qty: 1, expected: 2026-03-12}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed; 1 to come 12\u00a0March\u00a02026 | you | claim it"
                + " from the supplier (or buy) | by 2026-03-06 | stops side, needed by 2026-03-20",
            "spend o | cleats: ordered, not here | Chandler | see that it comes on"
                + " 12\u00a0March\u00a02026 | expected 2026-03-12 | stops side, needed by"
                + " 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "spending: [{id: o, on: 2026-02-24, line: l, what: cleats, amount: 9, state:"
                    + " ordered, replaces: s, to: shop, qty: 1, expected: 2026-02-28}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed; 1 due 28\u00a0February\u00a02026 did not come |"
                + " you | claim it from the supplier (or buy) | by 2026-03-06 | stops side, needed"
                + " by 2026-03-20",
            "spend o | cleats: ordered, not here | Chandler | ask where it is, and write its new"
                + " day under “expected:”, or “came:” once it is here | expected 2026-02-28 | stops"
                + " side, needed by 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed}]\n"
                    + "spending: [{id: o, on: 2026-02-24, line: l, what: cleats, amount: 9, state:"
                    + " ordered, replaces: s, qty: 1}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed; 1 to come, nobody says when | you | claim it from"
                + " the supplier (or buy) | by 2026-03-06 | stops side, needed by 2026-03-20",
            "spend o | cleats: ordered, not here | the seller | ask when it comes, and write"
                + " “expected:” | stops side, needed by 2026-03-20");
  }

  @Test
  void aWayOutIsChosenAndThenDone() {
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed,"
                    + " options: [{kind: wait}, {id: shop, kind: buy, cost: 5, arrives:"
                    + " 2026-03-06}]}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | you | choose a way out: wait, shop (or buy) | by"
                + " 2026-03-06 | stops side, needed by 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed,"
                    + " options: [{kind: wait}, {id: shop, kind: buy, cost: 5, arrives:"
                    + " 2026-03-06}], decided: {option: shop, on: 2026-03-01, by: nora, why:"
                    + " w}}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | you | buy it, as decided, and record the order or"
                + " the payment with “replaces: s” | by 2026-03-06 | stops side, needed by"
                + " 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed,"
                    + " options: [{kind: wait}, {id: shop, kind: buy, cost: 5, arrives:"
                    + " 2026-03-06}], decided: {option: wait, on: 2026-03-01, by: nora, why:"
                    + " w}}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | you | claim it from the supplier (or buy) | by"
                + " 2026-03-06 | stops side, needed by 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed,"
                    + " options: [{kind: wait}, {id: shop, kind: buy, cost: 5, arrives:"
                    + " 2026-03-06}], decided: {option: shop, on: 2026-03-01, by: nora, why: w}}]\n"
                    + "spending: [{id: o, on: 2026-02-24, line: l, what: cleats, amount: 9, state:"
                    + " ordered, replaces: s, to: shop, qty: 2, expected: 2026-03-12}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | Chandler | see that it comes on"
                + " 12\u00a0March\u00a02026 | expected 2026-03-12 | stops side, needed by"
                + " 2026-03-20",
            "spend o | cleats: ordered, not here | Chandler | see that it comes on"
                + " 12\u00a0March\u00a02026 | expected 2026-03-12 | stops side, needed by"
                + " 2026-03-20");
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed,"
                    + " options: [{kind: do-without}], decided: {option: do-without, on:"
                    + " 2026-03-01, by: nora, why: w}}]\n"))
        .isEmpty();
    assertThat(
            told(
                "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause: not-packed,"
                    + " options: [{kind: substitute, substitution: u}], decided: {option:"
                    + " substitute, on: 2026-03-01, by: nora, why: w}}]\n"
                    + "substitutions: [{id: u, instead-of: {item: cleat, qty: 2}, for: s, grade:"
                    + " finish, why: w}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | you | get substitution u signed | by 2026-03-06 |"
                + " stops side, needed by 2026-03-20",
            "substitution u | nobody has signed | somebody entitled (no party of the ledger is) |"
                + " have signed what “kitwright fingerprint u --statement” prints");
  }

  @Test
  void aDeliveryIsAwaitedAskedForAndCounted() {
    assertThat(
            told(
                "  - {id: e, from: kit-maker, expected: 2026-03-09, packed: [{item: cleat, qty:"
                    + " 2}], note: N7}\n"
                    + "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause:"
                    + " not-packed}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | Redshank Kit Boats | see that it comes on"
                + " 9\u00a0March\u00a02026 | expected 2026-03-09 | stops side, needed by"
                + " 2026-03-20",
            "delivery e | on its way with note N7 | Redshank Kit Boats | be there on"
                + " 9\u00a0March\u00a02026, and count it the same day | expected 2026-03-09 | stops"
                + " side, needed by 2026-03-20");
    assertThat(
            told(
                "  - {id: e, from: kit-maker, expected: 2026-02-27, packed: [{item: cleat, qty:"
                    + " 2}]}\n"
                    + "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause:"
                    + " not-packed}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed; 2 due 27\u00a0February\u00a02026 did not come |"
                + " you | claim it from the supplier (or buy) | by 2026-03-06 | stops side, needed"
                + " by 2026-03-20",
            "delivery e | on its way | Redshank Kit Boats | ask where it is, and write its new day"
                + " under “expected:” | expected 2026-02-27 | stops side, needed by 2026-03-20");
    assertThat(
            told(
                "  - {id: e, from: kit-maker, packed: [{item: cleat, qty: 2}]}\n"
                    + "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause:"
                    + " not-packed}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed; 2 to come, nobody says when | you | claim it from"
                + " the supplier (or buy) | by 2026-03-06 | stops side, needed by 2026-03-20",
            "delivery e | on its way, nobody says for when | Redshank Kit Boats | ask where it is,"
                + " and write its new day under “expected:” | stops side, needed by 2026-03-20");
    assertThat(
            told(
                "  - {id: e, from: kit-maker, received: 2026-02-27, packed: [{item: cleat, qty:"
                    + " 2}]}\n"
                    + "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause:"
                    + " not-packed}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | you | count e, which may hold it; then claim it"
                + " from the supplier (or buy) | by 2026-03-06 | stops side, needed by 2026-03-20",
            "delivery e | came on 27\u00a0February\u00a02026, not counted | you | count it, and"
                + " record what is missing while the notice runs | by 2026-03-13 | stops side,"
                + " needed by 2026-03-20");
    assertThat(
            told(
                "  - {id: e, from: kit-maker, received: 2026-02-27, packed: [{item: winch, qty:"
                    + " 1}]}\n"
                    + "shortages: [{id: s, item: cleat, qty: 2, found: 2026-02-20, cause:"
                    + " not-packed}]\n"))
        .containsExactly(
            "shortage s | 2 × cleat: not packed | you | claim it from the supplier (or buy) | by"
                + " 2026-03-06 | stops side, needed by 2026-03-20",
            "delivery e | came on 27\u00a0February\u00a02026, not counted | you | count it, and"
                + " record what is missing while the notice runs | by 2026-03-13");
  }

  /** A line a matter, the most pressing first; the offer to buy it oneself is cut off. */
  /** The check says that it holds all work; the open list does not say that none waits for it. */
  @Test
  void aSignatureForATaskThatNobodyKnowsStopsAllWork() {
    String more =
        "substitutions: [{id: thin, instead-of: {what: thick, qty: 1}, grade: finish, why: here,"
            + " hold: lnog}]\n";
    Facts day = Facts.of(Sample.read(LEDGER + more, new Findings()).orElseThrow(), Sample.TODAY);
    OpenMatter thin =
        OpenMatters.on(day).all().stream()
            .filter(each -> each.record().equals("substitution thin"))
            .findFirst()
            .orElseThrow();
    assertThat(thin.stop().orElseThrow().task()).isEqualTo("long");
    Findings found = new Findings();
    new SubstitutionUnsigned().examine(day, found);
    assertThat(found.inOrder())
        .extracting(Finding::follows)
        .containsExactly("No work may start before, since there is no task “lnog”.");
  }

  private static List<String> told(String more) {
    return toldOf(LEDGER + more);
  }

  private static List<String> toldOf(String ledger) {
    Facts day = Facts.of(Sample.ledger(ledger), Sample.TODAY);
    return OpenMatters.on(day).all().stream().map(ToldMattersTest::told).toList();
  }

  private static String told(OpenMatter matter) {
    String next = matter.next();
    int offer = next.indexOf("; bought it instead? “kitwright buy … --replaces s”, or “replaces:”");
    return matter.record()
        + " | "
        + matter.what()
        + " | "
        + matter.waitsFor()
        + " | "
        + (offer < 0 ? next : next.substring(0, offer) + " (or buy)")
        + matter.actBy().map(day -> " | by " + day).orElse("")
        + matter.expected().map(day -> " | expected " + day).orElse("")
        + matter
            .stop()
            .map(stop -> " | stops " + stop.task() + ", needed by " + stop.neededBy())
            .orElse("");
  }
}
