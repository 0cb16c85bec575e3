package kitwright.openmatter;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.network.Plan;
import kitwright.network.WeatherBound;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is open, by when, for whom. Sample's today is Monday, 2 March 2026. */
class OpenMattersTest {
  private static final String WORK =
      """
      tasks:
        - {id: fair, what: Fair the hull, takes: 5 d}
        - {id: bond, what: Bond the bulkheads, takes: 2 d, after: [fair]}
        - {id: side, what: Side work, takes: 1 d, uses: [{item: cleat, qty: 2}], tools: [saw]}
      kit: [{id: cleat, what: bronze cleat, qty: 2}]
      """;

  private static OpenMatters open(String yaml) {
    return OpenMatters.on(Facts.of(Sample.ledger(yaml), Sample.TODAY));
  }

  private static OpenMatter only(String yaml, OpenMatter.Sort sort) {
    return open(yaml).all().stream().filter(m -> m.sort() == sort).findFirst().orElseThrow();
  }

  @Test
  void aSignatureIsNeededByTheLatestStartOfItsHoldPoint() {
    OpenMatter matter =
        only(
            WORK
                + """
                substitutions:
                  - {id: thin, instead-of: {what: thick, qty: 1}, grade: finish, why: here, hold: side}
                """,
            OpenMatter.Sort.SIGN_OFF);
    OpenMatter.Stop stop = matter.stop().orElseThrow();
    assertThat(stop.from()).isEqualTo("2026-03-02");
    assertThat(stop.neededBy()).isEqualTo("2026-03-10");
    assertThat(stop.floatDays()).isEqualTo(6);
    assertThat(matter.waitsFor()).isEqualTo("A. Osterlund or Nora");
    assertThat(matter.next())
        .startsWith("have signed what “kitwright fingerprint thin --statement” prints");
  }

  @Test
  void aSignatureOfAStructuralPartIsNeededByTheWorkThatUsesItWhereItNamesNone() {
    String sub =
        """
        substitutions:
          - {id: thin, instead-of: {item: cleat, qty: 1}, grade: %s, why: here}
        """;
    OpenMatter structural = only(WORK + sub.formatted("structural"), OpenMatter.Sort.ASSESSMENT);
    assertThat(structural.stop().orElseThrow().neededBy()).isEqualTo("2026-03-10");
    assertThat(only(WORK + sub.formatted("finish"), OpenMatter.Sort.SIGN_OFF).stop()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "materials: [{id: x, kind: resin, source: test}] | material: x | record the order with its"
            + " “material” and “expected”",
        "stock: [{id: x, what: X, qty: 1}] | stock: x | get more of it and write down how much"
            + " there is then",
      })
  void whatNobodySendsIsGotAsItCanBeRecorded(String record, String use, String next) {
    String task = "tasks: [{id: t, what: T, takes: 1 d, uses: [{%s, qty: 2}]}]\n";
    assertThat(only(record + "\n" + task.formatted(use), OpenMatter.Sort.LACK).next())
        .contains(next);
  }

  @Test
  void anOrderWaitsForTheSellerByName() {
    String order =
        """
        budget: [{line: l, title: l, amount: 9}]
        spending: [{id: o, on: 2026-02-20, line: l, what: w, amount: 9, to: %s, state: ordered, expected: 2026-03-09}]
        """;
    assertThat(only(WORK + order.formatted("kit-maker"), OpenMatter.Sort.ORDER).waitsFor())
        .isEqualTo("Redshank Kit Boats");
    assertThat(only(WORK + order.formatted("Timber yard"), OpenMatter.Sort.ORDER).waitsFor())
        .isEqualTo("Timber yard");
  }

  @Test
  void anOrderWithoutADayIsOpenToo() {
    OpenMatter matter =
        only(
            WORK
                + """
                budget: [{line: l, title: l, amount: 9}]
                spending: [{id: o, on: 2026-02-20, line: l, what: w, amount: 9, state: ordered}]
                """,
            OpenMatter.Sort.ORDER);
    assertThat(matter.next()).isEqualTo("ask when it comes, and write “expected:”");
    assertThat(matter.expected()).isEmpty();
  }

