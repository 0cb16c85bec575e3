package kitwright.choice;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.money.Account;
import kitwright.value.Place;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;

/** What a way out that builds otherwise costs and when it may begin, where nobody says either. */
class AtHandTest {
  private static Choice choice(String yaml) {
    return Choice.of(
            Facts.of(Sample.ledger(yaml), Sample.TODAY), new Ref("short", Place.wholeFile("test")))
        .orElseThrow();
  }

  private static String told(String yaml) {
    WayOut way = choice(yaml).ways().get(2);
    return way.outlay().cost().map(cost -> cost.likely().toString()).orElse("not said")
        + ", "
        + way.timing().arrives().map(Object::toString).orElse("not known");
  }

  private static String use(String use) {
    return Spars.LEDGER.replace("use: [{stock: larch-a, qty: 4 each}]", use);
  }

  @Test
  void whatIsAllHereCostsNothingAndMayBeginToday() {
    assertThat(told(Spars.LEDGER)).isEqualTo("0.00 EUR, 2026-03-02");
    assertThat(told(use("use: [{stock: larch-a, qty: 5 each}]"))).isEqualTo("0.00 EUR, 2026-03-02");
  }

  @Test
  void ofWhatIsNotAllHereNobodyKnowsEither() {
    assertThat(told(use("use: [{stock: larch-a, qty: 6 each}]"))).isEqualTo("not said, not known");
    assertThat(told(use("use: [{stock: gone, qty: 1 each}]"))).isEqualTo("not said, not known");
    assertThat(told(use("use: []"))).isEqualTo("not said, not known");
    assertThat(
            told(
                use("use: [{spend: p, qty: 4 each}]")
                    + "spending: [{id: p, on: 2026-02-20, line: spars, what: larch, state: ordered,"
                    + " amount: 100}]\n"))
        .isEqualTo("not said, not known");
  }

  /** Of five boards four went into the lockers: the four that it takes are not here. */
  @Test
  void whatWentIntoOtherWorkIsNotHere() {
    String used = "---\nday: 2026-02-20\nused: [{stock: larch-a, qty: %d%s}]\n---\n";
    assertThat(told(Spars.LEDGER + used.formatted(4, ", task: lockers")))
        .isEqualTo("not said, not known");
    assertThat(told(Spars.LEDGER + used.formatted(1, ", task: lockers")))
        .isEqualTo("0.00 EUR, 2026-03-02");
    assertThat(told(Spars.LEDGER + used.formatted(4, ", task: close")))
        .as("its own work has used them")
        .isEqualTo("0.00 EUR, 2026-03-02");
  }

  /** The same of an item of the kit: of five beams it takes four. */
  @Test
  void whatItsOwnWorkHasUsedOfAnItemIsNotAskedForAgain() {
    String beams =
        use("use: [{item: beam, qty: 4 each}]")
            .replace("kit: [", "kit: [{id: beam, what: beam, qty: 5}, ")
            .replace("counted: [", "counted: [{item: beam, qty: 5}, ");
    String used = "---\nday: 2026-02-20\nused: [{item: beam, qty: %d, task: %s}]\n---\n";
    assertThat(told(beams)).isEqualTo("0.00 EUR, 2026-03-02");
    assertThat(told(beams + used.formatted(4, "close"))).isEqualTo("0.00 EUR, 2026-03-02");
    assertThat(told(beams + used.formatted(3, "close"))).isEqualTo("0.00 EUR, 2026-03-02");
    assertThat(told(beams + used.formatted(2, "lockers"))).isEqualTo("not said, not known");
  }

  @Test
  void twoLinesOfOneStackAreTakenTogether() {
    String twice = use("use: [{stock: larch-a, qty: 3 each}, {stock: larch-a, qty: 3 each}]");
    assertThat(told(twice)).isEqualTo("not said, not known");
    assertThat(choice(twice).ways().get(2).taken())
        .singleElement()
        .satisfies(
            taken -> {
              assertThat(taken.qty()).hasToString("6 each");
              assertThat(taken.lacking()).hasToString("Optional[1 each]");
              assertThat(taken.left()).hasToString("Optional[0 each]");
            });
  }

  @Test
  void whatIsSaidHolds() {
    String said =
        use("use: [{stock: larch-a, qty: 6 each}]")
            .replace("hours: 16}", "hours: 16, cost: 40, arrives: 2026-03-09}");
    assertThat(told(said)).isEqualTo("40.00 EUR, 2026-03-09");
  }

  @Test
  void theAccountOfTheMoneyDoesNotCountItAsNothing() {
    String only =
        Spars.LEDGER
            .replace("            - {kind: wait, arrives: 2026-04-20}\n", "")
            .replaceAll("(?m)^ *- \\{kind: (wait|buy).*\\n", "")
            .replaceAll("(?m)^ *- \\{id: dear.*\\n", "");
    Facts here = Facts.of(Sample.ledger(only), Sample.TODAY);
    assertThat(Account.on(here).ways()).hasSize(1);
    Facts not = Facts.of(Sample.ledger(only.replace("qty: 4 each", "qty: 6 each")), Sample.TODAY);
    assertThat(Account.on(not).ways()).isEmpty();
  }
}
