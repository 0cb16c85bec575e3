package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a shortage has come, and what covers it. */
class ShortageStandingsTest {
  private static final String FOUND =
      """
      kit: [{id: stave-s, what: spruce stave, qty: 14 m, price: 11.40 NZD/m}]
      shortages:
        - id: short
          item: stave-s
          qty: 4 m
          found: 2026-01-24
          cause: not-packed
          options: [{kind: wait}, {kind: buy, cost: 60 EUR}]
          decided: {option: buy, on: 2026-01-25, by: nora}
      """;
  private static final String OTHERWISE =
      FOUND.replace("{kind: buy, cost: 60 EUR}", "{kind: substitute}").replace("buy", "substitute");
  private static final String FIRST_CRATE =
      "  - {id: d1, received: 2026-01-22, from: kit-maker, counted: [{item: stave-s, qty: 10"
          + " m}]}\n";

  private static ShortageStandings standings(String yaml, String today) {
    Ledger ledger = Sample.ledger(yaml);
    LocalDate day = LocalDate.parse(today);
    return ShortageStandings.on(Facts.of(ledger, day));
  }

  private static ShortageStanding shortage(String more, String today) {
    return standings(FOUND + more, today).all().get(0);
  }

  private static ShortageStanding shortage(String more) {
    return shortage(more, "2026-03-02");
  }

  private static String claim(String more) {
    return "claims: [{id: c1, against: kit-maker, shortages: [short], remedy: credit, %s}]%n"
        .formatted(more);
  }

  private static Quantity covered(ShortageStanding standing, Cover.How how) {
    return standing.covers().stream()
        .filter(cover -> cover.how() == how)
        .map(Cover::qty)
        .reduce(Quantity.none(standing.open().unit()), Quantity::plus);
  }

  @Test
  void aShortageThatNobodyWasToldOfIsFound() {
    ShortageStanding standing = shortage("");
    assertThat(standing.state()).isEqualTo(ShortageStanding.State.FOUND);
    assertThat(standing.open()).hasToString("4 m");
    assertThat(standing.age()).isEqualTo(37); // 24 January to 2 March 2026
    assertThat(standing.openValue()).hasToString("Optional[45.60 NZD]");
  }

  @Test
  void whatIsFoundTodayIsNotSoManyDaysOld() {
    String found = FOUND.replace("2026-01-24", "2026-03-02");
    assertThat(Sample.findings(new ShortageUnclaimed(), Sample.ledger(found), Sample.TODAY))
        .singleElement()
        .satisfies(each -> assertThat(each.what()).startsWith("Found short today and in no claim"));
  }

  @Test
  void aDraftClaimsNothing() {
    assertThat(shortage(claim("reply-by: 2026-02-10")).state())
        .isEqualTo(ShortageStanding.State.FOUND);
    String later = claim("sent: 2026-02-01");
    assertThat(shortage(later, "2026-01-31").state()).isEqualTo(ShortageStanding.State.FOUND);
    assertThat(shortage(later, "2026-02-01").state()).isEqualTo(ShortageStanding.State.CLAIMED);
  }

  @Test
  void anAcknowledgementIsNoAnswer() {
    String claim = claim("sent: 2026-01-26, events: [{on: 2026-02-03, what: %s}]");
    assertThat(shortage(claim.formatted("acknowledged")).state())
        .isEqualTo(ShortageStanding.State.CLAIMED);
    assertThat(shortage(claim.formatted("answered")).state())
        .isEqualTo(ShortageStanding.State.ANSWERED);
    assertThat(shortage(claim.formatted("disputed")).state())
        .isEqualTo(ShortageStanding.State.ANSWERED);
  }

