package kitwright.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.value.Place;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;

class ChoiceTest {
  private static Choice choice(String yaml) {
    return choice(Sample.ledger(yaml), "short", Sample.TODAY);
  }

  private static Choice choice(Ledger ledger, String shortage, LocalDate today) {
    return Choice.of(Facts.of(ledger, today), new Ref(shortage, Place.wholeFile("test")))
        .orElseThrow();
  }

  private static WayOut way(Choice choice, String name) {
    return choice.ways().stream().filter(way -> way.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void cashForecastAndHoursStandSideBySide() {
    Choice choice = choice(Spars.LEDGER);
    Outlay buy = way(choice, "buy").outlay();
    assertThat(buy.now().orElseThrow()).hasToString("310.00 EUR");
    assertThat(buy.forecast().orElseThrow()).hasToString("510.00 EUR");
    assertThat(buy.hoursWorth().orElseThrow()).hasToString("28.00 EUR");
    assertThat(buy.withHours().orElseThrow()).hasToString("338.00 EUR");
    assertThat(way(choice, "wait").outlay().forecast().orElseThrow()).hasToString("200.00 EUR");
  }

  @Test
  void whoeverDoesNotWaitMayAskForTheGoodsOrWhatTheyCostElsewhere() {
    Choice choice = choice(Spars.LEDGER);
    assertThat(way(choice, "wait").outlay().claimable()).hasToString("0.00 EUR");
    assertThat(way(choice, "buy").outlay().claimable()).hasToString("310.00 EUR");
    assertThat(way(choice, "substitute").outlay().claimable())
        .as("10 m at the kit's 12")
        .hasToString("120.00 EUR");
    assertThat(
            way(choice(Spars.LEDGER.replace("not-packed", "used-up")), "buy").outlay().claimable())
        .hasToString("0.00 EUR");
  }

  /**
   * By hand: the hull takes 20 working days from 2 March, so it is ready on 27 March and the rig on
   * 31 March. Staves that come on 20 April hold planing from 2 March to 20 April; planing, closing
   * and rigging then take 20 to 24 April.
   */
  @Test
  void waitingHoldsTheFirstTaskAndMovesTheLaunch() {
    Choice choice = choice(Spars.LEDGER);
    Timing wait = way(choice, "wait").timing();
    assertThat(choice.launchIfHere()).isEqualTo("2026-03-31");
    assertThat(choice.neededBy()).as("17 working days on").contains(LocalDate.of(2026, 3, 25));
    assertThat(wait.held().orElseThrow().task()).isEqualTo("plane");
    assertThat(wait.held().orElseThrow().days()).isEqualTo(49);
    assertThat(wait.launch().orElseThrow().on()).isEqualTo("2026-04-24");
    assertThat(wait.launch().orElseThrow().later()).isEqualTo(24);
  }

  /** Of 10 m it stands for 8: the work goes on waiting for two, and beats nothing meanwhile. */
  @Test
  void whatStandsForAPartLeavesTheRestMissing() {
    String part = Spars.LEDGER.replace("{item: stave, qty: 10 m}", "{item: stave, qty: 8 m}");
    Choice choice = choice(part);
    Timing timing = way(choice, "substitute").timing();
    assertThat(timing.arrives()).contains(Sample.TODAY);
    assertThat(timing.rest().orElseThrow()).hasToString("2 m");
    assertThat(timing.launch()).isEmpty();
    assertThat(choice.turning()).noneMatch(each -> each.way().equals("substitute"));
    assertThat(way(choice(Spars.LEDGER), "substitute").timing().rest()).isEmpty();
    Choice chosen =
        choice(
            part.replace(
                "substitutions:\n",
                "    decided: {option: substitute, on: 2026-02-28, by: nora}\nsubstitutions:\n"));
    assertThat(way(chosen, "substitute").timing().rest().orElseThrow()).hasToString("2 m");
    assertThat(way(chosen, "substitute").timing().launch()).isEmpty();
  }

  @Test
  void waitingAskedAloneSaysTheSame() {
    for (String kind : List.of("wait", "buy")) {
      String yaml = Spars.LEDGER.replace("kind: wait", "kind: " + kind);
      Facts now = Facts.of(Sample.ledger(yaml), Sample.TODAY);
      Wait wait = Wait.of(now, new Ref("short", Place.wholeFile("test"))).orElseThrow();
      assertThat(wait.neededBy()).isEqualTo(choice(yaml).neededBy()).isPresent();
      assertThat(wait.timing())
          .isEqualTo(
              choice(yaml).ways().stream()
                  .filter(way -> way.option().way() == Shortage.Way.WAIT)
                  .map(WayOut::timing)
                  .findFirst());
      assertThat(wait.timing().isPresent()).isEqualTo(kind.equals("wait"));
    }
  }

  /**
   * Planing has 17 working days of float; the staves come 10 working days on, and 2 h are added.
   */
  @Test
  void whatComesWithinTheFloatUsesItUpAndMovesNothing() {
    Timing buy = way(choice(Spars.LEDGER), "buy").timing();
    assertThat(buy.held().orElseThrow().days()).isEqualTo(14);
    assertThat(buy.held().orElseThrow().floatUsed()).isCloseTo(10.25, within(1e-9));
    assertThat(buy.held().orElseThrow().floatLeft()).isCloseTo(6.75, within(1e-9));
    assertThat(buy.launch().orElseThrow().later()).isZero();
  }

  /** Half of planing, a day, is left: done on 2 March with the staves here, on 20 April without. */
  @Test
  void theRestOfWorkUnderWayWaitsToo() {
    Choice choice =
        choice(
            Spars.LEDGER.replace(
                "uses: [{item: stave, qty: 14 m}]}",
                "uses: [{item: stave, qty: 14 m}], started: 2026-02-26, progress: 50 %}"));
    Timing wait = way(choice, "wait").timing();
    assertThat(wait.held().orElseThrow().task()).isEqualTo("plane");
    assertThat(wait.held().orElseThrow().days()).isEqualTo(49);
    assertThat(wait.launch().orElseThrow().on()).isEqualTo("2026-04-23");
    assertThat(choice.neededBy()).contains(LocalDate.of(2026, 3, 26));
  }

  @Test
  void offCutsThatOtherWorkIsKeptForAreNamed() {
    Taken taken = way(choice(Spars.LEDGER), "substitute").taken().get(0);
    assertThat(taken.left()).hasToString("Optional[1 each]");
    assertThat(taken.losers()).containsExactly("Locker fronts");
  }

  /** Where nothing is lacking nobody is asked to sign. */
  @Test
  void aSubstitutionThatIsSignedAsksNobody() {
    String signed =
        """
        parties: [{id: kit-maker, name: K, role: supplier}, {id: nora, name: N, role: builder}, {id: ann, name: Ann, role: designer, may-sign: [finish]}]
        kit: [{id: stave, what: stave, qty: 4 m}]
        stock: [{id: larch, what: larch, qty: 9 m}]
        tasks: [{id: t, what: T, takes: 1 d, uses: [{item: stave, qty: 4 m}]}]
        substitutions: [{id: sub, for: short, instead-of: {item: stave, qty: 4 m}, use: [{stock: larch, qty: 4 m}], hold: t, grade: finish, why: larch is here, proposed: {by: nora, on: 2026-02-01}%s}]
        shortages: [{id: short, item: stave, qty: 4 m, found: 2026-01-24, cause: not-packed, options: [{kind: substitute, substitution: sub, cost: 10}, {kind: wait, arrives: 2026-04-20}]}]
        """;
    WayOut open = way(choice(signed.formatted("")), "substitute");
    assertThat(open.signing().orElseThrow().signers()).containsExactly("Ann");
    WayOut done =
        way(choice(signed.formatted(", sign-offs: [{by: ann, on: 2026-02-12}]")), "substitute");
    assertThat(done.signing().orElseThrow().lacks()).isEmpty();
    assertThat(done.signing().orElseThrow().signers()).isEmpty();
    assertThat(done.outlay().withHours().orElseThrow())
        .as("no hour has a value, and it takes none")
        .hasToString("10.00 EUR");
    WayOut gone = way(choice(signed.formatted(", withdrawn: 2026-02-20")), "substitute");
    assertThat(gone.signing().orElseThrow().lacks()).containsExactly("it was withdrawn");
  }

  @Test
  void aSubstitutionTellsWhoMustSignAndByWhen() {
    Signing signing = way(choice(Spars.LEDGER), "substitute").signing().orElseThrow();
    assertThat(signing.signers()).containsExactly("A. Osterlund");
    assertThat(signing.by()).contains(LocalDate.of(2026, 3, 27));
    assertThat(signing.lacks()).contains("no assessment", "nobody has signed");
  }

  @Test
  void aWayThatAnotherBeatsInEverythingIsMarkedWithTheReason() {
    assertThat(choice(Spars.LEDGER).dominated())
        .containsExactly(new Dominated("dear", "buy", "cheaper, here sooner"));
  }

  @Test
  void anUnprovedSubstitutionBeatsNobody() {
    Choice choice = choice(Spars.LEDGER.replace("hours: 16", "hours: 0"));
    assertThat(choice.dominated()).extracting(Dominated::by).doesNotContain("substitute");
  }

  @Test
  void whatWouldHaveToChangeIsSaid() {
    List<Turning> turning = choice(Spars.LEDGER).turning();
    assertThat(turning).extracting(Turning::against).containsOnly("wait");
    Turning buy = turning.get(0);
    assertThat(buy.way()).isEqualTo("buy");
    assertThat(buy.lessCost()).as("338 cheaper is more than it costs").isEmpty();
    assertThat(buy.dayWorth().orElseThrow()).as("338 over 24 days").hasToString("14.08 EUR");
    Turning substitute = turning.get(1);
    assertThat(substitute.dayWorth().orElseThrow()).as("224 over 24 days").hasToString("9.33 EUR");
  }

  @Test
  void whatIsDearerByItsWholePriceIsNeverAhead() {
    Turning buy = choice(Spars.LEDGER.replace(", own-hour: 14", "")).turning().get(0);
    assertThat(buy.way()).isEqualTo("buy");
    assertThat(buy.lessCost()).as("310 dearer, and it costs 310").isEmpty();
  }

  @Test
  void anHourlyValueLevelsWorkAgainstCash() {
    Choice choice =
        choice(
            Spars.LEDGER
                .replace("- {kind: wait, arrives: 2026-04-20}", "")
                .replace("hours: 16", "hours: 30"));
    Turning substitute =
        choice.turning().stream()
            .filter(each -> each.way().equals("substitute"))
            .findFirst()
            .orElseThrow();
    assertThat(substitute.against()).isEqualTo("buy");
    assertThat(substitute.belowHour().orElseThrow()).as("310 / 28 h").hasToString("11.07 EUR");
    assertThat(substitute.lessCost()).as("420 against 338, and it costs nothing").isEmpty();
  }

  @Test
  void whatIsBoughtForNobodyKnowsHowMuchHasNoPrice() {
    Choice choice = choice(Spars.LEDGER.replace("cost: 400, ", ""));
    assertThat(way(choice, "dear").outlay().cost()).isEmpty();
    assertThat(way(choice, "dear").outlay().forecast()).isEmpty();
  }

  @Test
  void nobodyKnowsWhenAWaitEndsThatNobodyPromised() {
    Choice choice = choice(Spars.LEDGER.replace(", arrives: 2026-04-20", ""));
    assertThat(way(choice, "wait").timing().arrives()).isEmpty();
    assertThat(way(choice, "wait").timing().launch()).isEmpty();
  }

  @Test
  void aSubstitutionOfAnotherShortageIsNoWayOut() {
    Choice choice = choice(Spars.substitutionForAnother(Spars.LEDGER));
    WayOut way = way(choice, "substitute");
    assertThat(way.strength().orElseThrow()).isEqualTo(Strength.unknown());
    assertThat(way.signing().orElseThrow().lacks())
        .containsExactly("no substitution sub of this shortage is on record");
  }

  @Test
  void aWayOutThatNobodyAssessedOrSignedBeatsNothing() {
    String cheap = "{kind: substitute, substitution: sub, hours: 0, cost: 1, arrives: 2026-03-02}";
    String unsigned =
        Spars.LEDGER.replace("{kind: substitute, substitution: sub, hours: 16}", cheap);
    assertThat(choice(unsigned).dominated()).extracting(Dominated::by).doesNotContain("substitute");
    String unrecorded = unsigned.replace("substitution: sub, ", "");
    Choice choice = choice(unrecorded);
    assertThat(choice.dominated()).extracting(Dominated::by).doesNotContain("substitute");
    WayOut way = way(choice, "substitute");
    assertThat(way.strength().orElseThrow().verdict()).isEmpty();
    assertThat(way.signing().orElseThrow().lacks())
        .containsExactly("no substitution is on record for it");
    String signed =
        unsigned
                .replace("grade: structural", "grade: finish")
                .replace(
                    "    hold: close\n",
                    """
                        hold: close
                        assessment: ext
                        sign-offs: [{by: designer, on: 2026-02-12, covers: COVERS}]
                    """)
                .replace("may-sign: [structural]", "may-sign: [finish]")
            + "assessments: [{id: ext, method: external, on: 2026-02-01, by: designer, require:"
            + " {stiffness: 1}, numbers: {stiffness: 1.1}, evidence: [{file: there/a.pdf}]}]\n";
    assertThat(way(choice(signed.replace(", covers: COVERS", "")), "substitute").isReleased())
        .isTrue();
    assertThat(way(choice, "substitute").isReleased()).isFalse();
  }

  @Test
  void theForecastOfAWayDoesNotDependOnTheDecision() {
    Choice choice = choice(Spars.decided(Spars.LEDGER));
    assertThat(way(choice, "wait").outlay().forecast().orElseThrow()).hasToString("200.00 EUR");
  }

  private static final String LEFT_OUT =
      """
      kit: [{id: floor, what: floor, qty: 4%s}]
      deliveries: [{id: d, received: 2026-02-01, from: kit-maker, counted: [{item: floor, qty: 3}]}]
      shortages:
        - id: short
          item: floor
          qty: 1
          found: 2026-02-02
          cause: not-packed
          options: [{id: none, kind: do-without}, {id: buy, kind: buy, cost: 20}]
          %s
      """;

  private static WayOut leftOut(String grade, String decided) {
    return way(choice(LEFT_OUT.formatted(grade, decided)), "none");
  }

  /** It was told as in need of no signature, and so beat what has to be bought. */
  @Test
  void whoeverIsEntitledMustAgreeToLeaveOutWhatMuchDependsOn() {
    WayOut open = leftOut(", grade: structural", "");
    assertThat(open.signing().orElseThrow().signers()).containsExactly("A. Osterlund (office)");
    assertThat(open.signing().orElseThrow().lacks())
        .containsExactly("nobody entitled to the grade structural has agreed to leave it out");
    assertThat(open.isReleased()).isFalse();
    String by = "decided: {option: %s, by: %s, on: 2026-02-10}";
    assertThat(leftOut(", grade: structural", by.formatted("none", "nora")).isReleased()).isFalse();
    assertThat(leftOut(", grade: structural", by.formatted("buy", "office")).isReleased())
        .as("that is the other way out")
        .isFalse();
    assertThat(leftOut(", grade: structural", by.formatted("none", "office")).isReleased())
        .isTrue();
    assertThat(leftOut(", grade: finish", "").signing()).isEmpty();
    assertThat(leftOut("", "").signing()).isEmpty();
    assertThat(way(choice(LEFT_OUT.formatted(", grade: structural", "")), "buy").signing())
        .isEmpty();
  }
}