  @Test
  void aShortageIsNeededByTheFirstTaskThatIsNotServed() {
    OpenMatter matter =
        only(
            WORK
                + """
                deliveries: [{id: d, received: 2026-02-20, from: kit-maker, counted: [{item: cleat, qty: 1}]}]
                shortages: [{id: s, item: cleat, qty: 1, found: 2026-02-20, cause: not-packed}]
                """,
            OpenMatter.Sort.SHORTAGE);
    assertThat(matter.stop().map(OpenMatter.Stop::task)).contains("side");
    assertThat(matter.what()).isEqualTo("1 × bronze cleat: not packed");
    assertThat(matter.next())
        .isEqualTo(
            "claim it from the supplier; bought it instead? “kitwright buy … --replaces s”, or"
                + " “replaces:” in the payment");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '|',
      value = {
        "; send the drafted claim, and claim the 3 that no claim names; bought",
        ", sent: 2026-02-21; press for an answer to c, and claim the 3 that no claim names;"
            + " bought",
        ", sent: 2026-02-21, events: [{on: 2026-02-22, what: answered}]; settle what was answered"
            + " to c, and claim the 3 that no claim names; bought",
        ", sent: 2026-02-21, events: [{on: 2026-02-22, what: promised, expect: 2026-02-25}]; ask"
            + " again: what was promised did not come, and claim the 3 that no claim names; bought",
        ", sent: 2026-02-21, settled: {on: 2026-02-22, how: refused}; get it another way: the claim"
            + " brings no goods, and claim the 3 that no claim names; bought"
      })
  void whatNoClaimNamesOfItIsStillToBeClaimed(String claim, String next) {
    String yaml =
        """
        kit: [{id: pin, what: pin, qty: 4}]
        shortages: [{id: s, item: pin, qty: 4, found: 2026-02-20, cause: not-packed}]
        claims: [{id: c, against: kit-maker, remedy: replacement, shortages: [{shortage: s, qty: 1}]%s}]
        """;
    String more = claim == null ? "" : claim;
    assertThat(only(yaml.formatted(more), OpenMatter.Sort.SHORTAGE).next()).startsWith(next);
    assertThat(
            only(
                    yaml.formatted(more).replace("{shortage: s, qty: 1}", "s"),
                    OpenMatter.Sort.SHORTAGE)
                .next())
        .doesNotContain("no claim names");
  }

  @Test
  void aShortageThatNoWorkWaitsForHasNoDay() {
    OpenMatter matter =
        only(
            WORK.replace("qty: 2}], tools", "qty: 1}], tools")
                + """
                deliveries: [{id: d, received: 2026-02-20, from: kit-maker, counted: [{item: cleat, qty: 1}]}]
                shortages: [{id: s, item: cleat, qty: 1, found: 2026-02-20, cause: not-packed}]
                """,
            OpenMatter.Sort.SHORTAGE);
    assertThat(matter.stop()).isEmpty();
  }

  @Test
  void aClaimIsNeededByItsShortages() {
    OpenMatter matter =
        only(
            WORK
                + """
                deliveries: [{id: d, received: 2026-02-20, from: kit-maker, counted: [{item: cleat, qty: 1}]}]
                shortages: [{id: s, item: cleat, qty: 1, found: 2026-02-20, cause: not-packed}]
                claims: [{id: c, against: kit-maker, shortages: [s], sent: 2026-02-21, reply-by: 2026-02-28, remedy: replacement}]
                """,
            OpenMatter.Sort.CLAIM);
    assertThat(matter.stop().map(OpenMatter.Stop::task)).contains("side");
    assertThat(matter.what()).isEqualTo("sent, no word since; reply 2 days overdue");
    assertThat(matter.waitsFor()).isEqualTo("Redshank Kit Boats");
  }