  @Test
  void theLatestPromiseOfAClaimStands() {
    ShortageStanding standing =
        shortage(
            claim(
                    "sent: 2026-01-26, events: [{on: 2026-02-03, what: promised, expect:"
                        + " 2026-02-20}, {on: 2026-02-19, what: promised, expect: 2026-03-10}]")
                .replace("credit", "replacement"));
    assertThat(standing.state()).isEqualTo(ShortageStanding.State.PROMISED);
    assertThat(standing.promisedFor()).contains(LocalDate.of(2026, 3, 10));
  }

  @Test
  void aDeliveryNoteOnItsWayIsAPromise() {
    ShortageStanding standing =
        shortage(
            "deliveries: [{id: d2, expected: 2026-04-16, from: kit-maker, packed: [{item: stave-s,"
                + " qty: 4 m}]}]");
    assertThat(standing.promisedFor()).contains(LocalDate.of(2026, 4, 16));
  }

  @Test
  void aReplacementCountedGoodCoversIt() {
    ShortageStanding standing =
        shortage(
            "deliveries:\n"
                + FIRST_CRATE
                + "  - {id: d2, received: 2026-02-18, from: kit-maker, counted: [{item: stave-s,"
                + " qty: 4 m, damaged: 1 m}]}\n");
    assertThat(standing.isOpen()).isTrue();
    assertThat(standing.open()).hasToString("1 m");
    assertThat(covered(standing, Cover.How.DELIVERED)).hasToString("3 m");
    assertThat(standing.covers().get(0).by().id()).isEqualTo("d2");
  }

  @Test
  void aSecondCrateThatWasAlwaysMeantToComeCoversNothing() {
    // 14 m promised in two crates of 7; the first lacked 4, the second came whole.
    ShortageStanding standing =
        shortage(
            """
            deliveries:
              - {id: d1, received: 2026-01-22, from: kit-maker, counted: [{item: stave-s, qty: 3 m}]}
              - {id: d2, received: 2026-02-18, from: kit-maker, counted: [{item: stave-s, qty: 7 m}]}
            """);
    assertThat(standing.open()).hasToString("4 m");
  }

  @Test
  void theOldestShortageIsCoveredFirst() {
    ShortageStandings all =
        standings(
            """
            kit: [{id: cleat, what: cleat, qty: 10}]
            shortages:
              - {id: young, item: cleat, qty: 2, found: 2026-02-01, cause: damaged}
              - {id: old, item: cleat, qty: 3, found: 2026-01-20, cause: not-packed}
            deliveries:
              - {id: d1, received: 2026-01-18, from: kit-maker, counted: [{item: cleat, qty: 7, damaged: 2}]}
              - {id: d2, received: 2026-02-20, from: kit-maker, counted: [{item: cleat, qty: 4}]}
            """,
            "2026-03-02");
    assertThat(all.all()).extracting(each -> each.shortage().id()).containsExactly("young", "old");
    assertThat(all.all()).extracting(each -> each.open().told()).containsExactly("1", "0");
    assertThat(all.all().get(1).coveredOn()).contains(LocalDate.of(2026, 2, 20));
    assertThat(all.open()).hasSize(1);
  }

  @Test
  void whatWasUsedUpIsHadAgainByABiggerCount() {
    String yaml =
        """
        kit: [{id: cleat, what: cleat, qty: 4}]
        shortages: [{id: spoilt, item: cleat, qty: 1, found: 2026-02-01, cause: used-up}]
        deliveries:
          - {id: d1, received: 2026-01-18, from: kit-maker, counted: [{item: cleat, qty: 4}]}
          - {id: d2, received: 2026-02-20, from: kit-maker, counted: [{item: cleat, qty: 1}]}
        """;
    assertThat(standings(yaml, "2026-02-19").all().get(0).open()).hasToString("1 each");
    assertThat(standings(yaml, "2026-02-20").all().get(0).isOpen()).isFalse();
  }

