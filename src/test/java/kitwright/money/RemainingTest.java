package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** What is still to be spent, by the order of preference that {@link Spent} states. */
class RemainingTest {
  private static LineState line(String yaml) {
    return Account.on(Facts.of(Sample.ledger(yaml), Sample.TODAY)).line("spars").orElseThrow();
  }

  private static String remaining(String yaml) {
    Remaining remaining = line(yaml).remaining();
    return remaining.likely() + " " + remaining.basis().name().toLowerCase(Locale.ROOT);
  }

  @Test
  void whatTheLineSaysGoesFirst() {
    assertThat(
            remaining(
                """
                budget: [{line: spars, title: Spars, amount: 1000, remaining: [200, 320, 600]}]
                kit: [{id: stave, what: stave, qty: 4 m, price: 10 EUR/m}]
                tasks: [{id: plane, what: Plane, takes: 1 d, budget: spars, uses: [{item: stave, qty: 14 m}]}]
                """))
        .isEqualTo("320.00 EUR stated");
  }

  @Test
  void aRangeThatDoesNotRiseIsItsMiddle() {
    LineState line =
        line("budget: [{line: spars, title: Spars, amount: 1000, remaining: [300, 200, 100]}]\n");
    assertThat(line.remaining().range().isFixed()).isTrue();
    assertThat(line.remaining().likely()).hasToString("200.00 EUR");
  }

  @Test
  void needsBeyondTheKitAreBoughtAtItsPrice() {
    assertThat(
            remaining(
                """
                budget: [{line: spars, title: Spars, amount: 1000}]
                kit: [{id: stave, what: stave, qty: 4 m, price: 10 EUR/m}]
                tasks: [{id: plane, what: Plane, takes: 1 d, budget: spars, uses: [{item: stave, qty: 14 m}]}]
                """))
        .isEqualTo("100.00 EUR needs");
  }

  @Test
  void theLastPricePaidIsNewerThanTheKits() {
    assertThat(
            remaining(
                """
                budget: [{line: spars, title: Spars, amount: 1000}]
                kit: [{id: stave, what: stave, qty: 4 m, price: 10 EUR/m}]
                tasks: [{id: plane, what: Plane, takes: 1 d, budget: spars, uses: [{item: stave, qty: 14 m}]}]
                spending:
                  - {id: p, on: 2026-02-01, line: spars, what: staves, amount: 48, item: stave, qty: 4 m, state: paid}
                """))
        .as("14 m less 4 m of the kit less 4 m bought, at 12 a metre")
        .isEqualTo("72.00 EUR needs");
  }

  @Test
  void materialsThatNobodyHasBoughtArePricedLikeTheLastOnes() {
    LineState line =
        line(
            """
            budget: [{line: spars, title: Spars, amount: 1000}]
            materials: [{id: resin, kind: resin, what: resin, density: 1100 kg/m3, source: invented}]
            tasks:
              - {id: glue, what: Glue, takes: 1 d, budget: spars, uses: [{material: resin, qty: 5 kg, waste: 20 %}]}
            spending:
              - {id: p, on: 2026-02-01, line: spars, what: resin, amount: 40, material: resin, qty: 2 kg, state: paid}
            """);
    assertThat(line.remaining().likely()).as("4 kg at 20").hasToString("80.00 EUR");
  }

  private static final String SECTION =
      """
      budget: [{line: spars, title: Spars, amount: 1000}]
      materials:
        - {id: e-glass, kind: fibre, density: 2560 kg/m3, source: test}
        - {id: epoxy, kind: resin, density: 1120 kg/m3, mix-ratio: 0.25, hardener: slow, price: 20 EUR/kg, source: test}
        - {id: slow, kind: resin, density: 970 kg/m3, price: 30 EUR/kg, source: test}
        - {id: woven, kind: cloth, fibre: e-glass, resin: epoxy, areal-weight: 400 g/m2, fibre-fraction: 0.5, price: 6 EUR/m2, source: test}
      sections: [{id: skin, layers: [{material: woven, plies: 2}]}]
      tasks: [{id: sheathe, what: Sheathe, takes: 1 d, budget: spars, uses: [{section: skin, area: 10 m2, waste: 10 %}]}]
      """;