  @Test
  void somethingUncountedIsToBeCountedBeforeTheWork() {
    OpenMatter matter = only(WORK, OpenMatter.Sort.COUNT);
    assertThat(matter.record()).isEqualTo("kit item cleat");
    assertThat(matter.stop().map(OpenMatter.Stop::task)).contains("side");
  }

  @Test
  void aDeliveryIsNeededByTheFirstTaskThatLeansOnIt() {
    OpenMatter matter =
        only(
            WORK
                + "deliveries: [{id: d, expected: 2026-03-20, from: kit-maker, packed: [{item:"
                + " cleat, qty: 2}]}]\n",
            OpenMatter.Sort.DELIVERY);
    assertThat(matter.stop().map(OpenMatter.Stop::task)).contains("side");
    assertThat(matter.comesTooLate()).isTrue();
  }

  @Test
  void aDeliveryIsNeededByTheTaskThatUnpacksItToo() {
    OpenMatter matter =
        only(
            """
            deliveries: [{id: d, from: kit-maker, sent: 2026-02-26}, {id: other, from: kit-maker, received: 2026-02-20}]
            tasks:
              - {id: unpack, what: Unpack, takes: 1 d, unpacks: [d]}
              - {id: done, what: Done, takes: 1 d, unpacks: [d, other], finished: 2026-02-24}
            """,
            OpenMatter.Sort.DELIVERY);
    assertThat(matter.stop().map(OpenMatter.Stop::task)).contains("unpack");
    assertThat(matter.what())
        .isEqualTo("on its way since 26\u00a0February\u00a02026, nobody says for when");
    assertThat(matter.next()).isEqualTo("ask where it is, and write its new day under “expected:”");
  }

  @Test
  void aToolIsOpenWhereTheWorkNeedsItLongerThanAgreed() {
    String tool =
        "borrowed: [{id: saw, tool: band saw, from: pell, on: 2026-02-01, due: %s, condition: fine,"
            + " needed-for: [bond]}]\n";
    OpenMatter matter = only(WORK + tool.formatted("2026-03-06"), OpenMatter.Sort.TOOL);
    assertThat(matter.stop().map(OpenMatter.Stop::task)).contains("bond");
    assertThat(matter.next())
        .contains("ask Pell to leave it with you until 10\u00a0March\u00a02026");
    assertThat(open(WORK + tool.formatted("2026-03-10")).all())
        .noneMatch(each -> each.sort() == OpenMatter.Sort.TOOL);
  }

  @Test
  void outdoorWorkWaitsForItsWindow() {
    String weather =
        """
        tasks: [{id: paint, what: Paint, takes: 1 d, place: outdoors, weather: {dry: 2 d}}]
        forecast:
          - {day: 2026-03-02, rain: 3 mm, low: 4 C, high: 9 C}
          - {day: 2026-03-03, rain: 0 mm, low: 4 C, high: 9 C}
          - {day: 2026-03-04, rain: 0 mm, low: 4 C, high: 9 C}
        """;
    OpenMatter matter = only(weather, OpenMatter.Sort.WEATHER);
    assertThat(matter.expected().map(Object::toString)).contains("2026-03-03");
    assertThat(open(weather.replace("outdoors", "indoors")).all()).isEmpty();
    assertThat(open(weather.replace("rain: 3 mm", "rain: 0 mm")).all()).isEmpty();
  }

  @Test
  void mostPressingComesFirstAndWhatNothingWaitsForLast() {
    OpenMatters open =
        open(
            WORK
                + """
                substitutions:
                  - {id: late, instead-of: {what: thick, qty: 1}, grade: finish, why: here, hold: bond}
                  - {id: soon, instead-of: {what: thick, qty: 1}, grade: finish, why: here, hold: fair}
                  - {id: idle, instead-of: {what: thick, qty: 1}, grade: finish, why: here}
                """);
    assertThat(open.all())
        .filteredOn(matter -> matter.sort() == OpenMatter.Sort.SIGN_OFF)
        .extracting(OpenMatter::record)
        .containsExactly("substitution soon", "substitution late", "substitution idle");
  }