  @Test
  void anApprovedSubstitutionCoversWhatItReplaces() {
    String substitution =
        "substitutions: [{id: sub, for: short, instead-of: {item: stave-s, qty: 3 m}, use: [{item:"
            + " stave-s, qty: 3 m}], why: here, grade: finish%s}]%n";
    String signed = ", sign-offs: [{by: nora, on: 2026-02-12}]";
    assertThat(otherwise(substitution.formatted("")).open()).hasToString("4 m");
    ShortageStanding standing = otherwise(substitution.formatted(signed));
    assertThat(standing.open()).hasToString("1 m");
    assertThat(covered(standing, Cover.How.SUBSTITUTED)).hasToString("3 m");
    assertThat(otherwise(substitution.formatted(", withdrawn: 2026-02-20" + signed)).open())
        .hasToString("4 m");
    assertThat(shortage(substitution.formatted(signed)).open())
        .as("it was decided to buy, and nobody has")
        .hasToString("4 m");
  }

  private static ShortageStanding otherwise(String more) {
    return standings(OTHERWISE + more, "2026-03-02").all().get(0);
  }

  /** A signature releases a way out; that it is taken the builder decides. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '|',
      value = {
        "for: s,; ; 0 each", // it says so, and nothing is listed beside it
        "for: s,; options: [{kind: substitute, substitution: sub}]; 0 each",
        "for: s,; options: [{kind: substitute, substitution: sub}, {kind: buy}]; 2 each",
        "for: s,; options: [{kind: buy}]; 2 each",
        "for: s,; options: [{kind: substitute, substitution: sub}, {kind: buy}], decided: {option:"
            + " substitute, on: 2026-02-10, by: nora}; 0 each",
        "for: s,; options: [{kind: substitute}, {kind: buy}], decided: {option: substitute, on:"
            + " 2026-02-10, by: nora}; 0 each",
        "for: s,; options: [{kind: substitute, substitution: sub}, {kind: buy}], decided: {option:"
            + " buy, on: 2026-02-10, by: nora}; 2 each",
        "for: s,; options: [{kind: substitute, substitution: sub}], decided: {option: paint, on:"
            + " 2026-02-10, by: nora}; 2 each",
        // It names no shortage: only the decision says that it is for this one.
        "; ; 2 each",
        "; options: [{kind: substitute, substitution: sub}]; 2 each",
        "; options: [{kind: substitute, substitution: sub}], decided: {option: substitute, on:"
            + " 2026-02-10, by: nora}; 0 each",
        "; options: [{kind: substitute}], decided: {option: substitute, on: 2026-02-10, by:"
            + " nora}; 2 each",
        // Another’s.
        "for: t,; options: [{kind: substitute, substitution: sub}], decided: {option: substitute,"
            + " on: 2026-02-10, by: nora}; 2 each",
      })
  void aSubstitutionCoversAShortageWhereItIsTaken(String whose, String ways, String open) {
    String yaml =
        """
        kit: [{id: rail, what: rail, qty: 4}]
        stock: [{id: oak, what: oak, qty: 9}]
        shortages:
          - {id: s, item: rail, qty: 2, found: 2026-02-02, cause: damaged%s}
          - {id: t, item: rail, qty: 1, found: 2026-02-03, cause: damaged}
        substitutions: [{id: sub, %s instead-of: {item: rail, qty: 2}, use: [{stock: oak, qty: 2}], grade: finish, why: w, sign-offs: [{by: nora, on: 2026-02-10}]}]
        """
            .formatted(ways == null ? "" : ", " + ways, whose == null ? "" : whose);
    assertThat(standings(yaml, "2026-03-02").all().get(0).open()).hasToString(open);
  }

  /** One that is chosen for several brings its quantity once, to those of one item. */
  @Test
  void aSubstitutionThatIsChosenForSeveralServesThoseOfItsItemTheOldestFirst() {
    String yaml =
        """
        kit: [{id: rail, what: rail, qty: 4}, {id: knee, what: knee, qty: 4}]
        stock: [{id: oak, what: oak, qty: 9}]
        shortages:
          - {id: s, item: rail, qty: 2, found: 2026-02-03, cause: damaged, %1$s}
          - {id: t, item: rail, qty: 1, found: 2026-02-02, cause: damaged, %1$s}
          - {id: u, item: knee, qty: 1, found: 2026-02-04, cause: damaged, %1$s}
        substitutions: [{id: sub, instead-of: {what: oak ones, qty: 2}, use: [{stock: oak, qty: 2}], grade: finish, why: w, sign-offs: [{by: nora, on: 2026-02-10}]}]
        """
            .formatted(
                "options: [{kind: substitute, substitution: sub}], decided: {option: substitute,"
                    + " on: 2026-02-10, by: nora}");
    assertThat(standings(yaml, "2026-03-02").all())
        .extracting(each -> each.open().toString())
        .containsExactly("1 each", "0 each", "1 each");
  }

