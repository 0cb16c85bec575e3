package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** A day that was named and has passed covers nothing: nobody knows when it comes, or whether. */
class LapsedTest {
  private static final String KIT =
      """
      kit: [{id: cleat, what: cleat, qty: 10, lead: 2 w}]
      tasks: [{id: bed, what: Bed them, takes: 2 d, uses: [{item: cleat, qty: 10}]}]
      shortages: [{id: short, item: cleat, qty: 6, found: 2026-01-24, cause: not-packed}]
      """;
  private static final String CRATE =
      "deliveries:\n"
          + "  - {id: d1, received: 2026-01-22, from: kit-maker, counted: [{item: cleat, qty:"
          + " 4}]}\n";
  private static final String CLAIM =
      "claims: [{id: c, against: kit-maker, shortages: [short], sent: 2026-01-25, remedy:"
          + " replacement, events: [%s]}]\n";

  private static Facts day(String more, String today) {
    return Facts.of(Sample.ledger(KIT + CRATE + more), LocalDate.parse(today));
  }

  private static ShortageStanding standing(String more, String today) {
    return ShortageStandings.on(day(more, today)).all().get(0);
  }

  private static String toOrder(String more, String today) {
    return LookAhead.on(day(more, today)).orders().stream()
        .map(each -> each.order().amount().stripTrailingZeros().toPlainString())
        .toList()
        .toString();
  }

  private static List<String> told(String more, String today) {
    return Sample.findings(
            new PromiseOverdue(), Sample.ledger(KIT + CRATE + more), LocalDate.parse(today))
        .stream()
        .map(Finding::what)
        .toList();
  }

  @Test
  void aPromiseHoldsOnItsDayAndNotOnTheNext() {
    String promise = CLAIM.formatted("{on: 2026-02-01, what: promised, expect: 2026-03-02}");
    assertThat(standing(promise, "2026-03-02").state()).isEqualTo(ShortageStanding.State.PROMISED);
    assertThat(toOrder(promise, "2026-03-02")).isEqualTo("[]");
    ShortageStanding next = standing(promise, "2026-03-03");
    assertThat(next.state()).isEqualTo(ShortageStanding.State.ANSWERED);
    assertThat(next.unsupplied()).hasToString("6 each");
    assertThat(next.promisedFor()).isEmpty();
    assertThat(toOrder(promise, "2026-03-03")).isEqualTo("[6]");
    assertThat(onItsWay(promise, "2026-03-02")).isEqualTo("6 each, of no day 0 each");
    assertThat(onItsWay(promise, "2026-03-03")).isEqualTo("0 each, of no day 0 each");
    assertThat(told(promise, "2026-03-02")).isEmpty();
    assertThat(told(promise, "2026-03-03"))
        .containsExactly(
            "Promised for 2\u00a0March\u00a02026, 1 day ago, and still missing: 6 × cleat.");
  }

  @Test
  void aPromiseOfAPartThatDidNotComeIsToldToo() {
    String promise =
        CLAIM.formatted("{on: 2026-02-01, what: promised, qty: 2, expect: 2026-02-20}");
    assertThat(told(promise, "2026-03-02"))
        .containsExactly(
            "Promised for 20\u00a0February\u00a02026, 10 days ago, and still missing: 2 × cleat.");
  }

  @Test
  void aPromiseMovedThreeTimesHoldsForItsLastDay() {
    String promise =
        CLAIM.formatted(
            "{on: 2026-02-01, what: promised, expect: 2026-02-10},"
                + " {on: 2026-02-11, what: promised, expect: 2026-02-20},"
                + " {on: 2026-02-21, what: promised, expect: 2026-03-10}");
    assertThat(standing(promise, "2026-02-12").promisedFor()).contains(LocalDate.of(2026, 2, 20));
    assertThat(standing(promise, "2026-02-21").promisedFor()).contains(LocalDate.of(2026, 3, 10));
    assertThat(toOrder(promise, "2026-03-02")).isEqualTo("[]");
    assertThat(toOrder(promise, "2026-03-11")).isEqualTo("[6]");
  }

