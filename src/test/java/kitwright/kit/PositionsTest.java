package kitwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;
import org.junit.jupiter.api.Test;

/** Promised, counted good, damaged, wrong, used; and what is promised from the stock. */
class PositionsTest {
  private static final String KIT =
      """
      kit:
        - {id: stave-s, what: spruce stave, qty: 14 m}
        - {id: cleat, what: mooring cleat, qty: 4}
      """;

  private static Position position(String yaml, String id, String day) {
    Ledger ledger = Sample.ledger(KIT + yaml);
    return Positions.on(Facts.of(ledger, LocalDate.parse(day)))
        .of(new Ref(id, ledger.build().at().record()))
        .orElseThrow();
  }

  private static StockPosition stock(String yaml) {
    return Positions.on(Facts.of(Sample.ledger(yaml), Sample.TODAY)).allStock().iterator().next();
  }

  @Test
  void whatIsCountedInSeveralDeliveriesAddsUp() {
    Position position =
        position(
            """
            deliveries:
              - {id: d1, received: 2026-01-22, from: kit-maker, counted: [{item: stave-s, qty: 6 m, damaged: 1 m, wrong: 0.5 m}]}
              - {id: d2, received: 2026-02-18, from: kit-maker, counted: [{item: stave-s, qty: 2 m}]}
            """,
            "stave-s",
            "2026-03-02");
    assertThat(position.counted()).hasToString("8 m");
    assertThat(position.damaged()).hasToString("1 m");
    assertThat(position.wrong()).hasToString("0.5 m");
    assertThat(position.good()).hasToString("6.5 m");
    assertThat(position.missing()).hasToString("7.5 m");
  }

  @Test
  void anEarlierDayKnowsOnlyWhatHadComeByThen() {
    String yaml =
        """
        deliveries:
          - {id: d2, received: 2026-02-18, from: kit-maker, counted: [{item: cleat, qty: 1}]}
          - {id: d1, received: 2026-01-22, from: kit-maker, counted: [{item: cleat, qty: 3}]}
        """;
    Position late = position(yaml, "cleat", "2026-03-02");
    assertThat(late.missing().isNone()).isTrue();
    assertThat(late.on(LocalDate.of(2026, 2, 17)).missing()).hasToString("1 each");
    assertThat(late.on(LocalDate.of(2026, 1, 21)).isCounted()).isFalse();
    assertThat(position(yaml, "cleat", "2026-02-17").missing()).hasToString("1 each");
  }

  @Test
  void nothingFoundIsCountedToo() {
    Position position =
        position(
            "deliveries: [{id: d1, received: 2026-01-22, from: kit-maker, counted: [{item: cleat,"
                + " qty: 0}]}]",
            "cleat",
            "2026-03-02");
    assertThat(position.isCounted()).isTrue();
    assertThat(position.missing()).hasToString("4 each");
  }

  @Test
  void unitsConvertWithinADimension() {
    // 14 m less 10 ft: a foot is 0.3048 m exactly (NIST SP 811, 2008, Appendix B.8).
    Position position =
        position(
            "deliveries: [{id: d1, received: 2026-01-22, from: kit-maker, counted: [{item: stave-s,"
                + " qty: 10 ft}]}]",
            "stave-s",
            "2026-03-02");
    assertThat(position.missing()).isEqualTo(Quantity.of("10.952", Unit.M));
  }

  @Test
  void anAmountThatDoesNotConvertIsLeftOut() {
    Position position =
        position(
            "deliveries: [{id: d1, received: 2026-01-22, from: kit-maker, counted: [{item: stave-s,"
                + " qty: 9}]}]",
            "stave-s",
            "2026-03-02");
    assertThat(position.isCounted()).isFalse();
  }

  @Test
  void whatTheLogUsesUpIsTakenOffTheGoodOnes() {
    Position position =
        position(
            """
            deliveries: [{id: d1, received: 2026-01-22, from: kit-maker, counted: [{item: cleat, qty: 4}]}]
            ---
            day: 2026-02-10
            used: [{item: cleat, qty: 3}]
            ---
            """,
            "cleat",
            "2026-03-02");
    assertThat(position.used()).hasToString("3 each");
    assertThat(position.left()).hasToString("1 each");
    assertThat(position.missing().isNone()).isTrue();
  }

  /** On 10 February three were used; one went back on the 12th. */
  @Test
  void anEarlierDayKnowsOnlyWhatWasUsedOrWentBackByThen() {
    Position position =
        position(
            """
            deliveries: [{id: d1, received: 2026-01-22, from: kit-maker, counted: [{item: cleat, qty: 4}], sent-back: [{on: 2026-02-12, item: cleat, qty: 1}]}]
            ---
            day: 2026-02-10
            used: [{item: cleat, qty: 2}, {item: cleat, qty: 0}]
            ---
            """,
            "cleat",
            "2026-03-02");
    assertThat(position.uses()).as("where none was used, nothing was").hasSize(1);
    assertThat(position.left()).hasToString("1 each");
    assertThat(position.on(LocalDate.of(2026, 2, 12)).left()).hasToString("1 each");
    assertThat(position.on(LocalDate.of(2026, 2, 11)).left()).hasToString("2 each");
    assertThat(position.on(LocalDate.of(2026, 2, 10)).left()).hasToString("2 each");
    assertThat(position.on(LocalDate.of(2026, 2, 9)).left()).hasToString("4 each");
  }

  @Test
  void aDayForWhichGoodsWereExpectedAndWhichHasPassedIsNone() {
    Position position =
        position(
            "deliveries: [{id: d1, expected: 2026-02-20, from: kit-maker, packed: [{item: cleat,"
                + " qty: 3}]}]",
            "cleat",
            "2026-02-10");
    Awaited awaited = position.awaited().get(0);
    assertThat(awaited.on(LocalDate.of(2026, 2, 20))).hasValue(LocalDate.of(2026, 2, 20));
    assertThat(awaited.on(LocalDate.of(2026, 2, 21))).isEmpty();
  }

