package kitwright.choice;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.value.Place;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;

/**
 * When each way out lets the work go on. With the staves here, planing takes 2 and 3 March, closing
 * the 4th; the hull is planked on 27 March and the rig done on the 31st. Today is Monday, 2 March
 * 2026; from the 20th of April on it is planing 20 and 21, closing 22, rigging 23 and 24.
 */
class WaitingTest {
  private static Choice choice(String yaml) {
    return Choice.of(
            Facts.of(Sample.ledger(yaml), Sample.TODAY), new Ref("short", Place.wholeFile("test")))
        .orElseThrow();
  }

  private static Timing timing(String yaml, int way) {
    return choice(yaml).ways().get(way).timing();
  }

  private static String told(Timing timing) {
    return timing.arrives().map(Object::toString).orElse("–")
        + ", "
        + timing.held().map(held -> held.task() + " " + held.days()).orElse("–")
        + ", "
        + timing.launch().map(day -> day.on() + " " + day.later()).orElse("–");
  }

  @Test
  void aWayBringsItOnTheDayThatItSays() {
    assertThat(told(timing(Spars.LEDGER, 0))).isEqualTo("2026-04-20, plane 49, 2026-04-24 24");
    assertThat(told(timing(Spars.LEDGER, 1))).isEqualTo("2026-03-16, plane 14, 2026-03-31 0");
    assertThat(told(timing(Spars.LEDGER.replace("arrives: 2026-03-16", "arrives: 2026-02-16"), 1)))
        .as("of a day that has passed nobody knows when it comes")
        .isEqualTo("–, –, –");
  }

  @Test
  void whoDoesWithoutWaitsForNothing() {
    String without =
        Spars.LEDGER.replace("{kind: wait, arrives: 2026-04-20}", "{kind: do-without}");
    assertThat(told(timing(without, 0))).isEqualTo("–, –, 2026-03-31 0");
  }

  @Test
  void ownWorkIsAddedToTheFirstTaskThatLacksIt() {
    String work =
        Spars.LEDGER.replace(
            "{kind: substitute, substitution: sub, hours: 16}",
            "{kind: substitute, substitution: sub, hours: 200}");
    // 2 d and 25 d of planing from 2 March end on 7 April; closing the 8th, rigging 9 and 10 April.
    assertThat(told(timing(work, 2))).isEqualTo("2026-03-02, close 35, 2026-04-10 10");
  }

  @Test
  void theWayThatIsChosenBringsItAsItIsOrdered() {
    String ordered =
        Spars.decided(Spars.LEDGER)
            + "spending: [{id: o, on: 2026-02-25, line: spars, what: staves, state: ordered,"
            + " amount: 310, replaces: short, expected: 2026-03-23}]\n";
    assertThat(told(timing(ordered, 1))).isEqualTo("2026-03-23, plane 21, 2026-03-31 0");
    assertThat(told(timing(ordered, 0)))
        .as("who waits waits for what is ordered")
        .isEqualTo("2026-03-23, plane 21, 2026-03-31 0");
    assertThat(told(timing(ordered, 3)))
        .as("the way not chosen goes by its own word")
        .isEqualTo("2026-03-20, plane 18, 2026-03-31 0");
  }

  @Test
  void whoWaitsGoesByTheLastPromise() {
    String promised =
        Spars.LEDGER
            + "claims: [{id: c, against: kit-maker, shortages: [short], sent: 2026-02-01, remedy:"
            + " replacement, events: [{on: 2026-02-10, what: promised, expect: 2026-04-13}]}]\n";
    // Planing 13 and 14 April, closing 15, rigging 16 and 17.
    assertThat(told(timing(promised, 0))).isEqualTo("2026-04-13, plane 42, 2026-04-17 17");
    assertThat(told(timing(promised, 1))).startsWith("2026-03-16");
  }

  @Test
  void whatElseIsMissingHoldsItsOwnWorkWhateverIsChosen() {
    String sail =
        Spars.LEDGER
            .replace(
                "kit: [",
                "kit: [{id: sail, what: sail, qty: 1}, {id: sheet, what: sheet, qty: 1}, ")
            .replace(
                "Rig, takes: 2 d",
                "Rig, takes: 2 d, uses: [{item: sail, qty: 1}, {item: sheet, qty: 1}]")
            .replace(
                "stock:\n",
                """
                  - {id: e, expected: 2026-04-06, from: kit-maker, packed: [{item: sheet, qty: 1}]}
                  - {id: f, expected: 2026-04-13, from: kit-maker, packed: [{item: sail, qty: 1}]}
                stock:
                """);
    assertThat(choice(sail).launchIfHere()).as("rigging 13 and 14 April").isEqualTo("2026-04-14");
    String other =
        sail.replace("packed: [{item: sheet", "packed: [{item: x")
            .replace("packed: [{item: sail", "packed: [{item: sheet")
            .replace("packed: [{item: x", "packed: [{item: sail");
    assertThat(choice(other).launchIfHere()).as("the later of both").isEqualTo("2026-04-14");
    assertThat(told(timing(sail, 1))).isEqualTo("2026-03-16, plane 14, 2026-04-14 0");
    assertThat(told(timing(sail, 0))).isEqualTo("2026-04-20, plane 49, 2026-04-24 10");
  }

  /** The four metres that came are the first task’s: it has all that it needs. */
  @Test
  void onlyWorkThatLacksSomethingIsHeld() {
    String two =
        Spars.LEDGER.replace(
            "  - {id: plane,",
            "  - {id: early, what: Early, takes: 1 d, uses: [{item: stave, qty: 4 m}]}\n"
                + "  - {id: plane,");
    assertThat(told(timing(two, 0))).isEqualTo("2026-04-20, plane 49, 2026-04-24 24");
  }

  @Test
  void whereNoOpenWorkLacksItNothingWaits() {
    String over =
        Spars.LEDGER.replace(
            "Plane the staves, takes: 2 d,",
            "Plane the staves, takes: 2 d, started: 2026-02-16, finished: 2026-02-17,");
    assertThat(choice(over).neededBy()).isEmpty();
    assertThat(told(timing(over, 0))).isEqualTo("2026-04-20, –, 2026-03-31 0");
    assertThat(timing(over, 2).held()).as("the hold of the substitution").isEmpty();
  }
}
