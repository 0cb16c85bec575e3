package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;

/** Needs against what is there and comes. Sample's today is Monday, 2 March 2026. */
class LookAheadTest {
  static LookAhead ahead(Ledger ledger, Late late) {
    return LookAhead.on(Facts.of(ledger, Sample.TODAY), late);
  }

  private static LookAhead ahead(String yaml) {
    return ahead(Sample.ledger(yaml), Late.NOTHING);
  }

  private static List<Tuple> short_(LookAhead ahead) {
    return ahead.shortages().stream()
        .map(w -> Tuple.tuple(w.task(), w.missing().toString(), w.shortOnTheDay().toString()))
        .toList();
  }

  private static final String TWO_TASKS =
      """
      kit: [{id: stave, what: spruce stave, qty: 14 m}]
      tasks:
        - {id: first, what: First, takes: 2 d, uses: [{item: stave, qty: 6 m}]}
        - {id: second, what: Second, takes: 1 d, after: [first], uses: [{item: stave, qty: 6 m}]}
      """;

  private static final String COUNTED =
      "deliveries: [{id: d1, received: 2026-02-20, from: kit-maker, counted: [{item: stave, qty: 8"
          + " m}]}";

  @Test
  void theFirstNeedIsServedFirst() {
    LookAhead ahead = ahead(TWO_TASKS + COUNTED + "]\n");
    assertThat(short_(ahead)).containsExactly(Tuple.tuple("second", "4 m", "4 m"));
    assertThat(ahead.ofTask("first")).allMatch(wanted -> wanted.missing().isNone());
    assertThat(ahead.stopped()).containsExactly("second");
  }

  @Test
  void anExpectedDeliveryServesFromItsDayOn() {
    String coming =
        COUNTED + ", {id: d2, expected: %s, from: kit-maker, packed: [{item: stave, qty: 6 m}]}]\n";
    assertThat(short_(ahead(TWO_TASKS + coming.formatted("2026-03-03")))).isEmpty();
    LookAhead late = ahead(TWO_TASKS + coming.formatted("2026-03-20"));
    assertThat(short_(late)).containsExactly(Tuple.tuple("second", "0 m", "4 m"));
    assertThat(late.paced().of("second").earliestStart().toLocalDate()).isEqualTo("2026-03-20");
    Ledger ledger = Sample.ledger(TWO_TASKS + coming.formatted("2026-03-03"));
    assertThat(
            ahead(ledger, new Late(java.util.Map.of("d2", 14)))
                .paced()
                .of("second")
                .earliestStart()
                .toLocalDate())
        .isEqualTo("2026-03-17");
  }

  @Test
  void whatNobodyHasCountedIsCountedBefore() {
    LookAhead ahead = ahead(TWO_TASKS);
    assertThat(short_(ahead)).isEmpty();
    assertThat(ahead.countBefore(Sample.TODAY.plusDays(1)))
        .extracting(Wanted::task, wanted -> wanted.uncounted().toString())
        .containsExactly(Tuple.tuple("first", "6 m"));
  }

  @Test
  void aLeadTimeGivesTheLastDayToOrder() {
    LookAhead ahead =
        ahead(TWO_TASKS.replace("qty: 14 m", "qty: 14 m, lead: 1 w") + COUNTED + "]\n");
    assertThat(ahead.orders())
        .extracting(
            each -> each.order().orderBy().toString(), each -> each.order().arrives().toString())
        .containsExactly(Tuple.tuple("2026-02-25", "2026-03-09"));
    assertThat(ahead.stopped()).isEmpty();
    assertThat(ahead.paced().of("second").earliestStart().toLocalDate()).isEqualTo("2026-03-09");
  }

  @Test
  void theSuppliersLeadHoldsWhereTheItemHasNone() {
    LookAhead ahead =
        ahead(
            "parties: [{id: kit-maker, name: K, role: supplier, lead: 2 w}]\n"
                + TWO_TASKS
                + COUNTED
                + "]\n");
    assertThat(ahead.orders().get(0).order().arrives()).isEqualTo("2026-03-16");
  }

  @Test
  void anOffCutKeptForOneTaskIsNotGivenToAnother() {
    LookAhead ahead =
        ahead(
            """
            materials: [{id: larch, kind: timber, density: 560 kg/m3, source: test}]
            stock:
              - {id: rest, what: larch rest, qty: 5 m, material: larch, keep-for: [second]}
            tasks:
              - {id: first, what: First, takes: 2 d, uses: [{material: larch, qty: 3 m}]}
              - {id: second, what: Second, takes: 1 d, after: [first], uses: [{material: larch, qty: 3 m}]}
            """);
    assertThat(short_(ahead)).containsExactly(Tuple.tuple("first", "3 m", "3 m"));
  }

  private static final String TINS =
      """
      materials: [{id: epoxy, kind: resin, source: the maker}]
      stock:
        - {id: tin, what: tin, qty: 10 kg, material: epoxy}
        - {id: later, what: tin, qty: 2 kg, material: epoxy, since: 2026-02-25}
      tasks:
        - {id: glue, what: Glue, takes: 2 d, uses: [{material: epoxy, qty: 9 kg}]}
        - {id: coat, what: Coat, takes: 2 d}
      ---
      day: %s
      used: [{material: %s, qty: %s%s}]
      ---
      """;

  private static List<Tuple> shortAfter(String day, String material, String qty, String task) {
    return short_(ahead(TINS.formatted(day, material, qty, task)));
  }