  @Test
  void whatWasBoughtCoversItOnceItIsHere() {
    String spend =
        "spending: [{id: larch, on: 2026-02-10, line: spars, what: staves, amount: 60 EUR, because:"
            + " short, %s}]%n";
    assertThat(shortage(spend.formatted("state: paid, item: stave-s")).coveredOn())
        .contains(LocalDate.of(2026, 2, 10));
    assertThat(shortage(spend.formatted("state: paid, qty: 3 m")).open()).hasToString("1 m");
    ShortageStanding coming =
        shortage(spend.formatted("state: ordered, item: stave-s, expected: 2026-03-20"));
    assertThat(coming.isOpen()).isTrue();
    assertThat(coming.promisedFor()).contains(LocalDate.of(2026, 3, 20));
    assertThat(
            shortage(spend.formatted("state: paid, item: stave-s, expected: 2026-03-20")).isOpen())
        .isTrue();
  }

  @Test
  void aThingThatTheShortageOnlyCausedDoesNotCoverIt() {
    assertThat(
            shortage(
                    "spending: [{id: knives, on: 2026-02-10, line: tools, what: planer knives,"
                        + " amount: 46 EUR, state: paid, because: short}]")
                .open())
        .hasToString("4 m");
  }

  @Test
  void whatWasGivenBackCoversNothing() {
    assertThat(
            shortage(
                    """
                    spending:
                      - {id: buy, on: 2026-02-10, line: spars, what: staves, amount: 60 EUR, state: paid, item: stave-s, because: short}
                      - {id: back, on: 2026-02-14, line: spars, what: staves back, amount: 60 EUR, state: refunded, refunds: buy}
                    """)
                .isOpen())
        .isTrue();
  }

  @Test
  void anOrderAndItsPaymentAreOnePurchase() {
    ShortageStanding standing =
        shortage(
            """
            spending:
              - {id: order, on: 2026-02-05, line: spars, what: staves, amount: 60 EUR, state: ordered, item: stave-s, qty: 2 m, because: short}
              - {id: pay, on: 2026-02-10, line: spars, what: staves, amount: 60 EUR, state: paid, pays: order}
            """);
    assertThat(covered(standing, Cover.How.BOUGHT)).hasToString("2 m");
    assertThat(standing.covers()).hasSize(1);
  }

  @Test
  void aCreditIsMoneyAndCoversNothing() {
    ShortageStanding standing =
        shortage(
            claim("sent: 2026-01-26, settled: {on: 2026-02-20, how: credited, amount: 45.60 NZD}"));
    assertThat(standing.state()).isEqualTo(ShortageStanding.State.ANSWERED);
    assertThat(standing.open()).hasToString("4 m");
    assertThat(standing.covers()).isEmpty();
  }

  @Test
  void whatIsDecidedToBeDoneWithoutIsOver() {
    String without =
        FOUND
            .replace("{kind: wait}", "{kind: do-without}")
            .replace("option: buy", "option: do-without");
    assertThat(standings(without, "2026-01-24").all().get(0).isOpen()).isTrue();
    ShortageStanding standing = standings(without, "2026-01-25").all().get(0);
    assertThat(standing.isOpen()).isFalse();
    assertThat(covered(standing, Cover.How.DONE_WITHOUT)).hasToString("4 m");
  }

