package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is at hand and under way for the work. Ten bolts are promised; the frame wants them today,
 * on Monday, 2 March 2026.
 */
class StoresTest {
  private static final String FRAME =
      """
      budget: [{line: l, title: L, amount: 900}]
      materials: [{id: epoxy, kind: resin, density: 1.15 g/cm3, source: test}]
      kit: [{id: bolt, what: bolt, qty: 10%s}]
      tasks:
        - {id: frame, what: Frame, takes: 1 d, uses: [{item: bolt, qty: 10}, {material: epoxy, qty: 3 kg}]}
        - {id: other, what: Other, takes: 1 d, after: [frame], uses: [{item: bolt, qty: %d}]}
      """;

  private static LookAhead ahead(String item, int other, String more, Late late) {
    String yaml = FRAME.formatted(item, other) + more.strip() + "\n";
    return LookAhead.on(Facts.of(Sample.ledger(yaml), Sample.TODAY), late);
  }

  private static LookAhead ahead(String more) {
    return ahead("", 0, more, Late.NOTHING);
  }

  /** What the frame lacks of the bolts, and for when what it waits for comes. */
  private static String bolts(LookAhead ahead) {
    return told(ahead, "kit bolt");
  }

  private static String epoxy(LookAhead ahead) {
    return told(ahead, "material epoxy in kg");
  }

  private static String told(LookAhead ahead, String key) {
    Wanted wanted =
        ahead.ofTask("frame").stream()
            .filter(each -> each.thing().key().equals(key))
            .findFirst()
            .orElseThrow();
    List<String> coming =
        wanted.toCome().stream()
            .map(each -> each.supply().id() + " " + each.supply().arrives().orElseThrow())
            .toList();
    List<String> dayless =
        ahead.dayless(wanted.thing()).stream()
            .map(
                each ->
                    each.by()
                        + " "
                        + each.qty().told()
                        + each.said().map(day -> " " + day).orElse(""))
            .toList();
    return "lacks "
        + wanted.missing().told()
        + (coming.isEmpty() ? "" : " waits for " + coming)
        + (dayless.isEmpty() ? "" : " no day " + dayless);
  }

  private static final String SIX =
      "{id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 6}]}";
  private static final String FOUR_SHORT =
      "shortages: [{id: s, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed%s}]\n";

  private static String deliveries(String... all) {
    return "deliveries: [" + String.join(", ", all) + "]\n";
  }

  private static String coming(String day, int qty) {
    return "{id: e, from: kit-maker"
        + (day.isEmpty() ? "" : ", expected: " + day)
        + ", packed: [{item: bolt, qty: "
        + qty
        + "}]}";
  }