  @Test
  void aFinishedBuildWithoutOpenRecordsHasNoOpenMatters() {
    Ledger ledger =
        Sample.ledger(
            "tasks: [{id: a, what: A, takes: 1 d, started: 2026-02-02, finished: 2026-02-03}]\n");
    assertThat(OpenMatters.on(Facts.of(ledger, Sample.TODAY)).all()).isEmpty();
    assertThat(OpenMatters.on(Facts.of(Sample.ledger("rates: []\n"), Sample.TODAY)).all())
        .isEmpty();
  }

  @Test
  void readyIsWhatLacksNothing() {
    Facts now = Facts.of(Sample.ledger(WORK), Sample.TODAY);
    assertThat(Readiness.of(Plan.on(now).task("fair").orElseThrow(), now).isReady()).isTrue();
    assertThat(Readiness.of(Plan.on(now).task("bond").orElseThrow(), now).lacks())
        .extracting(Readiness.Lack::words)
        .containsExactly("“Fair the hull” comes before");
    assertThat(Readiness.of(Plan.on(now).task("side").orElseThrow(), now).lacks())
        .extracting(Readiness.Lack::words)
        .containsExactly("bronze cleat not counted", "saw not here");
  }

  private static Optional<String> stopped(String more, OpenMatter.Sort sort) {
    return only(WORK + more, sort).stop().map(OpenMatter.Stop::task);
  }

  /** One cleat is here and the side work takes one: the claim for the other stops nothing. */
  @Test
  void aClaimStopsOnlyWorkThatLacksWhatItAsksFor() {
    String claim =
        """
        deliveries: [{id: d, received: 2026-02-20, from: kit-maker, counted: [{item: cleat, qty: 1}]}]
        shortages: [{id: s, item: cleat, qty: 1, found: 2026-02-20, cause: not-packed}]
        claims: [{id: c, against: kit-maker, shortages: [s], sent: 2026-02-21, reply-by: 2026-03-28, remedy: replacement}]
        """;
    assertThat(stopped(claim, OpenMatter.Sort.CLAIM)).contains("side");
    assertThat(
            only(WORK.replace("qty: 2}], tools", "qty: 1}], tools") + claim, OpenMatter.Sort.CLAIM)
                .stop())
        .isEmpty();
  }

  @Test
  void whatIsPackedInADeliveryOfNoDayStopsTheWorkThatLacksIt() {
    String sent = "deliveries: [{id: d, from: kit-maker, packed: [{item: %s, qty: 2}]}]\n";
    String counted =
        sent.replace(
            "[{id",
            "[{id: e, received: 2026-02-20, from: kit-maker, counted: [{item: cleat, qty: 0}]},"
                + " {id");
    assertThat(stopped(counted.formatted("cleat"), OpenMatter.Sort.DELIVERY)).contains("side");
    String other =
        WORK.replace("kit: [", "kit: [{id: winch, what: winch, qty: 2}, ")
            + counted.formatted("winch");
    assertThat(only(other, OpenMatter.Sort.DELIVERY).stop()).isEmpty();
  }

  @Test
  void whatCameAndNobodyCountedStopsTheWorkThatTakesIt() {
    String came =
        "deliveries: [{id: d, received: 2026-02-20, from: kit-maker, packed: [{item: %s, qty:"
            + " 2}]}]\n";
    OpenMatter matter =
        open(WORK + came.formatted("cleat")).all().stream()
            .filter(each -> each.record().equals("delivery d"))
            .findFirst()
            .orElseThrow();
    assertThat(matter.sort()).isEqualTo(OpenMatter.Sort.COUNT);
    assertThat(matter.stop().map(OpenMatter.Stop::task)).contains("side");
    OpenMatter other =
        open(
                WORK.replace("kit: [", "kit: [{id: winch, what: winch, qty: 2}, ")
                    + came.formatted("winch"))
            .all()
            .stream()
            .filter(each -> each.record().equals("delivery d"))
            .findFirst()
            .orElseThrow();
    assertThat(other.stop()).isEmpty();
  }