  /** Six of ten cleats are short; what more says is all that comes. */
  private static ShortageStanding sixShort(String more) {
    return standings(
            """
            kit: [{id: cleat, what: cleat, qty: 10}]
            shortages: [{id: s, item: cleat, qty: 6, found: 2026-01-24, cause: not-packed}]
            """
                + more,
            "2026-03-02")
        .all()
        .get(0);
  }

  private static final String FOUR_CAME =
      "deliveries:\n"
          + "  - {id: d1, received: 2026-01-22, from: kit-maker, counted: [{item: cleat, qty:"
          + " 4}]}\n";

  @Test
  void oneOnItsWayIsOneOfSix() {
    ShortageStanding sent =
        sixShort(
            FOUR_CAME
                + "  - {id: d2, expected: 2026-04-20, from: kit-maker, packed: [{item: cleat, qty:"
                + " 1}]}\n");
    assertThat(sent.unsupplied()).hasToString("5 each");
    assertThat(sent.promisedFor()).as("not all of it is promised").isEmpty();
    assertThat(sent.state()).isEqualTo(ShortageStanding.State.FOUND);
    ShortageStanding ordered =
        sixShort(
            FOUR_CAME
                + "spending: [{id: o, on: 2026-03-01, line: a, what: cleat, state: ordered, amount:"
                + " 2 EUR, expected: 2026-04-20, because: s, item: cleat, qty: 1}]\n");
    assertThat(ordered.unsupplied()).hasToString("5 each");
  }

  @Test
  void onlyThePromiseOfTheRestCoversTheRest() {
    String claim =
        "claims: [{id: c, against: kit-maker, shortages: [s], sent: 2026-01-26, remedy:"
            + " replacement, events: [%s]}]\n";
    ShortageStanding all =
        sixShort(
            FOUR_CAME + claim.formatted("{on: 2026-02-03, what: promised, expect: 2026-04-20}"));
    assertThat(all.unsupplied().isNone()).isTrue();
    ShortageStanding two =
        sixShort(
            FOUR_CAME
                + claim.formatted(
                    "{on: 2026-02-03, what: promised, of: s, qty: 2, expect: 2026-04-20}"));
    assertThat(two.unsupplied()).hasToString("4 each");
    ShortageStanding money =
        sixShort(
            FOUR_CAME
                + claim
                    .formatted("{on: 2026-02-03, what: promised, expect: 2026-04-20}")
                    .replace("replacement", "refund"));
    assertThat(money.unsupplied()).as("money is no goods").hasToString("6 each");
    for (String how : List.of("refused", "credited", "withdrawn")) {
      ShortageStanding ended =
          sixShort(
              FOUR_CAME
                  + claim
                      .formatted("{on: 2026-02-03, what: promised, expect: 2026-04-20}")
                      .replace("}]}]", "}], settled: {on: 2026-02-20, how: " + how + "}}]"));
      assertThat(ended.unsupplied()).as(how).hasToString("6 each");
    }
    ShortageStanding replaced =
        sixShort(
            FOUR_CAME
                + claim
                    .formatted("{on: 2026-02-03, what: promised, expect: 2026-04-20}")
                    .replace("}]}]", "}], settled: {on: 2026-02-20, how: replaced}}]"));
    assertThat(replaced.promisedFor()).contains(LocalDate.of(2026, 4, 20));
  }

  @Test
  void whatAnotherFirmSentIsBoughtAndNotSentByTheMaker() {
    ShortageStanding standing =
        sixShort(
            FOUR_CAME
                + "  - {id: d2, received: 2026-02-10, from: pell, counted: [{item: cleat, qty:"
                + " 5}]}\n");
    assertThat(standing.sent()).hasToString("0 each");
    assertThat(covered(standing, Cover.How.BOUGHT)).hasToString("5 each");
    assertThat(standing.open()).hasToString("1 each");
  }

