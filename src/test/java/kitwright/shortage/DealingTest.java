package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.value.Quantity;
import kitwright.value.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which of two shortages of one bolt gets what comes: the one that is named, then the older. Four
 * lack since 6 January, three since 20 January; today is 2 March 2026.
 */
class DealingTest {
  private static final String TWO =
      """
      budget: [{line: l, title: L, amount: 900}]
      kit: [{id: bolt, what: bolt, qty: 20}]
      stock: [{id: brass, what: brass bolt, qty: 9}]
      deliveries:
        - {id: first, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 16}]}
      %s
      shortages:
        - {id: old, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed%s}
        - {id: new, item: bolt, qty: 3, found: 2026-01-20, cause: used-up%s}
      %s
      """;

  private static List<String> told(String deliveries, String old, String young, String more) {
    String yaml = TWO.formatted(deliveries, old, young, more);
    ShortageStandings all = ShortageStandings.on(Facts.of(Sample.ledger(yaml), Sample.TODAY));
    List<String> told = new ArrayList<>();
    for (ShortageStanding each : all.all()) {
      String words = each.shortage().id() + " lacks " + each.open();
      for (Cover cover : each.covers()) {
        words += ", " + cover.qty() + " " + cover.how() + " " + cover.by().id();
      }
      for (Coming coming : each.coming()) {
        words +=
            ", "
                + coming.qty()
                + " to come "
                + coming.how()
                + coming.on().map(day -> " " + day).orElse("");
      }
      told.add(words.replace(" each", ""));
    }
    return told;
  }

  private static List<String> told(String more) {
    return told("", "", "", more);
  }

  private static String spends(String... lines) {
    StringBuilder all = new StringBuilder("spending:\n");
    for (String line : lines) {
      all.append("  - {line: l, what: x, amount: 5, ").append(line).append("}\n");
    }
    return all.toString();
  }