  @Test
  void whatTheLogCallsByItsMaterialIsNotThereAnyMore() {
    Tuple twoShort = Tuple.tuple("glue", "2 kg", "2 kg");
    assertThat(shortAfter("2026-02-26", "epoxy", "5 kg", "")).containsExactly(twoShort);
    assertThat(shortAfter("2026-02-26", "epoxy", "5 kg", ", task: coat")).containsExactly(twoShort);
    assertThat(shortAfter("2026-02-26", "epoxy", "3 kg", "")).isEmpty();
    assertThat(shortAfter("2026-02-26", "epoxy", "9 kg", ", task: glue"))
        .as("the task has used what it needs")
        .isEmpty();
  }

  @Test
  void whatWasUsedBeforeAStockCameToBeWasNotOfIt() {
    assertThat(shortAfter("2026-02-20", "epoxy", "12 kg", ""))
        .containsExactly(Tuple.tuple("glue", "7 kg", "7 kg"));
  }

  @Test
  void aMaterialThatNobodyKnowsLeavesInDoubtWhatItMayBe() {
    Ledger ledger =
        Sample.read(TINS.formatted("2026-02-26", "epoxxy", "1 kg", ""), new Findings())
            .orElseThrow();
    assertThat(ahead(ledger, Late.NOTHING).unreckoned(ledger.tasks().get(0)))
        .containsExactly(
            "how much of “epoxy” is here, since log day 2026-02-26 takes 1 kg of “epoxxy”, which"
                + " is not there");
  }

  @Test
  void whatALogDayAndFinishedTasksUsedIsNotThereAnyMore() {
    LookAhead ahead =
        ahead(
            """
            kit: [{id: stave, what: spruce stave, qty: 14 m}]
            deliveries: [{id: d1, received: 2026-02-20, from: kit-maker, counted: [{item: stave, qty: 14 m}]}]
            tasks:
              - {id: done, what: Done, takes: 2 d, started: 2026-02-21, finished: 2026-02-25, uses: [{item: stave, qty: 10 m}]}
              - {id: next, what: Next, takes: 1 d, uses: [{item: stave, qty: 6 m}]}
            """);
    assertThat(short_(ahead)).containsExactly(Tuple.tuple("next", "2 m", "2 m"));
  }

  @Test
  void anApprovedSubstitutionServesInPlaceOfWhatIsMissing() {
    String yaml =
        TWO_TASKS
            + COUNTED
            + "]\n"
            + """
            stock: [{id: larch, what: larch board, qty: 4 each}]
            shortages: [{id: s, item: stave, qty: 4 m, found: 2026-02-20, cause: not-packed}]
            substitutions:
              - id: sub
                for: s
                instead-of: {item: stave, qty: 4 m}
                use: [{stock: larch, qty: 3 each}]
                grade: finish
                why: larch is here
                hold: second
            """;
    assertThat(short_(ahead(yaml))).contains(Tuple.tuple("second", "4 m", "4 m"));
    LookAhead signed = ahead(yaml + "    sign-offs: [{by: office, on: 2026-02-25}]\n");
    assertThat(short_(signed)).isEmpty();
    assertThat(signed.ofTask("second"))
        .extracting(wanted -> wanted.thing().record(), wanted -> wanted.qty().toString())
        .contains(Tuple.tuple("stock larch", "3 each"));
  }

  @Test
  void itemsAndStockOfAMaterialAskedForByNameAreOneThing() {
    LookAhead ahead =
        ahead(
            """
            materials:
              - {id: woven, kind: cloth, density: 2560 kg/m3, areal-weight: 290 g/m2, source: test}
            kit: [{id: roll, what: roll of cloth, qty: 10 m2, material: woven}]
            stock: [{id: rest, what: cloth left, qty: 4 m2, material: woven}]
            deliveries: [{id: d1, received: 2026-02-20, from: kit-maker, counted: [{item: roll, qty: 10 m2}]}]
            sections: [{id: skin, layers: [{material: woven, plies: 1}]}]
            tasks:
              - {id: hull, what: Hull, takes: 1 d, uses: [{section: skin, area: 11 m2}]}
              - {id: board, what: Board, takes: 1 d, after: [hull], uses: [{item: roll, qty: 4 m2}]}
            """);
    assertThat(short_(ahead)).containsExactly(Tuple.tuple("board", "1 m2", "1 m2"));
  }

  @Test
  void whatACutTookForItsTaskIsNotTakenOnceMore() {
    String yaml =
        """
        stock: [{id: larch, what: larch plank, pieces: 6, size: 3000 x 120 x 25 mm}]
        tasks:
          - {id: battens, what: Saw battens, takes: 2 d, uses: [{stock: larch, qty: 4}]%s}
          - {id: rail, what: Rail, takes: 1 d, uses: [{stock: larch, qty: 2}]}
        cuts:
          - {id: c, task: battens, from: [larch], kerf: 3 mm, parts: [{mark: B, length: 900 mm, qty: 4}], done: 2026-02-20, used: [{stock: larch, pieces: 2}]}
        """;
    assertThat(ahead(yaml.formatted("")).ofTask("battens").get(0).qty()).hasToString("2 each");
    LookAhead finished = ahead(yaml.formatted(", started: 2026-02-19, finished: 2026-02-20"));
    // Four asked by the finished task, two of them taken by the cut: two of six are left.
    assertThat(finished.ofTask("rail").get(0).missing().isNone()).isTrue();
    String three = yaml.replace("uses: [{stock: larch, qty: 2}]", "uses: [{stock: larch, qty: 3}]");
    LookAhead more = ahead(three.formatted(", started: 2026-02-19, finished: 2026-02-20"));
    assertThat(more.ofTask("rail").get(0).missing()).hasToString("1 each");
  }
}