  @Test
  void aDeliveryThatDidNotComeBringsNothing() {
    String more =
        "  - {id: d2, expected: 2026-02-20, from: kit-maker, packed: [{item: cleat, qty: 6}]}\n";
    assertThat(toOrder(more, "2026-02-20")).isEqualTo("[]");
    assertThat(toOrder(more, "2026-02-21")).isEqualTo("[6]");
    assertThat(told(more, "2026-02-21"))
        .containsExactly(
            "The delivery d2 was to come by 20\u00a0February\u00a02026, 1 day ago, and nothing says"
                + " that it did.");
    LookAhead ahead = LookAhead.on(day(more, "2026-02-21"));
    assertThat(ahead.dayless(ahead.all().get(0).thing()))
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.by()).isEqualTo("delivery d2");
              assertThat(each.qty()).hasToString("6 each");
              assertThat(each.said()).contains(LocalDate.of(2026, 2, 20));
            });
  }

  @Test
  void aNewPromiseOfGoodsThatAreLateOnTheirWayCountsThemOnce() {
    String more =
        "  - {id: d2, expected: 2026-02-20, from: kit-maker, packed: [{item: cleat, qty: 4}]}\n"
            + CLAIM.formatted("{on: 2026-02-25, what: promised, qty: 4, expect: 2026-03-10}");
    ShortageStanding standing = standing(more, "2026-03-02");
    assertThat(standing.unsupplied()).hasToString("2 each");
    assertThat(standing.coming())
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.how()).isEqualTo(Coming.How.SENT);
              assertThat(each.on()).contains(LocalDate.of(2026, 3, 10));
            });
    assertThat(toOrder(more, "2026-03-02")).isEqualTo("[2]");
  }

  @Test
  void whatWasPaidInAdvanceIsHereOnceSomebodySaysSo() {
    String paid =
        "spending: [{id: s, on: 2026-02-01, line: l, what: six cleats, amount: 60, state: paid,"
            + " replaces: short, expected: 2026-02-20%s}]\n";
    assertThat(standing(paid.formatted(""), "2026-02-20").expected())
        .contains(LocalDate.of(2026, 2, 20));
    assertThat(standing(paid.formatted(""), "2026-02-21").isOpen()).isTrue();
    assertThat(toOrder(paid.formatted(""), "2026-02-21")).isEqualTo("[6]");
    assertThat(told(paid.formatted(""), "2026-02-21"))
        .containsExactly(
            "What s bought was to come by 20\u00a0February\u00a02026, 1 day ago, and nothing says"
                + " that it did.");
    String came = paid.formatted(", came: 2026-02-23");
    assertThat(standing(came, "2026-02-23").coveredOn()).contains(LocalDate.of(2026, 2, 23));
    assertThat(standing(came, "2026-02-22").isOpen()).isTrue();
    assertThat(toOrder(came, "2026-03-02")).isEqualTo("[]");
    assertThat(told(came, "2026-03-02")).isEmpty();
  }

  @Test
  void anOrderWithoutADayComesOnTheDayOfTheWayOutThatItCarriesOut() {
    String decided =
        KIT.replace(
            "cause: not-packed}",
            "cause: not-packed, options: [{kind: buy, cost: 60, arrives: 2026-03-20}],"
                + " decided: {option: buy, on: 2026-02-01, by: nora}}");
    String order =
        "spending: [{id: s, on: 2026-02-01, line: l, what: six cleats, amount: 60, state: ordered,"
            + " replaces: short}]\n";
    Facts day = Facts.of(Sample.ledger(decided + CRATE + order), Sample.TODAY);
    assertThat(ShortageStandings.on(day).all().get(0).promisedFor())
        .contains(LocalDate.of(2026, 3, 20));
    assertThat(LookAhead.on(day).orders()).isEmpty();
    assertThat(standing(order, "2026-03-02").unsupplied()).hasToString("6 each");
  }

  @Test
  void partsPromisedOnOneDayStandTogetherAndAWholeTakesTheirPlace() {
    String parts =
        CLAIM.formatted(
            "{on: 2026-02-01, what: promised, qty: 2, expect: 2026-03-05},"
                + " {on: 2026-02-01, what: promised, qty: 3, expect: 2026-03-10}");
    assertThat(standing(parts, "2026-03-02").unsupplied()).hasToString("1 each");
    String whole =
        CLAIM.formatted(
            "{on: 2026-02-01, what: promised, qty: 2, expect: 2026-03-05},"
                + " {on: 2026-02-01, what: promised, expect: 2026-03-10}");
    assertThat(standing(whole, "2026-03-02").coming())
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.qty()).hasToString("6 each");
              assertThat(each.on()).contains(LocalDate.of(2026, 3, 10));
            });
  }

  @Test
  void anAnswerWithoutADayTakesNothingFromAPromise() {
    String answered =
        CLAIM.formatted(
            "{on: 2026-02-01, what: promised, expect: 2026-03-10},"
                + " {on: 2026-02-20, what: answered, text: still on it}");
    assertThat(standing(answered, "2026-03-02").promisedFor()).contains(LocalDate.of(2026, 3, 10));
  }

  @Test
  void whatIsSaidForTodayMayBeCountedOnFromTomorrow() {
    String order =
        "spending: [{id: s, on: 2026-02-01, line: l, what: six cleats, amount: 60, state: ordered,"
            + " replaces: short, expected: 2026-03-02}]\n";
    Coming coming = standing(order, "2026-03-02").coming().get(0);
    assertThat(coming.from(LocalDate.of(2026, 3, 2))).contains(LocalDate.of(2026, 3, 3));
    assertThat(coming.from(LocalDate.of(2026, 3, 1))).contains(LocalDate.of(2026, 3, 2));
  }

  @Test
  void anOrderWithoutADayIsStillToldAsOnItsWay() {
    String order =
        "spending: [{id: s, on: 2026-02-01, line: l, what: six cleats, amount: 60, state: ordered,"
            + " replaces: short}]\n";
    assertThat(standing(order, "2026-03-02").coming())
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.how()).isEqualTo(Coming.How.ORDERED);
              assertThat(each.on()).isEmpty();
              assertThat(each.lapsed()).isEmpty();
              assertThat(each.isUnderWay()).isTrue();
            });
    assertThat(onItsWay(order, "2026-03-02")).isEqualTo("0 each, of no day 6 each");
  }

  private static String onItsWay(String yaml, String on) {
    LocalDate today = LocalDate.parse(on);
    Balance kit = ShortageStandings.on(day(yaml, on)).balances().get(0);
    return kit.coming(today) + ", of no day " + kit.ofNoDay(today);
  }

  /** As work reckons: what was to come yesterday is not surely coming, nor what has no day. */
  @Test
  void theKitCountsAsComingWhatHasADayThatStillStands() {
    String crate =
        "  - {id: late, %sfrom: kit-maker, packed: [{item: cleat, qty: 4}]}\n"
            + "spending: [{id: s, on: 2026-02-01, line: l, what: two cleats, amount: 60, state:"
            + " ordered, replaces: short, qty: 2, expected: 2026-03-05}]\n";
    String said = crate.formatted("expected: 2026-03-02, ");
    assertThat(onItsWay(said, "2026-03-02")).isEqualTo("6 each, of no day 0 each");
    assertThat(onItsWay(said, "2026-03-03")).isEqualTo("2 each, of no day 4 each");
    assertThat(onItsWay(crate.formatted(""), "2026-03-03")).isEqualTo("2 each, of no day 4 each");
    assertThat(onItsWay(said, "2026-03-06")).isEqualTo("0 each, of no day 6 each");
  }

  @Test
  void aLateCrateStandsBehindOneThatHasADay() {
    String two =
        "  - {id: d2, expected: 2026-02-20, from: kit-maker, packed: [{item: cleat, qty: 6}]}\n"
            + "  - {id: d3, expected: 2026-03-20, from: kit-maker, packed: [{item: cleat, qty:"
            + " 6}]}\n";
    assertThat(standing(two, "2026-03-02").expected()).contains(LocalDate.of(2026, 3, 20));
    assertThat(toOrder(two, "2026-03-02")).isEqualTo("[]");
  }

  @Test
  void aWithdrawnOrderIsNotAwaited() {
    String order =
        "spending: [{id: s, on: 2026-02-01, line: l, what: six cleats, amount: 60, state: ordered,"
            + " replaces: short, expected: 2026-02-20, withdrawn: 2026-02-25}]\n";
    assertThat(told(order, "2026-02-24")).hasSize(1);
    assertThat(told(order, "2026-02-25")).isEmpty();
  }
}