  @Test
  void whatNobodyCountedIsThereButForWhatIsKnownToBeShortUsedOrStillToCome() {
    assertThat(bolts(ahead(""))).isEqualTo("lacks 0");
    assertThat(bolts(ahead(FOUR_SHORT.formatted("")))).isEqualTo("lacks 4");
    assertThat(bolts(ahead(FOUR_SHORT.formatted("").replace("qty: 4", "qty: 4 kg"))))
        .isEqualTo("lacks 0");
    assertThat(bolts(ahead("---\nday: 2026-02-20\nused: [{item: bolt, qty: 3}]\n---")))
        .isEqualTo("lacks 3");
    // Four of ten are on their way, and are the four that are short.
    assertThat(bolts(ahead(deliveries(coming("2026-03-20", 4)) + FOUR_SHORT.formatted(""))))
        .isEqualTo("lacks 0 waits for [delivery e 2026-03-20]");
    assertThat(bolts(ahead(deliveries(coming("2026-03-20", 3)) + FOUR_SHORT.formatted(""))))
        .isEqualTo("lacks 1 waits for [delivery e 2026-03-20]");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "2026-03-20; lacks 0 waits for [delivery e 2026-03-20]",
        "2026-03-03; lacks 0 waits for [delivery e 2026-03-03]",
        "2026-03-02; lacks 0 waits for [delivery e 2026-03-03]", // said for today, and not here
        "2026-03-01; lacks 4 no day [delivery e 4 2026-03-01]", // a day that has passed is none
        "''; lacks 4 no day [delivery e 4]"
      })
  void aDeliveryIsCountedOnFromItsDay(String day, String told) {
    assertThat(bolts(ahead(deliveries(SIX, coming(day, 4))))).isEqualTo(told);
  }

  @Test
  void whatMayBeLateIsLateAsLongAsItself() {
    String crate = deliveries(SIX, coming("2026-03-20", 4));
    String claim =
        "claims: [{id: c, against: kit-maker, shortages: [s], sent: 2026-01-10, remedy:"
            + " replacement%s}]\n";
    assertThat(bolts(ahead("", 0, crate, new Late(Map.of("e", 5)))))
        .isEqualTo("lacks 0 waits for [delivery e 2026-03-25]");
    String claimed = crate + FOUR_SHORT.formatted("") + claim.formatted("");
    assertThat(bolts(ahead("", 0, claimed, new Late(Map.of("c", 3)))))
        .isEqualTo("lacks 0 waits for [delivery e 2026-03-23]");
    assertThat(bolts(ahead("", 0, claimed, new Late(Map.of("c", 3, "e", 5, "s", 4)))))
        .as("the longest")
        .isEqualTo("lacks 0 waits for [delivery e 2026-03-25]");
    String promised =
        deliveries(SIX)
            + FOUR_SHORT.formatted("")
            + claim.formatted(", events: [{on: 2026-02-01, what: promised, expect: 2026-03-20}]");
    assertThat(bolts(ahead(promised))).isEqualTo("lacks 0 waits for [claim c 2026-03-20]");
    assertThat(bolts(ahead("", 0, promised, new Late(Map.of("c", 3)))))
        .isEqualTo("lacks 0 waits for [claim c 2026-03-23]");
    assertThat(bolts(ahead("", 0, promised, new Late(Map.of("s", 2)))))
        .isEqualTo("lacks 0 waits for [claim c 2026-03-22]");
  }

  private static String spend(String state, String more) {
    return "spending: [{id: p, on: 2026-01-20, line: l, what: w, amount: 90, state: "
        + state
        + ", "
        + more
        + "}]\n";
  }

  @Test
  void whatIsOrderedForAShortageMayBeLateToo() {
    String ordered =
        deliveries(SIX)
            + FOUR_SHORT.formatted("")
            + spend("ordered", "item: bolt, qty: 4, expected: 2026-03-20");
    assertThat(bolts(ahead("", 0, ordered, new Late(Map.of("p", 5)))))
        .isEqualTo("lacks 0 waits for [spend p 2026-03-25]");
    assertThat(bolts(ahead("", 0, ordered, new Late(Map.of("s", 2)))))
        .isEqualTo("lacks 0 waits for [spend p 2026-03-22]");
    assertThat(bolts(ahead(ordered.replace("2026-03-20", "2026-02-20"))))
        .isEqualTo("lacks 4 no day [spend p 4 2026-02-20]");
  }

  @Test
  void whatIsDoneWithoutIsNeitherMissingNorAtHand() {
    LookAhead ahead =
        ahead(
            deliveries(SIX)
                + FOUR_SHORT.formatted(
                    ", options: [{kind: do-without}], decided: {option: do-without, on:"
                        + " 2026-01-07, by: nora}"));
    assertThat(bolts(ahead)).isEqualTo("lacks 0");
    assertThat(ahead.atHand(Sample.ledger("kit: [{id: bolt, what: bolt, qty: 10}]").kit().get(0)))
        .hasToString("6 each");
  }

  private static final String FOUR_MORE =
      "{id: e, received: 2026-02-20, from: kit-maker, counted: [{item: bolt, qty: 4}]}";

  /**
   * The frame wants ten and the other so many; what is counted as well as dealt out counts once.
   */
  @ParameterizedTest
  @CsvSource({"0, 0", "1, 1", "4, 4"})
  void whatTheMakerSentAfterwardsIsThereOnce(int other, int lacks) {
    String sent = deliveries(SIX, FOUR_MORE) + FOUR_SHORT.formatted("");
    assertThat(missingBolts(ahead("", other, sent, Late.NOTHING))).isEqualTo(lacks);
  }

  /** Nobody has counted: six of ten are there, and the four that are short are ordered. */
  @ParameterizedTest
  @CsvSource({"0, 0", "4, 4"})
  void whatIsOrderedForWhatIsKnownToBeShortComesOnce(int other, int lacks) {
    String ordered =
        FOUR_SHORT.formatted("")
            + spend("ordered", "item: bolt, qty: 4, expected: 2026-03-20, because: s");
    assertThat(missingBolts(ahead("", other, ordered, Late.NOTHING))).isEqualTo(lacks);
  }

  /** Four are short, and six are bought or ordered: two serve whoever is next. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "paid; ''; 2; 0",
        "paid; ''; 3; 1",
        "ordered; ', expected: 2026-03-20'; 2; 0",
        "ordered; ', expected: 2026-03-20'; 3; 1",
        "ordered; ''; 2; 6" // for no day it is told, and nobody leans on it
      })
  void whatIsHadBeyondEveryShortageServesWhoeverIsNext(
      String state, String more, int other, int lacks) {
    String six =
        deliveries(SIX) + FOUR_SHORT.formatted("") + spend(state, "item: bolt, qty: 6" + more);
    assertThat(missingBolts(ahead("", other, six, Late.NOTHING))).isEqualTo(lacks);
  }

  @Test
  void atHandIsWhatIsHereAndNothingOfWhatIsToCome() {
    KitItem bolt = Sample.ledger("kit: [{id: bolt, what: bolt, qty: 10}]").kit().get(0);
    assertThat(ahead(deliveries(SIX, coming("2026-03-20", 4))).atHand(bolt)).hasToString("6 each");
    String bought =
        deliveries(SIX) + FOUR_SHORT.formatted("") + spend("paid", "item: bolt, qty: 4");
    assertThat(ahead(bought).atHand(bolt)).hasToString("10 each");
    assertThat(ahead(bought.replace("paid", "ordered")).atHand(bolt)).hasToString("6 each");
  }

  /** Four bolts are short; the box of another purchase says nothing of this one. */
  @Test
  void onlyTheBoxOfAPurchaseTellsWhatIsLeftOfIt() {
    String other =
        boxes("{stock: a, qty: 4}, {stock: c, qty: 2}", "").replace("bought: p", "bought: q");
    assertThat(
            missingBolts(
                ahead(
                    "",
                    0,
                    other.replace(
                        "]\nstock",
                        ", {id: q, on: 2026-01-20, line: l, what: w, amount: 9, state: paid}]\n"
                            + "stock"),
                    Late.NOTHING)))
        .isZero();
    String weighed = boxes("", "").replace("box, qty: 4", "box, qty: 4 kg");
    assertThat(missingBolts(ahead("", 2, weighed, Late.NOTHING)))
        .as("how many bolts weigh so much nobody says")
        .isZero();
  }

  /** Three kilogrammes are wanted, one was used, and the two that are ordered are whole. */
  @Test
  void whatIsStillToComeWasNotUsedUp() {
    String ordered =
        spend("ordered", "material: epoxy, qty: 2 kg, expected: 2026-03-20")
            + "---\nday: 2026-02-20\nused: [{material: epoxy, qty: 1 kg}]\n---\n";
    assertThat(epoxy(ahead(ordered))).isEqualTo("lacks 1 kg waits for [spend p 2026-03-20]");
  }

  /** Four bolts are short and four pins take their place: they count for the shortage, once. */
  @ParameterizedTest
  @CsvSource({"0, 0", "4, 4"})
  void whatASubstitutionForAShortageReplacesCountsOnce(int other, int lacks) {
    String sub =
        """
        stock: [{id: pin, what: pin, qty: 9}]
        substitutions: [{id: sub, for: s, instead-of: {item: bolt, qty: 4}, use: [{stock: pin, qty: 4}], grade: finish, why: w, hold: frame, sign-offs: [{by: nora, on: 2026-02-12}]}]
        """;
    String six = deliveries(SIX) + FOUR_SHORT.formatted("") + sub;
    assertThat(missingBolts(ahead("", other, six, Late.NOTHING))).isEqualTo(lacks);
  }

  /** Six bought, four of them in one box and two in another. */
  private static String boxes(String used, String more) {
    return deliveries(SIX)
        + FOUR_SHORT.formatted("")
        + spend("paid", "item: bolt, qty: 6")
        + "stock: [{id: a, what: box, qty: 4, bought: p}, {id: c, what: box, qty: 2, bought: p}]\n"
        + more
        + (used.isEmpty() ? "" : "---\nday: 2026-02-20\nused: [" + used + "]\n---\n");
  }

  private static int missingBolts(LookAhead ahead) {
    return ahead.all().stream()
        .filter(each -> each.thing().key().equals("kit bolt"))
        .mapToInt(each -> each.missing().amount().intValue())
        .sum();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Six counted and six bought, of twelve asked for.
        "''; 0",
        "'{stock: a, qty: 3}'; 3",
        "'{stock: a, qty: 3}, {stock: c, qty: 2}'; 5",
        "'{stock: a, qty: 4}, {stock: c, qty: 2}'; 6"
      })
  void whatWasBoughtServesOnceAndAsFarAsItIsLeftInItsBoxes(String used, int lacks) {
    LookAhead ahead = ahead("", 2, boxes(used, ""), Late.NOTHING);
    assertThat(missingBolts(ahead)).isEqualTo(lacks);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Six counted; of twelve asked for the frame wants ten and the other two.
        "keep-for: [other]; keep-for: [other]; 4", // all that was bought is the other’s
        "keep-for: [frame]; keep-for: [frame]; 0",
        "keep-for: [other]; ''; 2", // four for the other, two for both
        "keep-for: [frame]; keep-for: [other]; 0",
      })
  void whatWasBoughtAndIsKeptServesTheTasksThatItIsKeptForAlone(String a, String c, int lacks) {
    String kept =
        boxes("", "")
            .replace("{id: a,", "{id: a, " + a + ",")
            .replace("{id: c,", "{id: c, " + (c.isEmpty() ? "" : c + ","));
    LookAhead ahead = ahead("", 2, kept, Late.NOTHING);
    assertThat(missingBolts(ahead)).isEqualTo(lacks);
  }

  /** The same answer as the cuts and the rack give. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "''; ''; 3 kg",
        ", started: 2026-02-02, finished: 2026-02-09; ''; 0 kg",
        ", withdrawn: 2026-02-09; ''; 0 kg",
        "''; 100 %; 0 kg",
        "''; 90 %; 3 kg"
      })
  void whatEndedOrWasGivenUpKeepsNothing(String task, String logged, String lacks) {
    String more =
        """
          - {id: hull, what: Hull, takes: 1 d%s}
        stock: [{id: can, what: can, qty: 3 kg, material: epoxy, keep-for: [hull]}]
        """
            .formatted(task);
    String log = logged.isEmpty() ? "" : "---\nday: 2026-02-20\ntasks: {hull: %s}\n---\n";
    LookAhead ahead =
        LookAhead.on(
            Facts.of(
                Sample.ledger(FRAME.formatted("", 0) + more + log.formatted(logged)),
                Sample.TODAY));
    assertThat(
            ahead.ofTask("frame").stream()
                .filter(each -> each.thing().key().contains("epoxy"))
                .map(each -> each.missing().toString()))
        .containsExactly(lacks);
  }

  @Test
  void whatASubstitutionWithoutAShortageReplacesServesItsHeldTaskAlone() {
    String sub =
        """
        stock: [{id: pin, what: pin, qty: 3}]
        substitutions: [{id: sub, instead-of: {item: bolt, qty: 4}, use: [{stock: pin, qty: 4}], grade: finish, why: w%s,
          sign-offs: [{by: nora, on: 2026-02-12}]}]
        """;
    String six = deliveries(SIX);
    // It takes four pins, and three are there.
    assertThat(bolts(ahead(six + sub.formatted(", hold: frame")))).isEqualTo("lacks 1");
    assertThat(bolts(ahead(six + sub.formatted(", hold: other")))).isEqualTo("lacks 4");
    assertThat(bolts(ahead(six + sub.formatted("")))).isEqualTo("lacks 4");
    assertThat(bolts(ahead(six + sub.formatted(", hold: frame, withdrawn: 2026-02-20"))))
        .isEqualTo("lacks 4");
    assertThat(
            bolts(
                ahead(
                    six + sub.formatted(", hold: frame").replaceAll(",\\s+sign-offs.*]}]", "}]"))))
        .as("not signed")
        .isEqualTo("lacks 4");
  }

  /** The same, where it is a way out of a shortage: it counts once, and only where it is taken. */
  @Test
  void whatIsAWayOutOfAShortageServesWhereItIsTaken() {
    String sub =
        """
        stock: [{id: pin, what: pin, qty: 9}]
        substitutions: [{id: sub, instead-of: {item: bolt, qty: 4}, use: [{stock: pin, qty: 4}], grade: finish, why: w, hold: frame, sign-offs: [{by: nora, on: 2026-02-12}]}]
        """;
    String way = ", options: [{kind: buy}, {kind: substitute, substitution: sub}]";
    String decided = way + ", decided: {option: %s, on: 2026-02-12, by: nora}";
    String six = deliveries(SIX) + sub;
    assertThat(bolts(ahead(six + FOUR_SHORT.formatted(way)))).isEqualTo("lacks 4");
    assertThat(bolts(ahead(six + FOUR_SHORT.formatted(decided.formatted("buy")))))
        .isEqualTo("lacks 4");
    LookAhead taken =
        ahead("", 1, six + FOUR_SHORT.formatted(decided.formatted("substitute")), Late.NOTHING);
    assertThat(bolts(taken)).isEqualTo("lacks 0");
    assertThat(taken.ofTask("other").get(0).missing()).as("it brings four").hasToString("1 each");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "ordered; 'material: epoxy, qty: 2 kg, expected: 2026-03-20'; lacks 1 kg waits for [spend p"
            + " 2026-03-20]",
        "ordered; 'material: epoxy, qty: 2 kg, expected: 2026-03-02'; lacks 1 kg waits for [spend p"
            + " 2026-03-03]",
        "ordered; 'material: epoxy, qty: 2 kg'; lacks 3 kg no day [spend p 2 kg]",
        "ordered; 'material: epoxy, qty: 2 kg, expected: 2026-02-20'; lacks 3 kg no day [spend p 2"
            + " kg 2026-02-20]",
        // A shortage was the cause; it is under way all the same.
        "ordered; 'material: epoxy, qty: 2 kg, expected: 2026-03-20, because: s'; lacks 1 kg waits"
            + " for [spend p 2026-03-20]",
        // What it buys is the bolts.
        "ordered; 'material: epoxy, qty: 2 kg, expected: 2026-03-20, replaces: s'; lacks 3 kg",
        "ordered; 'material: epoxy, qty: 2 kg, expected: 2026-03-20, item: bolt'; lacks 3 kg",
        "ordered; 'material: epoxy, qty: 2 kg, expected: 2026-03-20, withdrawn: 2026-02-01'; lacks"
            + " 3 kg",
        "ordered; 'material: epoxy, qty: 2 kg, expected: 2026-03-20, came: 2026-02-20'; lacks 3 kg",
        "ordered; 'material: epoxy, expected: 2026-03-20'; lacks 3 kg",
        "paid; 'material: epoxy, qty: 2 kg, expected: 2026-03-20'; lacks 1 kg waits for [spend p"
            + " 2026-03-20]",
        // Bought at the counter: what of it is left the stock tells.
        "paid; 'material: epoxy, qty: 2 kg'; lacks 3 kg",
        "refunded; 'material: epoxy, qty: 2 kg, expected: 2026-03-20'; lacks 3 kg"
      })
  void materialThatIsOrderedComes(String state, String more, String told) {
    assertThat(epoxy(ahead(FOUR_SHORT.formatted("") + spend(state, more)))).isEqualTo(told);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "'came: 2026-02-20'; lacks 3 kg",
        "'qty: 2 kg, came: 2026-02-20'; lacks 3 kg",
        "'qty: 0.5 kg, came: 2026-02-20'; lacks 1.5 kg waits for [spend p 2026-03-20]",
        "'expected: 2026-03-25'; lacks 1 kg waits for [spend q 2026-03-25]",
        "'amount: 10'; lacks 1 kg waits for [spend q 2026-03-20]",
      })
  void anOrderOfMaterialIsUnderWayAsFarAsItsPaymentsAre(String payment, String told) {
    assertThat(epoxy(ahead(paid("ordered", "expected: 2026-03-20", payment)))).isEqualTo(told);
  }

  @Test
  void whatWentBackForItsMoneyIsNotUnderWay() {
    String back =
        paid("paid", "expected: 2026-03-20", "qty: 1.5 kg")
            .replace("pays: p", "refunds: p")
            .replace(
                "id: q, on: 2026-02-18, state: paid", "id: q, on: 2026-02-18, state: refunded");
    assertThat(epoxy(ahead(back))).isEqualTo("lacks 2.5 kg waits for [spend p 2026-03-20]");
  }

  /** Two kilograms of epoxy, and a second record of money about them. */
  private static String paid(String state, String more, String payment) {
    return spend(state, "material: epoxy, qty: 2 kg, " + more).replaceFirst("\\]\\s*$", "")
        + ", {id: q, on: 2026-02-18, state: paid, line: l, what: w, pays: p, "
        + (payment.startsWith("amount") ? "" : "amount: 90, ")
        + payment
        + "}]";
  }

  @Test
  void anOrderOfMaterialMayBeLate() {
    String order = spend("ordered", "material: epoxy, qty: 2 kg, expected: 2026-03-20");
    assertThat(epoxy(ahead("", 0, order, new Late(Map.of("p", 4)))))
        .isEqualTo("lacks 1 kg waits for [spend p 2026-03-24]");
  }

  private static String lead(LookAhead ahead) {
    return ahead
        .leadDays(ahead.ofTask("frame").get(0).thing())
        .map(Object::toString)
        .orElse("none");
  }

  @Test
  void theTimeToGetAThingIsItsOwnOrItsSuppliers() {
    String parties =
        """
        parties:
          - {id: nora, name: Nora, role: builder, lead: 1 d}
          - {id: mill, name: Mill, role: supplier, lead: 2 w}
          - {id: kit-maker, name: K, role: supplier, lead: 3 w}
        """;
    assertThat(lead(ahead(""))).isEqualTo("none");
    assertThat(lead(ahead(", lead: 1 w", 0, "", Late.NOTHING))).isEqualTo("7");
    assertThat(lead(ahead(", lead: 1 w", 0, parties, Late.NOTHING))).isEqualTo("7");
    assertThat(lead(ahead(", from: kit-maker", 0, parties, Late.NOTHING))).isEqualTo("21");
    assertThat(lead(ahead("", 0, parties, Late.NOTHING))).as("the first supplier").isEqualTo("14");
    String short_ = FOUR_SHORT.formatted("");
    assertThat(lead(ahead(", lead: 1 w", 0, short_, new Late(Map.of("s", 5))))).isEqualTo("12");
  }

  @Test
  void ofItemsThatAreOneThingTheOneHadSoonestCounts() {
    String two =
        """
        kit:
          - {id: bolt, what: bolt, qty: 10}
          - {id: tin, what: tin, qty: 1 kg, material: epoxy, lead: %s}
          - {id: can, what: can, qty: 1 kg, material: epoxy, lead: %s}
        """;
    for (String[] leads : new String[][] {{"1 w", "2 w"}, {"2 w", "1 w"}}) {
      String yaml =
          FRAME.formatted("", 0).replaceFirst("kit: .*\n", "") + two.formatted(leads[0], leads[1]);
      LookAhead ahead = LookAhead.on(Facts.of(Sample.ledger(yaml), Sample.TODAY));
      Thing epoxy =
          ahead.ofTask("frame").stream()
              .map(Wanted::thing)
              .filter(each -> each.key().startsWith("material"))
              .findFirst()
              .orElseThrow();
      assertThat(ahead.leadDays(epoxy)).hasValue(7);
    }
  }
}