  @Test
  void whatASectionTakesIsNeededToo() {
    assertThat(remaining(SECTION))
        .as("22 m2 of cloth at 6, 7.04 kg of epoxy at 20, 1.76 kg of hardener at 30")
        .isEqualTo("325.60 EUR needs");
  }

  @Test
  void kitAndStockOfTheMaterialServeTheSection() {
    assertThat(
            remaining(
                SECTION
                    + """
                    kit: [{id: roll, what: cloth, material: woven, qty: 20 m2}]
                    stock: [{id: can, what: epoxy, material: epoxy, qty: 7.04 kg}, {id: bottle, what: hardener, material: slow, qty: 2 kg}]
                    """))
        .as("2 m2 of cloth at 6")
        .isEqualTo("12.00 EUR needs");
  }

  @Test
  void finishedWorkBuysNothingMore() {
    assertThat(
            remaining(
                SECTION.replace(
                    "takes: 1 d,", "takes: 1 d, finished: 2026-02-01, started: 2026-02-01,")))
        .isEqualTo("0.00 EUR earned");
  }

  @Test
  void finishedWorkHasFirstCallOnWhatThereIs() {
    String yaml =
        """
        budget: [{line: spars, title: Spars, amount: 1000}, {line: hull, title: Hull, amount: 500}]
        kit: [{id: stave, what: stave, qty: 10 m, price: 10 EUR/m}]
        tasks:
          - {id: a, what: A, takes: 1 d, budget: spars, uses: [{item: stave, qty: 10 m}]}
          - {id: b, what: B, takes: 1 d, budget: hull, uses: [{item: stave, qty: 10 m}], started: 2026-02-01, finished: 2026-02-01}
        """;
    assertThat(remaining(yaml)).isEqualTo("100.00 EUR needs");
  }

  @Test
  void workUnderWayHasEarnedItsShareOfTheBudget() {
    assertThat(
            remaining(
                """
                budget: [{line: spars, title: Spars, amount: 1000}]
                tasks:
                  - {id: a, what: A, takes: 3 d, budget: spars, started: 2026-02-01, finished: 2026-02-03}
                  - {id: b, what: B, takes: 1 d, budget: spars}
                spending:
                  - {id: p, on: 2026-02-01, line: spars, what: spruce, amount: 700, state: paid}
                  - {id: o, on: 2026-02-01, line: spars, what: varnish, amount: 100, state: ordered}
                """))
        .as("a quarter of the budget, less the order")
        .isEqualTo("150.00 EUR earned");
  }

  @Test
  void elseItIsWhatIsLeftOfTheBudget() {
    assertThat(
            remaining(
                """
                budget: [{line: spars, title: Spars, amount: 1000}]
                spending:
                  - {id: p, on: 2026-02-01, line: spars, what: spruce, amount: 700, state: paid}
                """))
        .isEqualTo("300.00 EUR budget");
  }

  @Test
  void anUndecidedShortageCostsItsCheapestWayOutAndADecidedOneWhatWasChosen() {
    String shortage =
        """
        budget: [{line: spars, title: Spars, amount: 1000, remaining: 0}]
        kit: [{id: stave, what: stave, qty: 4 m}]
        tasks: [{id: plane, what: Plane, takes: 1 d, budget: spars, uses: [{item: stave, qty: 4 m}]}]
        shortages:
          - id: short
            item: stave
            qty: 4 m
            found: 2026-01-24
            cause: not-packed
            options: [{kind: buy, cost: [290, 310, 400]}, {kind: substitute, cost: 60}]
        """;
    assertThat(line(shortage).waysOut()).hasToString("60.00 EUR");
    String decided = shortage + "    decided: {option: buy, on: 2026-02-01, by: nora}\n";
    assertThat(line(decided).waysOut()).hasToString("310.00 EUR");
    String ordered =
        decided
            + """
            spending:
              - {id: o, on: 2026-02-03, line: spars, what: staves, amount: 300, state: ordered, because: short}
            """;
    assertThat(line(ordered).forecast()).hasToString("310.00 EUR");
  }
}