  @Test
  void aCutTakesNothingUntilItIsDone() {
    String cut =
        """
        stock: [{id: larch-a, what: larch, size: 2450 x 110 x 32 mm, pieces: 5}]
        cuts: [{id: fronts, from: [larch-a], kerf: 3 mm, used: [{stock: larch-a, pieces: 2}], parts: [{mark: a, length: 400 mm}]%s}]
        """;
    assertThat(stock(cut.formatted("")).left()).hasToString("5 each");
    assertThat(stock(cut.formatted(", done: 2026-02-20")).left()).hasToString("3 each");
  }

  @Test
  void aDeliveryOnItsWayIsAwaitedNotCounted() {
    Position position =
        position(
            """
            deliveries:
              - {id: d1, expected: 2026-04-22, from: kit-maker, packed: [{item: cleat, qty: 3}]}
              - {id: d2, received: 2026-03-20, from: kit-maker, packed: [{item: cleat, qty: 1}], counted: [{item: cleat, qty: 1}]}
            """,
            "cleat",
            "2026-03-02");
    assertThat(position.onItsWay()).hasToString("4 each");
    assertThat(position.isCounted()).isFalse();
  }

  @Test
  void stockIsPromisedBySubstitutionsTasksAndCuts() {
    StockPosition position =
        stock(
            """
            stock: [{id: larch-a, what: larch, size: 2450 x 110 x 32 mm, pieces: 5, keep-for: [locker-fronts]}]
            tasks:
              - {id: locker-fronts, what: Locker fronts, takes: 2 d, uses: [{stock: larch-a, qty: 1}]}
              - {id: bench, what: Given up, takes: 2 d, withdrawn: 2026-02-01, uses: [{stock: larch-a, qty: 1}]}
            substitutions:
              - {id: sub-1, instead-of: {what: spruce, qty: 8 m}, use: [{stock: larch-a, qty: 2}], grade: finish, why: here}
              - {id: sub-2, instead-of: {what: spruce, qty: 8 m}, use: [{stock: larch-a, qty: 4}], grade: finish, why: here, withdrawn: 2026-02-01}
            cuts:
              - {id: fronts, from: [larch-a], kerf: 3 mm, parts: [{mark: a, length: 400 mm}]}
            """);
    assertThat(position.promises())
        .extracting(promise -> promise.to().named())
        .containsExactly(
            "substitution sub-1", "task locker-fronts", "cut fronts", "task locker-fronts");
    assertThat(position.promised()).hasToString("3 each");
    assertThat(position.free()).hasToString("2 each");
  }

  /** As the work ahead asks for it; a cut was given what its task wastes. */
  @Test
  void workIsPromisedWhatItUsesAndWastes() {
    StockPosition position =
        stock(
            """
            stock: [{id: larch-a, what: larch, size: 2450 x 110 x 32 mm, pieces: 5}]
            tasks: [{id: locker-fronts, what: Locker fronts, takes: 2 d, uses: [{stock: larch-a, qty: 2, waste: 50 %}]}]
            """);
    assertThat(position.promised()).hasToString("3 each");
    assertThat(position.free()).hasToString("2 each");
  }

  @Test
  void whatIsUsedForAPromiseIsNotPromisedASecondTime() {
    StockPosition position =
        stock(
            """
            stock: [{id: larch-a, what: larch, size: 2450 x 110 x 32 mm, pieces: 5}]
            tasks: [{id: locker-fronts, what: Locker fronts, takes: 2 d, uses: [{stock: larch-a, qty: 3}]}]
            ---
            day: 2026-02-10
            used: [{stock: larch-a, qty: 2, task: locker-fronts}]
            ---
            """);
    assertThat(position.left()).hasToString("3 each");
    assertThat(position.free()).hasToString("2 each");
  }

  private static final String NO_GOOD =
      """
      kit: [{id: cleat, what: cleat, qty: 6}]
      deliveries: [{id: d, received: 2026-02-01, from: kit-maker, counted: [{item: cleat, qty: 6, damaged: 1, wrong: 2, undersize: %d}]%s}]
      """;

  private static Position cleats(String yaml) {
    return Positions.on(kitwright.ledger.Facts.of(Sample.ledger(yaml), Sample.TODAY)).all().get(0);
  }

  @Test
  void whatIsUndersizeIsNoGoodEither() {
    Position position = cleats(NO_GOOD.formatted(1, ""));
    assertThat(position.good()).hasToString("2 each");
    assertThat(position.undersize()).hasToString("1 each");
    assertThat(position.noGood()).hasToString("4 each");
    String back = ", sent-back: [{on: 2026-02-10, item: cleat, qty: 5}]";
    assertThat(cleats(NO_GOOD.formatted(1, back)).good())
        .as("four bad, one good")
        .hasToString("1 each");
  }

  @Test
  void aCountOfNothingButBadOnesContradictsNothing() {
    CountContradictory rule = new CountContradictory();
    assertThat(Sample.findings(rule, NO_GOOD.formatted(3, ""))).isEmpty();
    assertThat(Sample.findings(rule, NO_GOOD.formatted(4, "")))
        .singleElement()
        .satisfies(each -> assertThat(each.what()).contains("4 undersize"));
    String all = ", sent-back: [{on: 2026-02-10, item: cleat, qty: %d}]";
    assertThat(Sample.findings(rule, NO_GOOD.formatted(1, all.formatted(6)))).isEmpty();
    assertThat(Sample.findings(rule, NO_GOOD.formatted(1, all.formatted(7)))).hasSize(1);
  }
}
