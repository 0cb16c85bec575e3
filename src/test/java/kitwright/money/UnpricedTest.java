package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What nobody knows a price of counts as nothing in a forecast, which says so. */
class UnpricedTest {
  private static final String YAML =
      """
      budget: [{line: a, title: A, amount: 1000}, {line: b, title: B, amount: 1000}]
      kit: [{id: rail, what: rail, qty: 4, price: 20}]
      tasks: [{id: t, what: T, takes: 1 d, budget: a, uses: [{item: rail, qty: 4}]}]
      shortages: [{id: s, item: rail, qty: 2, found: 2026-02-02, cause: damaged%s}]
      """;

  private static final String LACKS =
      "nobody has said what it costs to get round the shortage s (at the kit’s price 40.00 EUR)";

  private static Facts day(String ways, String more) {
    return Facts.of(Sample.ledger(YAML.formatted(ways) + more), Sample.TODAY);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '|',
      value = {
        "||; true",
        "|, options: [{kind: buy}]|; true",
        "|, options: [{kind: wait}]|; false", // it costs nothing
        "|, options: [{kind: buy, cost: 50}]|; false",
        "|, options: [{kind: wait}, {kind: buy}], decided: {option: buy, on: 2026-02-03, by:"
            + " nora}|; true",
        "|, options: [{kind: buy, cost: 50}], decided: {option: paint, on: 2026-02-03, by: nora}|;"
            + " true",
      })
  void aMissingPartWithoutAWayOutOfWhichTheCostIsKnown(String ways, boolean lacks) {
    Facts day = day(ways, "");
    List<String> told = lacks ? List.of(LACKS) : List.of();
    assertThat(Lacks.ofForecast(day)).isEqualTo(told);
    assertThat(Lacks.ofForecast("a", day)).as("the line of its task").isEqualTo(told);
    assertThat(Lacks.ofForecast("b", day)).isEmpty();
    assertThat(Lacks.on(day)).as("what is spent is known").isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '|',
      value = {
        "|deliveries: [{id: d, sent: 2026-02-10, from: kit-maker, packed: [{item: rail, qty:"
            + " %d}]}]|",
        "|deliveries: [{id: d, received: 2026-02-10, from: kit-maker, counted: [{item: rail, qty:"
            + " 2}]}, {id: e, received: 2026-02-20, from: kit-maker, counted: [{item: rail, qty:"
            + " %d}]}]|",
        "|spending: [{id: o, on: 2026-02-10, line: a, what: rails, amount: 45, state: ordered,"
            + " item: rail, qty: %d, replaces: s}]|",
        "|claims: [{id: c, against: kit-maker, shortages: [s], sent: 2026-02-03, remedy:"
            + " replacement, events: [{on: 2026-02-05, what: promised, qty: %d, expect:"
            + " 2026-03-20}]}]|",
      })
  void whatIsHereOrOnItsWayIsPaidOrOrdered(String more) {
    assertThat(Lacks.ofForecast(day("", more.formatted(2)))).isEmpty();
    assertThat(Lacks.ofForecast(day("", more.formatted(1)))).as("one is not").hasSize(1);
  }

  @Test
  void aPromiseWhoseDayHasPassedBringsNothing() {
    String promise =
        "claims: [{id: c, against: kit-maker, shortages: [s], sent: 2026-02-03, remedy:"
            + " replacement, events: [{on: 2026-02-05, what: promised, expect: 2026-02-20}]}]";
    assertThat(Lacks.ofForecast(day("", promise))).hasSize(1);
  }

  @Test
  void whatATaskNeedsAndWhatARepairCostsWithoutAPrice() {
    Facts day =
        Facts.of(
            Sample.ledger(
                """
                budget: [{line: a, title: A, amount: 1000}, {line: b, title: B, amount: 1000}]
                kit: [{id: rail, what: rail, qty: 2, price: 20}, {id: knee, what: knee, qty: 2}]
                tasks: [{id: t, what: T, takes: 1 d, budget: a, uses: [{item: rail, qty: 4}, {item: knee, qty: 3}]}]
                borrowed: [{id: jig, tool: jigsaw, from: pell, on: 2026-02-01, condition: good, repair: {what: bent, found: 2026-02-03, line: b}}]
                """),
            Sample.TODAY);
    assertThat(Lacks.ofForecast("a", day)).containsExactly("nobody knows a price of 1 × knee");
    assertThat(Lacks.ofForecast("b", day))
        .containsExactly("nobody knows what it costs to make good jigsaw");
    assertThat(Lacks.ofForecast(day)).hasSize(2);
  }

  @Test
  void whatIsForecastOverSaysWhatItLacks() {
    String over = YAML.formatted("").replaceFirst("amount: 1000", "amount: 1000, remaining: 2100");
    List<String> words = Sample.words(new ForecastOverBudget(), over);
    assertThat(words).hasSize(2);
    assertThat(words)
        .allSatisfy(each -> assertThat(each).contains("As far as it can be told, ", LACKS));
  }
}
