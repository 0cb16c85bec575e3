package kitwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts of one thing in units that do not convert into each other. */
class UnitsApartTest {
  private static final UnitsApart RULE = new UnitsApart();
  private static final String THINGS =
      """
      budget: [{line: l, title: L, amount: 900}]
      kit:
        - {id: rope, what: rope, qty: 14 m}
        - {id: bolt, what: bolt, qty: 4}
      stock:
        - {id: glue, what: glue, qty: 3 kg}
        - {id: larch, what: larch, size: 2450 x 110 x 32 mm, pieces: 5}
      """;
  private static final String SHORT =
      """
      shortages:
        - {id: s, item: rope, qty: 6 m, found: 2026-02-02, cause: not-packed}
        - {id: t, item: bolt, qty: 2, found: 2026-02-02, cause: not-packed}
      """;

  private static List<String> told(String yaml) {
    return Sample.findings(RULE, THINGS + yaml).stream().map(Finding::what).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '|',
      value = {
        "deliveries: [{id: d, expected: 2026-04-01, from: kit-maker, packed: [{item: rope, qty:"
            + " #}]}]",
        "deliveries: [{id: d, received: 2026-02-01, from: kit-maker, counted: [{item: rope, qty:"
            + " #}]}]",
        "deliveries: [{id: d, received: 2026-02-01, from: kit-maker, counted: [{item: rope, qty: 9"
            + " m, damaged: #}]}]",
        "deliveries: [{id: d, received: 2026-02-01, from: kit-maker, counted: [{item: rope, qty: 9"
            + " m, wrong: #}]}]",
        "deliveries: [{id: d, received: 2026-02-01, from: kit-maker, counted: [{item: rope, qty: 9"
            + " m, undersize: #}]}]",
        "deliveries: [{id: d, received: 2026-02-01, from: kit-maker, counted: [{item: rope, qty: 9"
            + " m}], sent-back: [{on: 2026-02-02, item: rope, qty: #}]}]",
        "shortages: [{id: s, item: rope, qty: #, found: 2026-02-02, cause: not-packed}]",
        "substitutions: [{id: b, instead-of: {item: rope, qty: #}, grade: finish, why: w}]",
        "substitutions: [{id: b, instead-of: {what: w, qty: 1}, use: [{item: rope, qty: #}], grade:"
            + " finish, why: w}]",
        "tasks: [{id: a, what: A, takes: 1 d, uses: [{item: rope, qty: #}]}]",
        "spending: [{id: p, on: 2026-02-03, line: l, what: w, amount: 9, state: paid, item: rope,"
            + " qty: #}]"
      })
  void whatIsSaidOfAnItemIsInItsUnit(String record) {
    assertThat(told(record.replace("#", "2 ft") + "\n")).isEmpty();
    assertThat(told(record.replace("#", "2 kg") + "\n"))
        .containsExactly("Here stands 2 kg, but kit item rope is reckoned in “m”.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '|',
      value = {
        "tasks: [{id: a, what: A, takes: 1 d, uses: [{stock: glue, qty: #}]}]",
        "substitutions: [{id: b, instead-of: {what: w, qty: 1}, use: [{stock: glue, qty: #}],"
            + " grade: finish, why: w}]"
      })
  void whatIsSaidOfStockIsInItsUnit(String record) {
    assertThat(told(record.replace("#", "200 g") + "\n")).isEmpty();
    assertThat(told(record.replace("#", "2 m") + "\n"))
        .containsExactly("Here stands 2 m, but stock glue is reckoned in “kg”.");
  }

  @Test
  void aFindingTellsWhereAndWhatToWrite() {
    String log =
        "---\nday: 2026-02-20\nused: [{item: rope, qty: 2 kg}, {stock: glue, qty: 2}]\n---\n";
    assertThat(Sample.words(RULE, THINGS + log))
        .containsExactly(
            """
            STOP units-apart 10
            Here stands 2 kg, but kit item rope is reckoned in “m”.
            Neither converts into the other, so this amount is left out of every sum.
            Write it in “m”, or correct the item’s own unit.
            log day 2026-02-20, kit item rope\
            """,
            """
            STOP units-apart 10
            Here stands 2 each, but stock glue is reckoned in “kg”.
            Neither converts into the other, so this amount is left out of every sum.
            Write it in “kg”.
            log day 2026-02-20, stock glue\
            """);
  }

  @Test
  void aPriceIsForTheUnitOfItsItem() {
    assertThat(Sample.words(RULE, "kit: [{id: r, what: rope, qty: 14 m, price: 3 EUR/m}]"))
        .isEmpty();
    assertThat(Sample.words(RULE, "kit: [{id: r, what: rope, qty: 14 m, price: 3 EUR/kg}]"))
        .containsExactly(
            """
            STOP units-apart 1
            The price is for one kg, but kit item r is reckoned in “m”.
            Neither converts into the other, so this amount is left out of every sum.
            Write it in “m”, or correct the item’s own unit.
            kit item r\
            """);
  }

  @Test
  void piecesThatWereSawnUpAreCounted() {
    String cut =
        "cuts: [{id: c, from: [%s], kerf: 3 mm, done: 2026-02-10, used: [{stock: %s, pieces: 2}],"
            + " parts: [{mark: a, length: 400 mm}]}]\n";
    assertThat(told(cut.formatted("larch", "larch"))).isEmpty();
    assertThat(Sample.words(RULE, THINGS + cut.formatted("glue", "glue")))
        .containsExactly(
            """
            STOP units-apart 8
            Here stands 2 each, but stock glue is reckoned in “kg”.
            Neither converts into the other, so this amount is left out of every sum.
            Write what it took into the log of that day, in “kg”, and leave it out here.
            cut c, stock glue\
            """);
  }

  @Test
  void whatAClaimSaysOfAShortageIsInTheUnitOfTheShortage() {
    String claim =
        SHORT
            + "claims: [{id: c, against: kit-maker, sent: 2026-02-03, remedy: replacement, %s}]\n";
    assertThat(
            told(
                claim.formatted(
                    "shortages: [{shortage: s, qty: 2 ft, settled: [{on: 2026-02-04, how: replaced,"
                        + " qty: 1 m}]}], events: [{on: 2026-02-04, what: promised, qty: 1 m}]")))
        .isEmpty();
    assertThat(told(claim.formatted("shortages: [{shortage: s, qty: 2 kg}]")))
        .containsExactly("Here stands 2 kg, but shortage s is reckoned in “m”.");
    assertThat(
            told(
                claim.formatted(
                    "shortages: [{shortage: s, settled: [{on: 2026-02-04, how: replaced, qty:"
                        + " 2}]}]")))
        .containsExactly("Here stands 2 each, but shortage s is reckoned in “m”.");
    String event = "shortages: [s, t], events: [{on: 2026-02-04, what: promised, qty: 2%s}]";
    assertThat(told(claim.formatted(event.formatted(", of: [t]")))).isEmpty();
    assertThat(Sample.words(RULE, THINGS + claim.formatted(event.formatted(""))))
        .containsExactly(
            """
            STOP units-apart 11
            Here stands 2 each, but shortage s is reckoned in “m”.
            Neither converts into the other, so this amount is left out of every sum.
            Write it in “m”; an event that is about some of the shortages only names them under \
            “of”.
            claim c, shortage s\
            """);
  }

  @Test
  void whatASpendReplacesIsInTheUnitOfTheShortage() {
    String spend =
        SHORT
            + "spending: [{id: p, on: 2026-02-03, line: l, what: w, amount: 9, state: paid,"
            + " replaces: s, qty: %s}]\n";
    assertThat(told(spend.formatted("2 m"))).isEmpty();
    assertThat(told(spend.formatted("2 kg")))
        .containsExactly("Here stands 2 kg, but shortage s is reckoned in “m”.");
    assertThat(told(spend.formatted("2 kg, item: rope")))
        .containsExactly("Here stands 2 kg, but kit item rope is reckoned in “m”.");
  }

  @Test
  void piecesAreReckonedInEach() {
    assertThat(told("---\nday: 2026-02-20\nused: [{item: bolt, qty: 2 m}]\n---\n"))
        .containsExactly("Here stands 2 m, but kit item bolt is reckoned in “each”.");
  }
}