  @Test
  void theOrderAndTheSellersCrateAreTheSameGoods() {
    ShortageStanding standing =
        sixShort(
            FOUR_CAME
                + "  - {id: d2, received: 2026-02-10, from: pell, counted: [{item: cleat, qty:"
                + " 5}]}\n"
                + "spending: [{id: o, on: 2026-02-01, line: a, what: cleats, state: paid, to: Pell,"
                + " amount: 12 EUR, replaces: s}]\n");
    assertThat(standing.covered()).as("six paid, five counted").hasToString("5 each");
    assertThat(standing.open()).hasToString("1 each");
  }

  @Test
  void anOrderPaidInTwoPartsBringsItsGoodsOnce() {
    ShortageStanding standing =
        sixShort(
            FOUR_CAME
                + """
                spending:
                  - {id: o, on: 2026-02-01, line: a, what: cleats, state: ordered, amount: 12 EUR, item: cleat, qty: 2, because: s}
                  - {id: p, on: 2026-02-02, line: a, what: cleats, state: paid, amount: 6 EUR, pays: o}
                  - {id: q, on: 2026-02-09, line: a, what: cleats, state: paid, amount: 6 EUR, pays: o}
                """);
    assertThat(covered(standing, Cover.How.BOUGHT)).hasToString("2 each");
  }

  @Test
  void aDepositBringsNothing() {
    String deposit =
        FOUR_CAME
            + """
            spending:
              - {id: o, on: 2026-02-01, line: a, what: cleats, state: ordered, amount: 12 EUR, item: cleat, qty: 2, because: s}
              - {id: p, on: 2026-02-02, line: a, what: on account, state: paid, amount: 6 EUR, pays: o}
            """;
    assertThat(covered(sixShort(deposit), Cover.How.BOUGHT).isNone()).isTrue();
    assertThat(
            covered(
                sixShort(deposit.replace("pays: o", "pays: o, in-full: yes")), Cover.How.BOUGHT))
        .hasToString("2 each");
    assertThat(
            covered(
                sixShort(deposit.replace("pays: o", "pays: o, came: 2026-02-02")),
                Cover.How.BOUGHT))
        .hasToString("2 each");
  }

  @Test
  void anOrderGivenUpBringsNothing() {
    assertThat(
            sixShort(
                    FOUR_CAME
                        + "spending: [{id: o, on: 2026-02-01, line: a, what: cleats, state:"
                        + " ordered, withdrawn: 2026-02-20, expected: 2026-04-01, amount: 12 EUR,"
                        + " replaces: s}]\n")
                .unsupplied())
        .hasToString("6 each");
  }

  @Test
  void whatReplacesTheMissingNeedsNoFurtherWord() {
    ShortageStanding standing =
        sixShort(
            FOUR_CAME
                + "spending: [{id: p, on: 2026-02-09, line: a, what: cleats, state: paid, amount:"
                + " 12 EUR, replaces: s}]\n");
    assertThat(standing.isOpen()).isFalse();
    assertThat(standing.coveredOn()).contains(LocalDate.of(2026, 2, 9));
  }

  @Test
  void aPriceReductionGivesNoGoodsBackAndAPartOnlyItsPart() {
    String bought =
        FOUR_CAME
            + """
            spending:
              - {id: p, on: 2026-02-09, line: a, what: cleats, state: paid, amount: 12 EUR, replaces: s}
              - {id: r, on: 2026-02-12, line: a, what: back, state: refunded, amount: 4 EUR, refunds: p%s}
            """;
    assertThat(sixShort(bought.formatted("")).isOpen()).isFalse();
    assertThat(sixShort(bought.formatted(", qty: 2")).open()).hasToString("2 each");
  }

