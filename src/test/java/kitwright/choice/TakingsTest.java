package kitwright.choice;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.value.Place;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;

/** Whose it was that a substitution takes; and when another way would be ahead. By hand. */
class TakingsTest {
  private static Choice choice(String yaml) {
    return choice(Sample.ledger(yaml));
  }

  private static Choice choice(Ledger ledger) {
    return Choice.of(Facts.of(ledger, Sample.TODAY), new Ref("short", Place.wholeFile("test")))
        .orElseThrow();
  }

  /** Five boards, four taken: one is left. */
  private static Taken taken(String asked) {
    return choice(
            Spars.LEDGER
                .replace(", keep-for: [lockers]", "")
                .replace(
                    "Locker fronts, takes: 1 d",
                    "Locker fronts, takes: 1 d, uses: [{stock: larch-a, qty: " + asked + "}]"))
        .ways()
        .stream()
        .filter(way -> way.name().equals("substitute"))
        .findFirst()
        .orElseThrow()
        .taken()
        .get(0);
  }

  @Test
  void whoeverFindsEnoughLeftLosesNothing() {
    assertThat(taken("1 each").losers()).isEmpty();
    assertThat(taken("2 each").losers()).containsExactly("Locker fronts");
    assertThat(taken("1 each").left()).hasToString("Optional[1 each]");
  }

  /** Of four boards its work has sawn three: of five, two are here, and one is still taken. */
  @Test
  void whatItsOwnWorkHasUsedAlreadyIsNotTakenTwice() {
    String used =
        """
        ---
        day: 2026-02-27
        used: [{stock: larch-a, qty: 3, task: %s}]
        ---
        """;
    Taken own = choice(Spars.LEDGER + used.formatted("close")).ways().get(2).taken().get(0);
    assertThat(own.left()).hasToString("Optional[1 each]");
    assertThat(own.lacking()).isEmpty();
    Taken others = choice(Spars.LEDGER + used.formatted("lockers")).ways().get(2).taken().get(0);
    assertThat(others.lacking()).as("four, and two are here").hasToString("Optional[2 each]");
    assertThat(others.left()).hasToString("Optional[0 each]");
  }

  /** Three pieces are asked for by work that cannot be read: nobody can say what is left. */
  @Test
  void whereNobodyCanSayWhatIsLeftItIsNotSaidAndWhoeverIsPromisedSomeMayLoseIt() {
    String asked =
        Spars.LEDGER
            .replace(", keep-for: [lockers]", "")
            .replace(
                "Locker fronts, takes: 1 d",
                "Locker fronts, takes: 1 d, uses: [{stock: larch-a, qty: 1}]");
    Taken known = choice(asked).ways().get(2).taken().get(0);
    assertThat(known.left()).isPresent();
    assertThat(known.losers()).isEmpty();
    String unread =
        asked.replace(
            "  - {id: rig,",
            "  - {id: odd, what: Odd, uses: [{stock: larch-a, qty: 3}]}\n  - {id: rig,");
    Taken taken =
        choice(Sample.read(unread, new Findings()).orElseThrow()).ways().get(2).taken().get(0);
    assertThat(taken.left()).isEmpty();
    assertThat(taken.losers()).containsExactly("Locker fronts");
  }

  /** Waiting costs nothing, buying 310: buying would have to be 310 cheaper to be level. */
  @Test
  void costOfAWayIsCountedWithWhatIsSpentOnItAlready() {
    WayOut fresh = choice(Spars.LEDGER).ways().get(1);
    assertThat(fresh.outlay().now().orElseThrow()).hasToString("310.00 EUR");
    WayOut begun =
        choice(
                Spars.LEDGER
                    + "spending: [{id: p, on: 2026-02-20, line: spars, what: deposit, state: paid,"
                    + " amount: 100, because: short}]\n")
            .ways()
            .get(1);
    assertThat(begun.outlay().now().orElseThrow()).as("310 − 100").hasToString("210.00 EUR");
    assertThat(begun.outlay().forecast().orElseThrow())
        .as("100 paid, 200 stated, 210 to come")
        .hasToString("510.00 EUR");
  }

  /** Work of the substitution itself, and work that is over, loses nothing. */
  @Test
  void onlyOtherWorkThatIsStillAheadLoses() {
    String asked =
        Spars.LEDGER
            .replace(", keep-for: [lockers]", "")
            .replace(
                "Close the bowsprit, takes: 1 d",
                "Close the bowsprit, takes: 1 d, uses: [{stock: larch-a, qty: 4}]");
    assertThat(choice(asked).ways().get(2).taken().get(0).losers()).isEmpty();
    String over =
        Spars.LEDGER
            .replace(", keep-for: [lockers]", "")
            .replace(
                "Locker fronts, takes: 1 d, after: [hull]",
                "Locker fronts, takes: 1 d, started: 2026-02-20, finished: 2026-02-21, uses:"
                    + " [{stock: larch-a, qty: 2}]");
    assertThat(choice(over).ways().get(2).taken().get(0).losers()).isEmpty();
  }

  /** One board is left, and its own work asks for two more than it takes: that is no other’s. */
  @Test
  void whatTheWorkThatItHoldsAsksForItselfIsNoLoss() {
    String asked =
        Spars.LEDGER
            .replace(", keep-for: [lockers]", "")
            .replace(
                "Close the bowsprit, takes: 1 d",
                "Close the bowsprit, takes: 1 d, uses: [{stock: larch-a, qty: 6}]");
    assertThat(choice(asked).ways().get(2).taken().get(0).losers()).isEmpty();
  }

  /** Nobody says for which work it is sawn, nor what the substitution is for. */
  @Test
  void aCutOfNoWorkIsNotTheSubstitutionsOwn() {
    String cut =
        Spars.LEDGER.replace(", keep-for: [lockers]", "").replace("    hold: close\n", "")
            + "cuts: [{id: saw, from: [larch-a], kerf: 3 mm, parts: [{mark: a, length: 400"
            + " mm}]}]\n";
    assertThat(cut).doesNotContain("hold: close");
    assertThat(choice(cut).ways().get(2).taken().get(0).losers()).containsExactly("cut saw");
  }

  /** All five taken: whoever has a word on it loses it, though nobody says how many. */
  @Test
  void whereNothingIsLeftEvenAKeptPieceIsLost() {
    String all =
        Spars.LEDGER.replace(
            "use: [{stock: larch-a, qty: 4 each}]", "use: [{stock: larch-a, qty: 5 each}]");
    assertThat(choice(all).ways().get(2).taken().get(0).losers()).containsExactly("Locker fronts");
  }
}