  /** Needed by Tuesday, 10 March: what comes that day is in time, what comes after it is not. */
  @Test
  void whatComesOnTheLastDayIsInTime() {
    String crate =
        """
        deliveries: [{id: d, from: kit-maker, expected: %s, packed: [{item: cleat, qty: 2}]}]
        """;
    OpenMatter inTime = only(WORK + crate.formatted("2026-03-10"), OpenMatter.Sort.DELIVERY);
    assertThat(inTime.neededBy()).contains(LocalDate.of(2026, 3, 10));
    assertThat(inTime.comesTooLate()).isFalse();
    assertThat(only(WORK + crate.formatted("2026-03-11"), OpenMatter.Sort.DELIVERY).comesTooLate())
        .isTrue();
    assertThat(
            only(WORK + crate.replace("expected: %s, ", ""), OpenMatter.Sort.DELIVERY)
                .comesTooLate())
        .isFalse();
  }

  /**
   * Bedding lasts from Monday to Tuesday, and rain on Monday leaves Tuesday and Wednesday: closing
   * can begin on Thursday, not on Wednesday.
   */
  @Test
  void theWeatherOfWhatComesBeforeMovesTheHoldPointAndTheWindowAfterIt() {
    String work =
        """
        tasks:
          - {id: bed, what: Bed, takes: 2 d, place: outdoors, weather: {dry: 2 d}}
          - {id: close, what: Close, takes: 1 d, after: [bed], place: outdoors, weather: {dry: 1 d}}
        substitutions:
          - {id: thin, instead-of: {what: thick, qty: 1}, grade: systems, why: here, hold: close}
        forecast:
          - {day: 2026-03-02, rain: 3 mm, low: 12 C, high: 20 C}
          - {day: 2026-03-03, rain: 0 mm, low: 12 C, high: 20 C}
          - {day: 2026-03-04, rain: 0 mm, low: 12 C, high: 20 C}
          - {day: 2026-03-05, rain: 0 mm, low: 12 C, high: 20 C}
        """;
    assertThat(Sample.findings(new HoldPointNear(), work))
        .singleElement()
        .satisfies(
            each ->
                assertThat(each.what().replace('\u00a0', ' '))
                    .contains("“Close” can start on 5 March 2026"));
    Facts day = Facts.of(Sample.ledger(work), Sample.TODAY);
    WeatherBound close = WeatherBound.of(day.ledger().tasks().get(1), day).orElseThrow();
    assertThat(close.from()).isEqualTo(LocalDate.of(2026, 3, 5));
    assertThat(close.window().first()).isEqualTo(LocalDate.of(2026, 3, 5));
    assertThat(WeatherBound.by(LocalDate.of(2026, 3, 4), day))
        .extracting(each -> each.task().id())
        .containsExactly("bed");
  }

  /** The horizon is six weeks, up to Monday, 13 April: thirty-one working days after today. */
  @Test
  void aHeldTaskIsToldOnlyWithinTheHorizon() {
    String held =
        """
        tasks:
          - {id: before, what: Before, takes: %s d}
          - {id: close, what: Close, takes: 1 d, after: [before]}
        substitutions:
          - {id: thin, instead-of: {what: thick, qty: 1}, grade: systems, why: here, hold: close}
        """;
    assertThat(Sample.findings(new HoldPointNear(), held.formatted("30"))).hasSize(1);
    assertThat(Sample.findings(new HoldPointNear(), held.formatted("31"))).isEmpty();
    assertThat(
            Sample.findings(
                new HoldPointNear(),
                held.formatted("30").replace("why: here", "why: here, withdrawn: 2026-03-01")))
        .isEmpty();
  }
}