  @Test
  void nothingCoversWhatNothingWasBoughtFor() {
    assertThat(told("")).containsExactly("old lacks 4", "new lacks 3");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // the one that is named first, then the older
        "item: bolt, qty: 2 | old lacks 2, 2 BOUGHT p | new lacks 3",
        "item: bolt, qty: 5 | old lacks 0, 4 BOUGHT p | new lacks 2, 1 BOUGHT p",
        "replaces: new, qty: 2 | old lacks 4 | new lacks 1, 2 BOUGHT p",
        "replaces: new, qty: 5 | old lacks 2, 2 BOUGHT p | new lacks 0, 3 BOUGHT p",
        "replaces: new | old lacks 4 | new lacks 0, 3 BOUGHT p",
        "replaces: old, qty: 9 | old lacks 0, 4 BOUGHT p | new lacks 0, 3 BOUGHT p",
      })
  void whatIsBoughtServesWhatItNamesThenTheOlder(String keys, String old, String young) {
    assertThat(told(spends("id: p, on: 2026-02-01, state: paid, " + keys)))
        .containsExactly(old, young);
  }

  /** Bought on 10 January: the second was not found yet. */
  @Test
  void whatWasBoughtBeforeAShortageWasFoundIsNotForIt() {
    assertThat(told(spends("id: p, on: 2026-01-10, state: paid, item: bolt, qty: 6")))
        .containsExactly("old lacks 0, 4 BOUGHT p", "new lacks 3");
    assertThat(told(spends("id: p, on: 2026-01-20, state: paid, item: bolt, qty: 6")))
        .containsExactly("old lacks 0, 4 BOUGHT p", "new lacks 1, 2 BOUGHT p");
    assertThat(told(spends("id: p, on: 2026-01-10, state: paid, replaces: new, qty: 3")))
        .as("it names it")
        .containsExactly("old lacks 4", "new lacks 0, 3 BOUGHT p");
  }

  @Test
  void whatIsHereServesByItsDayWhateverTheOrderOfTheRecords() {
    assertThat(
            told(
                spends(
                    "id: late, on: 2026-02-09, state: paid, item: bolt, qty: 4",
                    "id: early, on: 2026-02-01, state: paid, item: bolt, qty: 3")))
        .containsExactly(
            "old lacks 0, 3 BOUGHT early, 1 BOUGHT late", "new lacks 0, 3 BOUGHT late");
  }

  @Test
  void whatIsLeftOverOfAPurchaseIsSpare() {
    String yaml =
        TWO.formatted(
            "",
            "",
            "",
            spends(
                "id: p, on: 2026-02-01, state: paid, item: bolt, qty: 9",
                "id: o, on: 2026-02-01, state: ordered, item: bolt, qty: 2"));
    Balance balance =
        ShortageStandings.on(Facts.of(Sample.ledger(yaml), Sample.TODAY)).balances().stream()
            .findFirst()
            .orElseThrow();
    assertThat(balance.spare())
        .extracting(each -> each.qty().amount() + " " + each.by().id())
        .containsExactly("2 p");
    assertThat(balance.spareToCome())
        .extracting(each -> each.qty().amount() + " " + each.by().id())
        .containsExactly("2 o");
  }

  @Test
  void nothingThatWasNotBoughtIsSpare() {
    String signed = substitution(", for: new");
    for (String more :
        List.of(signed, spends("id: p, on: 2026-02-01, state: paid, item: bolt, qty: 7"))) {
      Facts day = Facts.of(Sample.ledger(TWO.formatted("", "", "", more)), Sample.TODAY);
      assertThat(ShortageStandings.on(day).balances())
          .allSatisfy(each -> assertThat(each.spare()).isEmpty());
    }
  }

  private static String substitution(String keys) {
    return "substitutions: [{id: sub, instead-of: {item: bolt, qty: 4}, use: [{stock: brass, qty:"
        + " 4}], grade: finish, why: here, sign-offs: [{by: nora, on: 2026-02-12}]"
        + keys
        + "}]\n";
  }

  @Test
  void aSubstitutionServesTheShortageThatItNamesAlone() {
    assertThat(told(substitution(", for: old")))
        .containsExactly("old lacks 0, 4 SUBSTITUTED sub", "new lacks 3");
    assertThat(told(substitution(", for: new")))
        .as("one of four is for nobody else")
        .containsExactly("old lacks 4", "new lacks 0, 3 SUBSTITUTED sub");
    assertThat(told(substitution(", for: old").replaceFirst(", sign-offs: [^]]*]", "")))
        .containsExactly("old lacks 4", "new lacks 3");
  }

  @Test
  void whatIsDoneWithoutCoversWhatIsStillOpenOfIt() {
    String without =
        ", options: [{kind: do-without}], decided: {option: do-without, on: 2026-02-02, by: nora}";
    assertThat(told("", without, "", ""))
        .containsExactly("old lacks 0, 4 DONE_WITHOUT old", "new lacks 3");
    assertThat(
            told("", without, "", spends("id: p, on: 2026-02-09, state: paid, item: bolt, qty: 1")))
        .containsExactly("old lacks 0, 1 BOUGHT p, 3 DONE_WITHOUT old", "new lacks 3");
  }

  @Test
  void whatIsUnderWayComesToTheOlderByItsDay() {
    String crates =
        """
          - {id: crate-b, sent: 2026-02-20, expected: 2026-03-20, from: kit-maker, packed: [{item: bolt, qty: 3}]}
          - {id: crate-a, sent: 2026-02-20, expected: 2026-03-09, from: kit-maker, packed: [{item: bolt, qty: 3}]}
        """;
    assertThat(told(crates, "", "", ""))
        .containsExactly(
            "old lacks 4, 3 to come SENT 2026-03-09, 1 to come SENT 2026-03-20",
            "new lacks 3, 2 to come SENT 2026-03-20");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "replaces: new, qty: 2, expected: 2026-03-09 | old lacks 4 | new lacks 3, 2 to come ORDERED"
            + " 2026-03-09",
        "replaces: new, qty: 4, expected: 2026-03-02 | old lacks 4, 1 to come ORDERED 2026-03-02 |"
            + " new lacks 3, 3 to come ORDERED 2026-03-02",
        "item: bolt, qty: 2, expected: 2026-03-09 | old lacks 4, 2 to come ORDERED 2026-03-09 | new"
            + " lacks 3",
        "item: bolt, qty: 2, expected: 2026-03-01 | old lacks 4, 2 to come ORDERED | new lacks 3",
        "item: bolt, qty: 2 | old lacks 4, 2 to come ORDERED | new lacks 3",
      })
  void whatIsOrderedComesToWhatItNamesThenTheOlder(String keys, String old, String young) {
    assertThat(told(spends("id: o, on: 2026-02-21, state: ordered, " + keys)))
        .containsExactly(old, young);
  }

  private static String decided(String keys) {
    return ", options: [{kind: buy, arrives: 2026-03-20}, {kind: substitute, substitution: sub,"
        + " arrives: 2026-03-16}], decided: {"
        + keys
        + ", on: 2026-02-02, by: nora}";
  }

  @Test
  void whatIsDecidedComesOnTheDayThatTheWayOutSays() {
    String none = substitution(", for: old").replaceFirst(", sign-offs: [^]]*]", "");
    assertThat(told("", decided("option: buy"), "", none))
        .containsExactly("old lacks 4, 4 to come DECIDED 2026-03-20", "new lacks 3");
    assertThat(told("", decided("option: substitute"), "", none))
        .containsExactly("old lacks 4, 4 to come DECIDED 2026-03-16", "new lacks 3");
    assertThat(
            told(
                "",
                decided("option: substitute"),
                "",
                none.replace("{item: bolt, qty: 4}", "{item: bolt, qty: 3}")))
        .as("it replaces three of four")
        .containsExactly("old lacks 4, 3 to come DECIDED 2026-03-16", "new lacks 3");
    assertThat(
            told(
                "",
                decided("option: substitute"),
                "",
                substitution(", for: old").replace("{item: bolt, qty: 4}", "{item: bolt, qty: 3}")))
        .as("signed: three are here, and it brings no fourth")
        .containsExactly("old lacks 1, 3 SUBSTITUTED sub", "new lacks 3");
    assertThat(
            told(
                "",
                decided("option: buy"),
                "",
                spends("id: o, on: 2026-02-21, state: ordered, replaces: old, qty: 3")))
        .as("ordered for no day: for that of the way out")
        .containsExactly(
            "old lacks 4, 3 to come ORDERED 2026-03-20, 1 to come DECIDED 2026-03-20",
            "new lacks 3");
  }

  /** The way out of a shortage says nothing of an order that is not for it. */
  @Test
  void anOrderThatNamesNoShortageComesForNoDayOfAWayOut() {
    assertThat(
            told(
                "",
                "",
                decided("option: buy"),
                spends("id: o, on: 2026-02-21, state: ordered, item: bolt, qty: 4")))
        .containsExactly(
            "old lacks 4, 4 to come ORDERED", "new lacks 3, 3 to come DECIDED 2026-03-20");
  }

  @Test
  void aWayOutInAnotherUnitIsForAllThatIsLeft() {
    String none = substitution(", for: old").replaceFirst(", sign-offs: [^]]*]", "");
    assertThat(
            told(
                "",
                decided("option: substitute"),
                "",
                none.replace("{item: bolt, qty: 4}", "{what: rod, qty: 4 m}")))
        .containsExactly("old lacks 4, 4 to come DECIDED 2026-03-16", "new lacks 3");
  }

  @Test
  void aCrateForNoDayComesForWhatWasPromised() {
    String promise = claim("new", promised("2026-02-01", ", expect: 2026-03-20, of: [new]"));
    String crate =
        "  - {id: crate, sent: 2026-02-20, from: kit-maker, packed: [{item: bolt, qty: 2}]}";
    assertThat(told(crate, "", "", promise))
        .containsExactly(
            "old lacks 4", "new lacks 3, 2 to come SENT 2026-03-20, 1 to come PROMISED 2026-03-20");
  }

  private static String claim(String shortages, String events) {
    return "claims: [{id: c, against: kit-maker, shortages: ["
        + shortages
        + "], remedy: replacement, sent: 2026-01-25, events: ["
        + events
        + "]}]\n";
  }

  private static String promised(String on, String keys) {
    return "{on: " + on + ", what: promised" + keys + "}";
  }

  @Test
  void aPromiseIsForTheShortagesThatItNamesAndItsLastWordCounts() {
    String day = ", expect: 2026-03-20";
    assertThat(told(claim("old", promised("2026-02-01", day))))
        .containsExactly("old lacks 4, 4 to come PROMISED 2026-03-20", "new lacks 3");
    assertThat(told(claim("old, new", promised("2026-02-01", day + ", of: [new]"))))
        .containsExactly("old lacks 4", "new lacks 3, 3 to come PROMISED 2026-03-20");
    assertThat(told(claim("old, new", promised("2026-02-01", day + ", of: [old], qty: 3"))))
        .containsExactly("old lacks 4, 3 to come PROMISED 2026-03-20", "new lacks 3");
    assertThat(
            told(
                claim(
                    "old",
                    promised("2026-02-01", day)
                        + ", "
                        + promised("2026-02-09", ", expect: 2026-03-27"))))
        .as("the later word")
        .containsExactly("old lacks 4, 4 to come PROMISED 2026-03-27", "new lacks 3");
    assertThat(told(claim("old", promised("2026-02-01", ", expect: 2026-03-01"))))
        .as("told, for no day: it has passed")
        .containsExactly("old lacks 4, 4 to come PROMISED", "new lacks 3");
  }

  /** Once its line, or all of the claim, has ended otherwise than by goods, none are promised. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "''; ''; 4 to come PROMISED 2026-03-20",
        "'{on: 2026-02-20, how: credited}'; ''; ''",
        "'{on: 2026-02-20, how: replaced}'; ''; 4 to come PROMISED 2026-03-20",
        // A part of the line: the rest is still promised.
        "'{on: 2026-02-20, how: credited, qty: 1}'; ''; 4 to come PROMISED 2026-03-20",
        "''; 'settled: {on: 2026-02-20, how: refused}, '; ''",
        "''; 'settled: {on: 2026-02-20, how: replaced}, '; 4 to come PROMISED 2026-03-20"
      })
  void anEndOtherThanByGoodsEndsThePromise(String line, String claim, String comes) {
    String lines =
        line.isEmpty() ? "old, new" : "{shortage: old, settled: [" + line + "]}, {shortage: new}";
    String yaml =
        claim(lines, promised("2026-02-01", ", expect: 2026-03-20, of: [old]"))
            .replace("remedy:", claim + "remedy:");
    assertThat(told(yaml))
        .containsExactly("old lacks 4" + (comes.isEmpty() ? "" : ", " + comes), "new lacks 3");
  }

  /** Where money is asked a promise is of goods only if it says how many. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "replacement; ''; 4 to come PROMISED 2026-03-20",
        "refund; ''; ''",
        "refund; ', qty: 2'; 2 to come PROMISED 2026-03-20",
        "replacement; ', amount: 20 EUR'; ''",
        "refund; ', qty: 2, amount: 20 EUR'; ''"
      })
  void aPromiseOfMoneyPromisesNoGoods(String remedy, String more, String comes) {
    String yaml =
        claim("old", promised("2026-02-01", ", expect: 2026-03-20" + more))
            .replace("remedy: replacement", "remedy: " + remedy);
    assertThat(told(yaml))
        .containsExactly("old lacks 4" + (comes.isEmpty() ? "" : ", " + comes), "new lacks 3");
  }

  /** Of one day two parts stand together; a word for all of it takes the place of those before. */
  @Test
  void promisesOfOneDayStandTogetherWhereEachSaysHowMany() {
    String part = promised("2026-02-01", ", expect: 2026-03-20, qty: 1");
    String other = promised("2026-02-01", ", expect: 2026-03-10, qty: 2");
    String whole = promised("2026-02-01", ", expect: 2026-03-27");
    assertThat(told(claim("old", part + ", " + other)).get(0))
        .isEqualTo("old lacks 4, 2 to come PROMISED 2026-03-10, 1 to come PROMISED 2026-03-20");
    assertThat(told(claim("old", part + ", " + whole)).get(0))
        .isEqualTo("old lacks 4, 4 to come PROMISED 2026-03-27");
  }

  /** Money is asked for the older: what the maker sends afterwards is for the other. */
  @Test
  void whatTheMakerSendsIsForWhatGoodsAreAskedFor() {
    String sent =
        "  - {id: second, received: 2026-02-20, from: kit-maker, counted: [{item: bolt, qty:"
            + " 3}]}\n";
    String claim = claim("old", "");
    assertThat(told(sent, "", "", claim))
        .containsExactly("old lacks 1, 3 DELIVERED second", "new lacks 3");
    assertThat(told(sent, "", "", claim.replace("remedy: replacement", "remedy: refund")))
        .containsExactly("old lacks 4", "new lacks 0, 3 DELIVERED second");
  }

  /** What is not in the kit is bought, replaced and promised all the same. */
  @Test
  void aShortageOfWhatTheKitDoesNotKnowIsMetToo() {
    String alone =
        """
        shortages: [{id: s, item: ghost, qty: 4, found: 2026-01-06, cause: not-packed}]
        budget: [{line: l, title: L, amount: 900}]
        stock: [{id: brass, what: brass bolt, qty: 9}]
        """;
    assertThat(ghost(alone + spends("id: p, on: 2026-02-01, state: paid, replaces: s, qty: 3")))
        .isEqualTo("lacks 1, 3 BOUGHT");
    assertThat(ghost(alone + substitution(", for: s").replace("item: bolt", "what: ghost")))
        .isEqualTo("lacks 0, 4 SUBSTITUTED");
    assertThat(ghost(alone + claim("s", promised("2026-02-01", ", expect: 2026-03-20"))))
        .isEqualTo("lacks 4, 4 to come 2026-03-20");
  }

  private static String ghost(String yaml) {
    Ledger ledger = Sample.read(yaml, new Findings()).orElseThrow();
    ShortageStanding standing = ShortageStandings.on(Facts.of(ledger, Sample.TODAY)).all().get(0);
    String words = "lacks " + standing.open().amount();
    for (Cover cover : standing.covers()) {
      words += ", " + cover.qty().amount() + " " + cover.how();
    }
    for (Coming coming : standing.coming()) {
      words += ", " + coming.qty().amount() + " to come " + coming.on().orElseThrow();
    }
    return words;
  }

  /** Of four that lack, some came before the claim, and a claim names some. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "''; not-packed; 0; 4; false", // no claim: all of it, none in part
        "''; not-packed; 1; 3; false",
        "''; used-up; 0; 0; false", // nobody owes it
        "old; not-packed; 0; 0; false",
        "'{shortage: old, qty: 3}'; not-packed; 0; 1; true",
        "'{shortage: old, qty: 1}, {shortage: old, qty: 2}'; not-packed; 0; 1; true",
        "'{shortage: old, qty: 3}'; not-packed; 1; 0; false", // three of the three still owed
        "'{shortage: old, qty: 3 kg}'; not-packed; 0; 4; true",
        "new; not-packed; 0; 4; false" // it names another
      })
  void whatIsOwedAndNoClaimNames(
      String lines, String cause, int came, String unclaimed, boolean inPart) {
    String sent =
        came == 0
            ? ""
            : "  - {id: second, received: 2026-01-10, from: kit-maker, counted: [{item: bolt, qty: "
                + came
                + "}]}\n";
    String yaml =
        TWO.formatted(sent, "", "", lines.isEmpty() ? "" : claim(lines, ""))
            .replace("cause: not-packed", "cause: " + cause);
    ShortageStanding old =
        ShortageStandings.on(Facts.of(Sample.ledger(yaml), Sample.TODAY)).all().get(0);
    assertThat(old.unclaimed()).hasToString(unclaimed + " each");
    assertThat(old.isClaimedInPart()).isEqualTo(inPart);
  }

  /** Bolts at 3 a piece: four are worth 12, and one of them came. By weight they have no price. */
  @Test
  void whatItIsWorthIsByTheKitsPrice() {
    String sent =
        "  - {id: second, received: 2026-01-10, from: kit-maker, counted: [{item: bolt, qty:"
            + " 1}]}\n";
    String yaml = TWO.formatted(sent, "", "", "");
    String priced = yaml.replace("what: bolt, qty: 20", "what: bolt, qty: 20, price: 3 EUR");
    ShortageStanding old =
        ShortageStandings.on(Facts.of(Sample.ledger(priced), Sample.TODAY)).all().get(0);
    assertThat(old.value().orElseThrow()).hasToString("12.00 EUR");
    assertThat(old.openValue().orElseThrow()).hasToString("9.00 EUR");
    assertThat(old.value(Quantity.of("2", Unit.KG))).as("by weight it has no price").isEmpty();
    assertThat(
            ShortageStandings.on(Facts.of(Sample.ledger(yaml), Sample.TODAY)).all().get(0).value())
        .isEmpty();
  }

  /** What is sent since is a part of what was promised. */
  @Test
  void whatIsSentSinceAPromiseIsAPartOfIt() {
    String promise =
        claim("old", promised("2026-02-01", ", expect: 2026-03-20, qty: 4, of: [old]"));
    String crate =
        "  - {id: crate, sent: 2026-02-20, %sfrom: kit-maker, packed: [{item: bolt, qty: 3}]}";
    assertThat(told(crate.formatted("expected: 2026-03-09, "), "", "", promise))
        .containsExactly(
            "old lacks 4, 3 to come SENT 2026-03-09, 1 to come PROMISED 2026-03-20", "new lacks 3");
    assertThat(told(crate.formatted(""), "", "", promise))
        .as("sent for no day, it comes for the day that was promised")
        .containsExactly(
            "old lacks 4, 3 to come SENT 2026-03-20, 1 to come PROMISED 2026-03-20", "new lacks 3");
  }
}