  @Test
  void theAccountOfAnItemBalances() {
    Balance balance =
        standings(
                OTHERWISE
                    + "deliveries:\n"
                    + FIRST_CRATE
                    + "  - {id: d2, received: 2026-02-18, from: kit-maker, counted: [{item:"
                    + " stave-s, qty: 1 m}]}\n"
                    + "substitutions: [{id: sub, for: short, instead-of: {item: stave-s, qty: 2 m},"
                    + " use: [{item: stave-s, qty: 2 m}], why: here, grade: finish, sign-offs:"
                    + " [{by: nora, on: 2026-02-12}]}]\n",
                "2026-03-02")
            .balance(new Ref("stave-s", kitwright.value.Place.wholeFile("")))
            .orElseThrow();
    assertThat(balance.position().good()).hasToString("11 m");
    assertThat(balance.missing()).hasToString("3 m");
    assertThat(balance.delivered()).hasToString("1 m");
    assertThat(balance.covered()).hasToString("2 m");
    assertThat(balance.open()).hasToString("1 m");
    assertThat(balance.unrecorded().isNone()).isTrue();
  }

  @Test
  void aShortageOfAnItemThatTheKitDoesNotKnowStandsAlone() {
    ShortageStanding standing =
        standings(
                "shortages: [{id: s, item: nothing, qty: 2, found: 2026-02-01, cause: wrong}]",
                "2026-03-02")
            .all()
            .get(0);
    assertThat(standing.item()).isEmpty();
    assertThat(standing.open()).hasToString("2 each");
    assertThat(standing.openValue()).isEmpty();
  }

  @Test
  void feetAndMetresLeaveNoCrumbs() {
    List<ShortageStanding> all =
        standings(
                """
                kit: [{id: rail, what: rail, qty: 20 ft}]
                shortages: [{id: s, item: rail, qty: 1 m, found: 2026-01-20, cause: not-packed}]
                substitutions: [{id: sub, for: s, instead-of: {item: rail, qty: 3.280839895013123 ft}, use: [{item: rail, qty: 1 m}], why: here, grade: finish, sign-offs: [{by: nora, on: 2026-02-12}]}]
                """,
                "2026-03-02")
            .all();
    assertThat(all.get(0).state()).isEqualTo(ShortageStanding.State.COVERED);
  }

  @Test
  void noticeRunsFromReceipt() {
    String yaml =
        FOUND
            + "parties: [{id: kit-maker, name: Redshank, role: supplier, notice: 14 d}, {id: nora,"
            + " name: Nora, role: builder}]\n"
            + "deliveries:\n"
            + FIRST_CRATE;
    Ledger ledger = Sample.ledger(yaml);
    Notice notice =
        Notice.of(ledger.shortages().get(0), standings(yaml, "2026-03-02"), ledger).orElseThrow();
    assertThat(notice.last()).isEqualTo(LocalDate.of(2026, 2, 5)); // 22 January and 14 days
    assertThat(notice.told(LocalDate.of(2026, 2, 4)))
        .endsWith("by 5\u00a0February\u00a02026, in 1 day");
    assertThat(notice.told(LocalDate.of(2026, 3, 2))).endsWith("which was 25 days ago");
  }

  @Test
  void aPromiseInAUnitThatDoesNotConvertPromisesNothing() {
    String promise =
        "sent: 2026-01-26, events: [{on: 2026-02-20, what: promised, expect: %s, qty: %s}]";
    ShortageStanding told = shortage(claim(promise.formatted("2026-04-22", "3 m")));
    assertThat(told.coming()).extracting(each -> each.qty().toString()).containsExactly("3 m");
    ShortageStanding apart = shortage(claim(promise.formatted("2026-04-22", "3 kg")));
    assertThat(apart.coming()).isEmpty();
    assertThat(apart.state()).isEqualTo(ShortageStanding.State.ANSWERED);
  }
}
