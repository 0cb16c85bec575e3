package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.network.Planned;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What reports ask of the look-ahead. Today is Monday, 2 March 2026. */
class LookAheadQuestionsTest {
  private static LookAhead ahead(String yaml) {
    Ledger ledger = Sample.read(yaml.strip() + "\n", new Findings()).orElseThrow();
    return LookAhead.on(Facts.of(ledger, Sample.TODAY));
  }

  private static List<String> unreckoned(String uses, String more) {
    String yaml =
        """
        materials: [{id: epoxy, kind: resin, density: 1.15 g/cm3, source: test}]
        kit: [{id: bolt, what: bolt, qty: 10}, {id: nut, what: nut, qty: 10}]
        stock: [{id: wire, what: wire, qty: 20 m}]
        tasks: [{id: a, what: A, takes: 1 d, uses: [%s]}, {id: b, what: B, takes: 1 d}]
        %s
        """
            .formatted(uses, more);
    Ledger ledger = Sample.read(yaml.strip() + "\n", new Findings()).orElseThrow();
    LookAhead ahead = LookAhead.on(Facts.of(ledger, Sample.TODAY));
    return ahead.unreckoned(ledger.tasks().get(0)).stream()
        .map(each -> each.replace('\u00a0', ' '))
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "'{item: bolt, qty: 2}'; ''",
        "'{item: bolts, qty: 2}'; how much of “bolts” is here", // there is no such item
        "'{item: bolt, qty: 2 m}'; how much of “bolt” is here", // it is counted
        "'{stock: wire, qty: 2 kg}'; how much of “wire” is here",
        "'{material: epoxy, qty: 2 kg}'; ''" // none is here, which is known
      })
  void whatATaskTakesAndNobodyCanReckon(String uses, String told) {
    assertThat(unreckoned(uses, "")).isEqualTo(told.isEmpty() ? List.of() : List.of(told));
  }

  /** Two of four oak boards came; two of ash, held for the sole, take the place of the others. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "sole; shelf 2 none, sole 0 none",
        "shelf; shelf 0 none, sole 2 none",
        "close; shelf 0 none, sole 2 none", // what comes before the closing
        "bed; shelf 2 none, sole 0 none" // which asks for none: whoever is next
      })
  void whatTakesAThingsPlaceServesTheWorkThatItIsHeldFor(String hold, String told) {
    LookAhead ahead =
        ahead(
            """
            parties: [{id: kit-maker, name: Maker, role: supplier}, {id: me, name: I, role: builder, may-sign: [finish]}, {id: ivo, name: Ivo, role: helper}]
            kit: [{id: oak, what: oak board, qty: 4}]
            stock: [{id: ash, what: ash board, qty: 2 each}]
            deliveries: [{id: d, received: 2026-02-09, from: kit-maker, counted: [{item: oak, qty: 2}]}]
            shortages: [{id: s, item: oak, qty: 2, found: 2026-02-09, cause: not-packed}]
            substitutions: [{id: sub, for: s, instead-of: {item: oak, qty: 2}, use: [{stock: ash, qty: 2}], grade: finish, why: w, proposed: {by: ivo, on: 2026-02-10}, hold: %s, sign-offs: [{by: me, on: 2026-02-11}]}]
            tasks:
              - {id: shelf, what: Shelf, takes: 1 d, uses: [{item: oak, qty: 2}]}
              - {id: sole, what: Sole, takes: 1 d, uses: [{item: oak, qty: 2}]}
              - {id: close, what: Close, takes: 1 d, after: [shelf]}
              - {id: bed, what: Bed, takes: 1 d}
            """
                .formatted(hold));
    assertThat(
            ahead.all().stream()
                .filter(wanted -> wanted.thing().what().equals("oak board"))
                .map(
                    wanted ->
                        wanted.task()
                            + " "
                            + wanted.itself().amount()
                            + (wanted.missing().isNone() ? " none" : " some")))
        .containsExactly(told.split(", "));
  }

  /** What it takes: two boards of ash, of which one is here. */
  private static String ashLacking(String sub, String way) {
    LookAhead ahead =
        ahead(
            """
            kit: [{id: oak, what: oak board, qty: 4}]
            stock: [{id: ash, what: ash board, qty: 1 each}]
            deliveries: [{id: d, received: 2026-02-09, from: kit-maker, counted: [{item: oak, qty: 2}]}]
            shortages: [{id: s, item: oak, qty: 2, found: 2026-02-09, cause: not-packed, options: [{kind: buy}, {kind: substitute, substitution: sub}]%s}]
            substitutions: [{id: sub, for: s, instead-of: {item: oak, qty: 2}, use: [{stock: ash, qty: 2}], grade: finish, why: w%s}]
            tasks:
              - {id: sole, what: Sole, takes: 1 d, uses: [{item: oak, qty: 2}]}
              - {id: done, what: Done, takes: 1 d, finished: 2026-02-20}
            """
                .formatted(way, sub));
    return ahead.all().stream()
        .filter(wanted -> wanted.thing().what().equals("ash board"))
        .map(wanted -> wanted.task() + " lacks " + wanted.missing().told())
        .toList()
        .toString();
  }

  /**
   * A way out that is taken asks for what it takes, signed or not; one that is not asks nothing.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "', hold: sole'; substitute; [sole lacks 1]",
        "', hold: sole, sign-offs: [{by: nora, on: 2026-02-12}]'; substitute; [sole lacks 1]",
        "', hold: sole'; buy; []",
        "', hold: sole'; ''; []",
        "', hold: sole, withdrawn: 2026-02-20'; substitute; []",
        "', hold: done'; substitute; []", // the work is done
        "''; substitute; []" // nobody says for which work
      })
  void aWayOutThatIsTakenAsksForWhatItTakes(String sub, String way, String told) {
    String decided =
        way.isEmpty() ? "" : ", decided: {option: " + way + ", on: 2026-02-12, by: nora}";
    assertThat(ashLacking(sub, decided)).isEqualTo(told);
  }

  @Test
  void aPlanMayBeAskedForWithSomeWorkLonger() {
    LookAhead ahead = ahead("tasks: [{id: a, what: A, takes: 1 d}]\n");
    assertThat(ahead.paced(java.util.Map.of("a", 480L)).of("a").lastDay()).isEqualTo("2026-03-03");
  }

  /** Ten of the twelve bolts are asked for; who has used eleven, and is not done, needs more. */
  @ParameterizedTest
  @CsvSource({"10, 40 %, false", "11, 40 %, true", "11, 100 %, false"})
  void whoHasUsedMoreThanTheTaskAsksForDoesNotKnowWhatItStillTakes(
      int used, String done, boolean told) {
    String yaml =
        """
        kit: [{id: bolt, what: bolt, qty: 12}]
        deliveries: [{id: d, received: 2026-02-02, from: kit-maker, counted: [{item: bolt, qty: 12}]}]
        tasks: [{id: a, what: A, takes: 9 d, uses: [{item: bolt, qty: 10}]}]
        ---
        day: 2026-02-20
        tasks: {a: %s}
        used: [{item: bolt, qty: %d, task: a}]
        ---
        """
            .formatted(done, used);
    Ledger ledger = Sample.ledger(yaml);
    LookAhead ahead = LookAhead.on(Facts.of(ledger, Sample.TODAY));
    assertThat(
            ahead.unreckoned(ledger.tasks().get(0)).stream()
                .map(each -> each.replace('\u00a0', ' '))
                .toList())
        .isEqualTo(
            told
                ? List.of("how much more of “bolt” it takes: it has used 11 and asks for 10")
                : List.of());
  }

  private static String log(String used) {
    return "---\nday: 2026-02-20\nused: [" + used + "]\n---";
  }

  @Test
  void ofWhatSomethingTookInAnotherUnitNobodyKnowsHowMuchIsLeft() {
    assertThat(unreckoned("{item: bolt, qty: 2}", log("{item: bolt, qty: 1 kg}")))
        .containsExactly(
            "how much of “bolt” is here, since log day 2026-02-20 takes 1 kg of it, which does not"
                + " convert");
    assertThat(unreckoned("{item: nut, qty: 2}", log("{item: bolt, qty: 1 kg}")))
        .as("of another thing")
        .isEmpty();
    assertThat(unreckoned("{stock: wire, qty: 2 m}", log("{stock: wire, qty: 1 kg}")))
        .containsExactly(
            "how much of “wire” is here, since log day 2026-02-20 takes 1 kg of it, which does not"
                + " convert");
    assertThat(unreckoned("{material: epoxy, qty: 2 kg}", log("{material: epoxy, qty: 1 m}")))
        .containsExactly(
            "how much of “epoxy” is here, since log day 2026-02-20 takes 1 m of it, which does not"
                + " convert");
    assertThat(unreckoned("{material: epoxy, qty: 2 kg}", log("{material: epoxy, qty: 1 kg}")))
        .isEmpty();
  }

  @Test
  void whatCannotBeReadAndNamesTheMaterialLeavesItInDoubt() {
    assertThat(unreckoned("{material: epoxy, qty: 2 kg}", log("{material: epoxy, qty: lots}")))
        .containsExactly(
            "how much of “epoxy” is here, since log day 2026-02-20, which names it, cannot be"
                + " read");
  }

  private static final String ORDERS =
      """
      kit:
        - {id: bolt, what: bolt, qty: 10, lead: 1 w}
        - {id: nut, what: nut, qty: 10, lead: 2 w}
        - {id: pin, what: pin, qty: 10}
      deliveries:
        - {id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 6}, {item: nut, qty: 0}, {item: pin, qty: 3}]}
      tasks:
        - {id: a, what: A, takes: 10 d, uses: [{item: bolt, qty: 8}]}
        - {id: b, what: B, takes: 1 d, after: [a], uses: [{item: bolt, qty: 3}, {item: nut, qty: 4}, {item: pin, qty: 5}]}
      """;

  private static KitItem item(String id) {
    return Sample.ledger(ORDERS).kit().stream()
        .filter(each -> each.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static String told(LookAhead.ToOrder each) {
    return each.thing().what()
        + " "
        + each.thing().qty(each.order().amount()).told()
        + " by "
        + each.order().orderBy();
  }

  @Test
  void whatIsToBeOrderedByTheLastDay() {
    LookAhead ahead = ahead(ORDERS);
    // a begins today and lacks two bolts; ten working days on, on 16 March, b lacks the rest.
    assertThat(ahead.orders())
        .extracting(LookAheadQuestionsTest::told)
        .containsExactlyInAnyOrder(
            "bolt 2 by 2026-02-23", "nut 4 by 2026-03-02", "bolt 3 by 2026-03-09");
    assertThat(ahead.ordersOf(item("bolt")))
        .extracting(LookAheadQuestionsTest::told)
        .containsExactly("bolt 2 by 2026-02-23", "bolt 3 by 2026-03-09");
    assertThat(ahead.ordersOf(item("pin"))).as("nobody knows how long it takes").isEmpty();
    Thing bolt = ahead.ofTask("a").get(0).thing();
    assertThat(ahead.orderOf(bolt).orElseThrow().orderBy()).isEqualTo("2026-02-23");
    assertThat(ahead.stopped()).containsExactly("b");
  }

  @Test
  void whoNeedsAnItemAndWhatIsAtHand() {
    LookAhead ahead = ahead(ORDERS);
    assertThat(ahead.ofItem(new Ref("bolt", item("bolt").at().record())))
        .extracting(Wanted::task)
        .containsExactly("a", "b");
    assertThat(ahead.ofItem(new Ref("none", item("bolt").at().record()))).isEmpty();
    assertThat(ahead.atHand(item("bolt"))).hasToString("6 each");
    assertThat(ahead.atHand(item("nut"))).hasToString("0 each");
    String finished =
        ORDERS.replace("takes: 10 d,", "takes: 10 d, started: 2026-02-02, finished: 2026-02-03,");
    assertThat(ahead(finished).atHand(item("bolt")))
        .as("finished work has used eight of six")
        .hasToString("0 each");
    assertThat(ahead("kit: [{id: other, what: o, qty: 1}]\n").atHand(item("bolt")))
        .as("of what is not in the kit")
        .hasToString("0 each");
  }

  @Test
  void whenAllOfANeedIsThere() {
    LookAhead ahead = ahead(ORDERS);
    assertThat(ahead.ofTask("a").get(0).readyOn()).hasValue(LocalDate.of(2026, 3, 9));
    assertThat(ahead.ofTask("b"))
        .extracting(
            each -> each.thing().what(),
            each -> each.readyOn().map(Object::toString).orElse("nobody knows"))
        .containsExactlyInAnyOrder(
            org.assertj.core.groups.Tuple.tuple("bolt", "2026-03-16"),
            org.assertj.core.groups.Tuple.tuple("nut", "2026-03-16"),
            org.assertj.core.groups.Tuple.tuple("pin", "nobody knows"));
  }

  @Test
  void whatNobodyCountedIsCountedBeforeItsDay() {
    LookAhead ahead =
        ahead(
            """
            kit: [{id: bolt, what: bolt, qty: 10}]
            tasks:
              - {id: a, what: A, takes: 2 d, uses: [{item: bolt, qty: 4}]}
              - {id: b, what: B, takes: 1 d, after: [a], uses: [{item: bolt, qty: 3}]}
            """);
    assertThat(ahead.countBefore(LocalDate.of(2026, 3, 1))).isEmpty();
    assertThat(ahead.countBefore(LocalDate.of(2026, 3, 2)))
        .extracting(Wanted::task)
        .containsExactly("a");
    assertThat(ahead.countBefore(LocalDate.of(2026, 3, 3))).hasSize(1);
    assertThat(ahead.countBefore(LocalDate.of(2026, 3, 4)))
        .extracting(Wanted::task, each -> each.uncounted().told())
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("a", "4"),
            org.assertj.core.groups.Tuple.tuple("b", "3"));
    assertThat(ahead(ORDERS).countBefore(LocalDate.of(2026, 9, 1))).isEmpty();
  }

  private static final String OWN_WORK =
      """
      kit: [{id: bolt, what: bolt, qty: 10}]
      deliveries: [{id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 6}]}]
      stock: [{id: pin, what: pin, qty: 9}]
      shortages:
        - {id: s, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed, options: [{kind: %s}], decided: {option: %s, on: 2026-01-07, by: nora}}
      tasks:
        - {id: first, what: First, takes: 1 d, uses: [{item: bolt, qty: 6}]}
        - {id: late, what: Late, takes: 1 d, after: [first], uses: [{item: bolt, qty: 4}]}
        - {id: last, what: Last, takes: 1 d, after: [late], uses: [{item: bolt, qty: 1}]}
      %s
      """;

  private static String plan(LookAhead ahead) {
    return List.of("first", "late", "last").stream()
        .map(ahead.paced()::of)
        .map(Planned::earliestFinish)
        .map(each -> each.toLocalDate().getDayOfMonth() + "")
        .toList()
        .toString();
  }

  @Test
  void theOwnHoursOfAWayOutLengthenTheFirstTaskThatLacksTheThing() {
    // Eight hours are a working day: the second task, which lacks it, takes a day more.
    assertThat(plan(ahead(OWN_WORK.formatted("wait", "wait", "")))).isEqualTo("[2, 3, 4]");
    LookAhead longer = ahead(OWN_WORK.formatted("buy, hours: 8 h", "buy", ""));
    assertThat(plan(longer)).isEqualTo("[2, 4, 5]");
    assertThat(longer.ownWorkWithout("")).containsOnly(java.util.Map.entry("late", 480L));
    assertThat(longer.ownWorkWithout("other")).containsOnlyKeys("late");
    assertThat(longer.ownWorkWithout("s")).isEmpty();
  }

  @Test
  void theTaskThatASubstitutionHoldsOrThatTakesItIsLonger() {
    String sub =
        "substitutions: [{id: sub, for: s, instead-of: {item: bolt, qty: 4}, use: [{stock: pin,"
            + " qty: 4}], grade: finish, why: w, hold: first%s}]";
    String way = "substitute, substitution: sub, hours: 90 min";
    assertThat(ahead(OWN_WORK.formatted(way, "substitute", sub.formatted(""))).ownWorkWithout(""))
        .containsOnly(java.util.Map.entry("first", 90L));
    String signed = ", sign-offs: [{by: nora, on: 2026-02-12}]";
    assertThat(
            ahead(OWN_WORK.formatted(way, "substitute", sub.formatted(signed))).ownWorkWithout(""))
        .containsOnly(java.util.Map.entry("first", 90L));
    assertThat(
            ahead(
                    OWN_WORK.formatted(
                        way, "substitute", sub.formatted(signed).replace(", hold: first", "")))
                .ownWorkWithout(""))
        .as("the first that leans on what took its place")
        .containsOnlyKeys("late");
  }
}
