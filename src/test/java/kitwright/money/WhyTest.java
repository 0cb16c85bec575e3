package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WhyTest {
  private static List<String> why(String yaml) {
    Ledger ledger = Sample.ledger(yaml);
    return Why.of(ledger, Account.on(Facts.of(ledger, Sample.TODAY))).stream()
        .map(
            part ->
                part.cause().name().toLowerCase(Locale.ROOT)
                    + part.of().map(id -> " " + id).orElse("")
                    + " "
                    + part.amount()
                    + (part.recoverable().signum() > 0
                        ? ", of which " + part.recoverable() + " by claim"
                        : ""))
        .toList();
  }

  private static final String BASE =
      """
      rates:
        - {on: 2026-01-05, from: NZD, to: EUR, rate: 0.50}
        - {on: 2026-02-01, from: NZD, to: EUR, rate: 0.60}
      budget: [{line: spars, title: Spars, amount: 100, remaining: 0}]
      kit: [{id: stave, what: stave, qty: 14 m, price: 10 NZD/m}]
      shortages: [{id: short, item: stave, qty: 4 m, found: 2026-01-24, cause: not-packed}]
      """;

  @Test
  void everyCauseHasItsPart() {
    assertThat(
            why(
                BASE
                    + """
                    claims:
                      - {id: c, against: kit-maker, shortages: [short], sent: 2026-01-30, remedy: replacement, costs: [courier]}
                    substitutions:
                      - {id: sub, instead-of: {item: stave, qty: 4 m}, use: [], grade: finish, why: larch is here}
                    spending:
                      - {id: planned, on: 2026-02-02, line: spars, what: spruce, amount: 80, state: paid}
                      - {id: courier, on: 2026-02-02, line: spars, what: courier, amount: 25, state: paid, because: short}
                      - {id: knives, on: 2026-02-02, line: spars, what: knives, amount: 46.20, state: paid, because: short}
                      - {id: larch, on: 2026-02-02, line: spars, what: glue for larch, amount: 12, state: paid, substitution: sub}
                      - {id: bags, on: 2026-02-02, line: spars, what: bags, amount: 3.30, state: paid, cause: forgotten}
                      - {id: staves, on: 2026-02-02, line: spars, what: 2 m dearer, amount: 24 NZD, state: paid, item: stave, qty: 2 m}
                    """))
        .containsExactly(
            "shortage short 71.20 EUR, of which 25.00 EUR by claim",
            "substitution sub 12.00 EUR",
            "forgotten 3.30 EUR",
            "price 2.00 EUR",
            "currency 2.40 EUR",
            "rest -10.00 EUR");
  }

  @Test
  void aCreditForMissingGoodsTakesFromTheirShortage() {
    assertThat(
            why(
                BASE
                    + """
                    spending:
                      - {id: planned, on: 2026-02-02, line: spars, what: spruce, amount: 100, state: paid}
                      - {id: larch, on: 2026-02-02, line: spars, what: bought elsewhere, amount: 60, state: paid, because: short}
                      - {id: credit, on: 2026-02-20, line: spars, what: credit, amount: 20, state: refunded, refunds: planned, because: short}
                    """))
        .containsExactly("shortage short 40.00 EUR");
  }

  @Test
  void aFlaggedPriceTakesWhatNothingElseExplains() {
    assertThat(
            why(
                """
                budget: [{line: spars, title: Spars, amount: 100, remaining: 0}]
                spending:
                  - {id: a, on: 2026-02-02, line: spars, what: spruce, amount: 80, state: paid}
                  - {id: b, on: 2026-02-02, line: spars, what: glue, amount: 39.50, state: paid, cause: price}
                """))
        .containsExactly("price 19.50 EUR");
  }

  @Test
  void whatAClaimAsksForGoodsIsRecoverableUpToWhatTheyCostElsewhere() {
    assertThat(
            why(
                BASE
                    + """
                    claims:
                      - {id: c, against: kit-maker, shortages: [short], sent: 2026-01-30, remedy: credit}
                    spending:
                      - {id: planned, on: 2026-02-02, line: spars, what: spruce, amount: 100, state: paid}
                      - {id: larch, on: 2026-02-02, line: spars, what: bought elsewhere, amount: 60, state: paid, because: short}
                    """))
        .as("4 m at 10 NZD at 0.60")
        .containsExactly("shortage short 60.00 EUR, of which 24.00 EUR by claim");
  }

  private static List<String> savings(String signed, String stock, String used) {
    Ledger ledger =
        Sample.ledger(
            BASE
                + """
                stock: [{id: larch-a, what: larch, size: 2450 x 110 x 32 mm, pieces: 5%s}]
                substitutions:
                  - {id: sub, instead-of: {item: stave, qty: 10 m}, use: [{stock: larch-a, qty: 4 each}], grade: finish, why: larch is here%s}
                spending:
                  - {id: glue, on: 2026-02-02, line: spars, what: glue for larch, amount: 12, state: paid, substitution: sub}
                """
                    .formatted(stock, signed)
                + used);
    return Saving.byStock(Facts.of(ledger, Sample.TODAY)).stream()
        .map(saving -> saving.amount().toString())
        .toList();
  }

  private static final String SIGNED = ", sign-offs: [{by: nora, on: 2026-02-12}]";

  private static String used(int pieces) {
    return "---\nday: 2026-02-20\nused: [{stock: larch-a, qty: %d}]\n---\n".formatted(pieces);
  }

  /** 10 m at 10 NZD at 0.60 are 60.00 EUR; the glue cost 12.00. */
  @Test
  void offCutsSaveWhatTheReplacedGoodsCostOnceTheyAreReleasedAndUsed() {
    assertThat(savings(SIGNED, "", used(4))).containsExactly("48.00 EUR");
    assertThat(savings(SIGNED, "", used(2))).as("half of it").containsExactly("18.00 EUR");
    assertThat(savings("", "", used(4))).as("nobody has signed").isEmpty();
    assertThat(savings(SIGNED, "", "")).as("not used yet").isEmpty();
    assertThat(savings(SIGNED, ", bought: glue", used(4))).as("bought").isEmpty();
  }

  private static final String MEASURED =
      """
      budget: [{line: spars, title: Spars, amount: 140, remaining: 0}]
      kit: [{id: stave, what: stave, qty: 14 m, price: 10 EUR/m}]
      spending:
      """;

  @Test
  void moreThanPlannedIsToldByItsMeasureWithoutAWord() {
    assertThat(
            why(
                MEASURED
                    + """
                      - {id: a, on: 2026-02-02, line: spars, what: staves, amount: 120, state: paid, item: stave, qty: 12 m}
                      - {id: b, on: 2026-02-09, line: spars, what: staves, amount: 55, state: paid, item: stave, qty: 5 m}
                    """))
        .as("17 m for 14 m, the last five a euro dearer")
        .containsExactly("price 5.00 EUR", "quantity 30.00 EUR");
  }

  @Test
  void lessThanPlannedIsNoSavingWhileTheRestMayBeBought() {
    assertThat(
            why(
                MEASURED
                    + """
                      - {id: a, on: 2026-02-02, line: spars, what: staves, amount: 150, state: paid, item: stave, qty: 12 m}
                    """))
        .containsExactly("price 30.00 EUR", "rest -20.00 EUR");
  }

  @Test
  void whatTheTasksAskForIsPlannedTooAndGivenBackTakesFromWhatIsBeyond() {
    assertThat(
            why(
                """
                budget: [{line: resin, title: Resin, amount: 80, remaining: 0}]
                materials: [{id: resin, kind: resin, what: resin, density: 1100 kg/m3, price: 20 EUR/kg, source: invented}]
                tasks: [{id: glue, what: Glue, takes: 1 d, budget: resin, uses: [{material: resin, qty: 4 kg}]}]
                spending:
                  - {id: a, on: 2026-02-02, line: resin, what: resin, amount: 126, state: paid, material: resin, qty: 6 kg}
                  - {id: b, on: 2026-02-09, line: resin, what: one can back, amount: 21, state: refunded, refunds: a, qty: 1 kg}
                """))
        .as("5 kg kept at 21 for 4 kg at 20")
        .containsExactly("price 5.00 EUR", "quantity 20.00 EUR");
  }

  @Test
  void theWordOnTheRecordGoesBeforeTheMeasure() {
    assertThat(
            why(
                MEASURED
                    + """
                      - {id: a, on: 2026-02-02, line: spars, what: staves, amount: 140, state: paid, item: stave, qty: 14 m}
                      - {id: b, on: 2026-02-09, line: spars, what: staves, amount: 50, state: paid, item: stave, qty: 5 m, cause: forgotten}
                      - {id: c, on: 2026-02-10, line: spars, what: staves, amount: 10, state: paid, item: stave, qty: 1 m, cause: quantity}
                    """))
        .containsExactly("forgotten 50.00 EUR", "quantity 10.00 EUR");
  }

  @Test
  void anOrderAndItsPaymentsShareTheMeasureByTheirAmounts() {
    assertThat(
            why(
                MEASURED
                    + """
                      - {id: o, on: 2026-02-02, line: spars, what: staves, amount: 150, state: ordered, item: stave, qty: 14 m}
                      - {id: p, on: 2026-02-03, line: spars, what: part, amount: 60, state: paid, pays: o}
                      - {id: q, on: 2026-02-04, line: spars, what: the rest and a higher price, amount: 94, state: paid, pays: o}
                    """))
        .as("14 m for 154")
        .containsExactly("price 14.00 EUR");
  }

  private static final String TAKEN =
      """
      budget: [{line: a, title: A, amount: 900}]
      kit: [{id: stave, what: stave, qty: 14 m, price: 10 EUR/m}]
      stock: [{id: larch, what: larch, qty: 9 m}, {id: oak, what: oak, qty: 5 m}]
      tasks: [{id: t, what: T, takes: 1 d}, {id: u, what: U, takes: 1 d}]
      substitutions:
        - {id: sub, instead-of: {item: stave, qty: 10 m}, use: [{stock: larch, qty: 8 m}, {stock: oak, qty: 4 m}], hold: t, grade: finish, why: here, sign-offs: [{by: nora, on: 2026-02-12}]}
        - {id: other, instead-of: {item: stave, qty: 1 m}, use: [], grade: finish, why: here}
      spending: [{id: p, on: 2026-02-13, line: a, what: x, amount: 9, state: paid, substitution: other}]
      ---
      day: 2026-02-20
      used: [{stock: larch, qty: %s m%s}, {stock: oak, qty: %s m}]
      ---
      """;

  /** 10 m at 10 EUR, of which the share counts that went into the held work. */
  @ParameterizedTest
  @CsvSource({
    "8, '', 4, 100.00 EUR",
    "8, ', task: t', 4, 100.00 EUR",
    "8, ', task: u', 4, ''", // into other work
    "8, '', 1, 25.00 EUR", // the least of what it takes
    "2, '', 4, 25.00 EUR",
    "9, '', 4, 100.00 EUR" // no more than it takes
  })
  void offCutsSaveByTheLeastShareOfWhatWentIntoTheHeldWork(
      String larch, String task, String oak, String saved) {
    Ledger ledger = Sample.ledger(TAKEN.formatted(larch, task, oak));
    assertThat(Saving.byStock(Facts.of(ledger, Sample.TODAY)))
        .extracting(each -> each.amount().toString())
        .containsExactlyElementsOf(saved.isEmpty() ? List.of() : List.of(saved));
  }

  @Test
  void whatTakesNothingFromStockSavesNothing() {
    Ledger ledger =
        Sample.ledger(
            TAKEN
                .formatted(8, "", 4)
                .replace(
                    "use: [{stock: larch, qty: 8 m}, {stock: oak, qty: 4 m}]",
                    "use: [{item: stave, qty: 8 m}]"));
    assertThat(Saving.byStock(Facts.of(ledger, Sample.TODAY))).isEmpty();
  }

  /** A record that names its reason, or what it belongs to, does not use up the planned 14 m. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "because: s | shortage s 50.00 EUR",
        "cause: shortage | shortage 50.00 EUR",
        "substitution: sub | substitution sub 50.00 EUR",
        "cause: substitution | substitution 50.00 EUR",
        "repairs: saw | repair saw 50.00 EUR",
        "cause: forgotten | forgotten 50.00 EUR",
        "cause: quantity | quantity 50.00 EUR",
        "cause: price | quantity 50.00 EUR"
      })
  void eachReasonIsACauseOfItsOwn(String reason, String told) {
    assertThat(
            why(
                MEASURED
                    + """
                      - {id: a, on: 2026-02-02, line: spars, what: staves, amount: 50, state: paid, item: stave, qty: 5 m, %s}
                      - {id: b, on: 2026-02-09, line: spars, what: staves, amount: 140, state: paid, item: stave, qty: 14 m}
                    shortages: [{id: s, item: stave, qty: 9 m, found: 2026-01-24, cause: not-packed}]
                    substitutions: [{id: sub, instead-of: {item: stave, qty: 4 m}, use: [], grade: finish, why: larch is here}]
                    borrowed: [{id: saw, tool: saw, from: pell, on: 2026-02-01, condition: ok}]
                    """
                        .formatted(reason)))
        .containsExactly(told);
  }

  /** By day, and of one day by id: the last ones are those beyond what was planned. */
  @Test
  void purchasesUseUpWhatWasPlannedByTheirDaysWhateverTheOrderOfTheRecords() {
    assertThat(
            why(
                """
                budget: [{line: spars, title: Spars, amount: 140, remaining: 0}, {line: oars, title: Oars, amount: 0, remaining: 0}]
                kit: [{id: stave, what: stave, qty: 14 m, price: 10 EUR/m}]
                spending:
                  - {id: z, on: 2026-02-09, line: spars, what: staves, amount: 100, state: paid, item: stave, qty: 10 m}
                  - {id: y, on: 2026-02-09, line: oars, what: staves, amount: 20, state: paid, item: stave, qty: 2 m}
                  - {id: x, on: 2026-02-02, line: spars, what: staves, amount: 70, state: paid, item: stave, qty: 7 m}
                """))
        .as("7 m, 2 m, then 10 m of which 5 were planned")
        .containsExactly("quantity 50.00 EUR", "rest -20.00 EUR", "rest 20.00 EUR");
  }

  @Test
  void aWayOutAndARepairAreCausesOfTheLineTheyAreOn() {
    assertThat(
            why(
                """
                budget: [{line: a, title: A, amount: 0, remaining: 0}, {line: b, title: B, amount: 0, remaining: 0}]
                kit: [{id: stave, what: stave, qty: 14 m}]
                shortages: [{id: s, item: stave, qty: 9 m, found: 2026-01-24, cause: not-packed, line: b, options: [{kind: buy, cost: 30}]}]
                borrowed: [{id: saw, tool: saw, from: pell, on: 2026-02-01, condition: ok, repair: {what: bent, found: 2026-02-10, cost: 9, line: b}}]
                """))
        .containsExactly("shortage s 30.00 EUR", "repair saw 9.00 EUR");
  }

  /** Two claims ask for the same courier: his 25 come back once. */
  @Test
  void whatTwoClaimsAskComesBackOnce() {
    assertThat(
            why(
                BASE
                    + """
                    claims:
                      - {id: c, against: kit-maker, shortages: [short], sent: 2026-01-30, remedy: replacement, costs: [courier]}
                      - {id: d, against: kit-maker, shortages: [short], sent: 2026-01-31, remedy: replacement, costs: [courier]}
                    spending:
                      - {id: courier, on: 2026-02-02, line: spars, what: courier, amount: 25, state: paid, because: short}
                      - {id: knives, on: 2026-02-02, line: spars, what: knives, amount: 75, state: paid, because: short}
                    """))
        .containsExactly(
            "shortage short 100.00 EUR, of which 25.00 EUR by claim", "rest -100.00 EUR");
  }
}
