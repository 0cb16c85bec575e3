package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.value.Money;
import kitwright.value.ThreePoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Statistics of a few ends whose answer can be written down.
 *
 * <p>The interval of a quantile by ranks r = np − 1.96 √(np (1 − p)) and 1 + np + 1.96 √(np (1 −
 * p)): Campbell and Gardner, “Calculating confidence intervals for some non-parametric analyses”,
 * British Medical Journal 296 (1988), from memory.
 */
class RangeByHandTest {
  private static final Currency EUR = Currency.getInstance("EUR");

  private static CostRange of(double... ends) {
    return CostRange.of(ends, List.of());
  }

  /** 1, 2, … 100, from the last to the first. */
  private static CostRange hundred() {
    return of(IntStream.rangeClosed(1, 100).mapToDouble(i -> 101 - i).toArray());
  }

  @ParameterizedTest
  @CsvSource({
    "0.5, 50, 41, 61", // 50 ± 9.8
    "0.9, 90, 85, 97", // 90 ± 5.88
    "0.005, 1, 1, 3", // 0.5 ± 1.38, and no rank below the first
    "0.99, 99, 98, 100", // and none beyond the last
    "1, 100, 100, 100"
  })
  void aQuantileIsTheEndOfItsRankWithTheRanksThatSamplingLeaves(
      double share, double amount, double from, double to) {
    assertThat(hundred().within(share)).isEqualTo(new CostRange.Quantile(amount, from, to));
    assertThat(hundred().within(share).money(EUR)).hasToString((int) amount + ".00 EUR");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1.0001, Double.NaN})
  void aShareLiesBetweenNoneAndAll(double share) {
    assertThatIllegalArgumentException().isThrownBy(() -> hundred().within(share));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "1, 0.01", "49.99, 0.49", "50, 0.50", "50.01, 0.5", "100, 1"})
  void theChanceCountsTheEndsThatAreNoDearer(double amount, double share) {
    assertThat(hundred().chanceWithin(Costs.euro(amount))).isEqualTo(share);
  }

  /** An end of 10.004 is told as 10.00, one of 10.005 as 10.01. */
  @Test
  void anEndIsHeldAgainstAnAmountAsItIsTold() {
    assertThat(of(10.004).chanceWithin(Costs.euro(10))).isEqualTo(1);
    assertThat(of(10.006).chanceWithin(Costs.euro(10))).isZero();
  }

  @Test
  void whatContributesMostStandsFirstAndEqualOnesByName() {
    CostRange.Contribution b = new CostRange.Contribution(Costs.item("b", "x", 1, 2, 3), 0.2);
    CostRange.Contribution a = new CostRange.Contribution(Costs.item("a", "x", 1, 2, 3), 0.2);
    CostRange.Contribution most = new CostRange.Contribution(Costs.item("c", "x", 1, 2, 9), 0.6);
    assertThat(CostRange.of(new double[] {1}, List.of(b, most, a)).contributions())
        .containsExactly(most, a, b);
  }

  @Test
  void aSimulationHasAtLeastOneRun() {
    List<CostItem> items = List.of(Costs.item("a", "x", 1, 2, 3));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CostSimulation.run(items, 0, Map.of(), 0, 1));
    assertThat(CostSimulation.run(items, 0, Map.of(), 1, 1).runs()).isEqualTo(1);
    assertThat(CostSimulation.run(items, 0, Map.of(), 1, 1).contributions().get(0).share())
        .as("of one run nothing can be told")
        .isZero();
  }

  /** One cost alone on its line has nothing to move with. */
  @Test
  void togetherMeansNothingForOneCost() {
    List<CostItem> items = List.of(Costs.item("a", "x", 1, 2, 3), Costs.item("b", "y", 1, 2, 3));
    CostRange alone = CostSimulation.run(items, 0, Map.of(), 5_000, 1);
    CostRange said = CostSimulation.run(items, 0, Map.of("x", 1.0, "y", 1.0), 5_000, 1);
    assertThat(said.within(0.7)).isEqualTo(alone.within(0.7));
  }

  /**
   * By hand: what is certain of the budget, the order and the decided way out is in every end;
   * three costs are not, by line and name.
   */
  @Test
  void whatIsCertainIsInEveryEndAndWhatIsNotIsDrawn() {
    CostRange range = range("together: 1");
    double certain = 200 + 40 + 7 + 8;
    assertThat(range.within(0.001).amount()).isBetween(certain + 14, certain + 24);
    assertThat(range.within(1).amount()).isBetween(certain + 24, certain + 42);
    assertThat(range.contributions())
        .extracting(each -> each.item().what())
        .containsExactlyInAnyOrder("still to come: Bow", "shortage t", "repair of jig");
    assertThat(spread(range))
        .as("two costs of a line move together")
        .isGreaterThan(spread(range("together: 0")));
  }

  private static double spread(CostRange range) {
    return range.within(0.9).amount() - range.within(0.1).amount();
  }

  private static CostRange range(String together) {
    Ledger ledger =
        Sample.ledger(
            """
            budget:
              - {line: b, title: Bow, amount: 500, remaining: [10, 20, 30]}
              - {line: a, title: Aft, amount: 500, remaining: 40, %s}
            kit: [{id: eye, what: eye, qty: 2}, {id: oar, what: oar, qty: 2}]
            shortages:
              - {id: s, item: eye, qty: 1, found: 2026-01-24, cause: not-packed, line: a, options: [{kind: buy, cost: 7}]}
              - {id: t, item: oar, qty: 1, found: 2026-01-24, cause: not-packed, line: a, options: [{kind: buy, cost: [3, 3, 6]}]}
            borrowed:
              - {id: saw, tool: saw, from: pell, on: 2026-02-01, condition: ok, repair: {what: bent, found: 2026-02-10, cost: 8, line: a}}
              - {id: jig, tool: jig, from: pell, on: 2026-02-01, condition: ok, repair: {what: bent, found: 2026-02-10, cost: [1, 2, 6], line: a}}
              - {id: axe, tool: axe, from: pell, on: 2026-02-01, condition: ok, repair: {what: bent, found: 2026-02-10}}
            spending: [{id: p, on: 2026-02-01, line: a, what: x, amount: 200, state: paid}]
            """
                .formatted(together));
    return CostRange.of(ledger, Account.on(Facts.of(ledger, Sample.TODAY)), 4_000, 1);
  }

  @Test
  void aCostIsCertainWhereAllItsOutcomesAreOneAmount() {
    assertThat(item(List.of(Costs.range(5, 5, 5))).isFixed()).isTrue();
    assertThat(item(List.of(Costs.range(5, 5, 5), Costs.range(5, 5, 5))).isFixed()).isTrue();
    assertThat(item(List.of(Costs.range(5, 5, 5), Costs.range(6, 6, 6))).isFixed()).isFalse();
    assertThat(item(List.of(Costs.range(5, 5, 5), Costs.range(5, 5, 6))).isFixed()).isFalse();
    assertThat(item(List.of(Costs.range(5, 6, 6))).isFixed()).isFalse();
  }

  private static CostItem item(List<ThreePoint<Money>> outcomes) {
    return new CostItem("a", "x", outcomes);
  }
}
