package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CostSimulationTest {
  private static final int RUNS = CostSimulation.RUNS;
  private static final List<double[]> THREE =
      List.of(new double[] {4, 6, 10}, new double[] {16, 20, 35}, new double[] {11, 15, 23});

  private static CostRange run(List<CostItem> items, Map<String, Double> together, long seed) {
    return CostSimulation.run(items, 0, together, RUNS, seed);
  }

  private static List<CostItem> three(String... lines) {
    return List.of(
        Costs.item("a", lines[0], 4, 6, 10),
        Costs.item("b", lines[1], 16, 20, 35),
        Costs.item("c", lines[2], 11, 15, 23));
  }

  /**
   * By exact convolution, within four standard errors: about 0.09 at P80. The normal short cut is
   * 0.15 off there and would fail.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.10, 0.25, 0.50, 0.80, 0.90})
  void quantilesAgreeWithExactConvolution(double share) {
    Convolution exact = Convolution.of(THREE, 0.005);
    double expected = exact.quantile(share);
    for (long seed = 1; seed <= 3; seed++) {
      CostRange range = run(three("x", "y", "z"), Map.of(), seed);
      CostRange.Quantile found = range.within(share);
      double standardError = (found.to() - found.from()) / (2 * 1.96);
      assertThat(standardError).isBetween(0.005, 0.05);
      assertThat(found.amount()).isCloseTo(expected, within(4 * standardError + 0.005));
    }
  }

  @Test
  void chancesAgreeWithExactConvolution() {
    Convolution exact = Convolution.of(THREE, 0.005);
    CostRange range = run(three("x", "y", "z"), Map.of(), 7);
    for (double amount : new double[] {38, 41, 46, 50, 55}) {
      double below = exact.below(amount);
      assertThat(range.chanceWithin(Costs.euro(amount)))
          .isCloseTo(below, within(4 * Math.sqrt(below * (1 - below) / RUNS)));
    }
  }

  @Test
  void aNormalInPlaceOfTheSumWouldBeSeen() {
    double expected = Convolution.of(THREE, 0.005).quantile(0.8);
    double shortCut =
        NormalDistribution.of(140.0 / 3, Math.sqrt(24.5)).inverseCumulativeProbability(0.8);
    CostRange.Quantile found = run(three("x", "y", "z"), Map.of(), 1).within(0.8);
    double standardError = (found.to() - found.from()) / (2 * 1.96);
    assertThat(Math.abs(shortCut - expected)).isGreaterThan(4 * standardError + 0.005);
  }

  @Test
  void oneCostHasTheQuantilesOfItsTriangle() {
    TriangularDistribution oracle = TriangularDistribution.of(200, 320, 600);
    Triangle triangle = new Triangle(200, 320, 600);
    for (double share = 0.001; share < 1; share += 0.037) {
      assertThat(triangle.quantile(share))
          .isCloseTo(oracle.inverseCumulativeProbability(share), within(1e-9));
    }
  }

  @Test
  void rightAngledAndFixedTrianglesHaveQuantilesToo() {
    assertThat(new Triangle(0, 0, 100).quantile(0.75)).isCloseTo(50, within(1e-12));
    assertThat(new Triangle(0, 100, 100).quantile(0.25)).isCloseTo(50, within(1e-12));
    assertThat(new Triangle(5, 5, 5).quantile(0.3)).isEqualTo(5);
  }

  /**
   * Costs that move wholly together have the sum of their quantiles for the quantile of the sum.
   */
  @Test
  void whollyTogetherQuantilesAddUp() {
    CostRange range = run(three("x", "x", "x"), Map.of("x", 1.0), 1);
    for (double share : new double[] {0.1, 0.5, 0.9}) {
      double sum = 0;
      for (double[] t : THREE) {
        sum += new Triangle(t[0], t[1], t[2]).quantile(share);
      }
      CostRange.Quantile found = range.within(share);
      assertThat(found.amount()).isCloseTo(sum, within(2 * (found.to() - found.from())));
    }
  }

  @Test
  void theMoreTogetherTheWiderAndTheMeanStays() {
    double alone = Costs.deviation(run(three("x", "x", "x"), Map.of("x", 0.0), 1));
    double half = Costs.deviation(run(three("x", "x", "x"), Map.of("x", 0.5), 1));
    double whole = Costs.deviation(run(three("x", "x", "x"), Map.of("x", 1.0), 1));
    assertThat(alone).isCloseTo(Math.sqrt(24.5), within(0.05));
    assertThat(half).isBetween(alone + 1, whole - 0.5);
    assertThat(Costs.mean(run(three("x", "x", "x"), Map.of("x", 0.5), 1)))
        .isCloseTo(140.0 / 3, within(0.08));
  }

  @Test
  void waysOutAreEquallyLikely() {
    CostItem either =
        new CostItem("short", "x", List.of(Costs.range(0, 0, 0), Costs.range(100, 100, 100)));
    assertThat(run(List.of(either), Map.of(), 1).chanceWithin(Costs.euro(50)))
        .isCloseTo(0.5, within(4 * 0.00158));
  }

  /** Of independent costs each contributes its share of the variance: 1.5556, 16.7222, 6.2222. */
  @Test
  void contributionsAreSharesOfTheVarianceAndAddUpToOne() {
    CostRange range = run(three("x", "y", "z"), Map.of(), 1);
    assertThat(range.contributions())
        .extracting(each -> each.item().what())
        .containsExactly("b", "c", "a");
    assertThat(range.contributions().get(0).share()).isCloseTo(16.7222 / 24.5, within(0.01));
    assertThat(range.contributions().stream().mapToDouble(CostRange.Contribution::share).sum())
        .isCloseTo(1, within(1e-9));
  }

  @Test
  void oneSeedGivesOneAnswerHoweverManyShareTheWork() throws Exception {
    CostRange shared = run(three("x", "x", "z"), Map.of("x", 0.4), 1);
    ForkJoinPool alone = new ForkJoinPool(1);
    try {
      CostRange single = alone.submit(() -> run(three("x", "x", "z"), Map.of("x", 0.4), 1)).get();
      for (double share : new double[] {0.1, 0.5, 0.8, 0.9}) {
        assertThat(single.within(share)).isEqualTo(shared.within(share));
      }
    } finally {
      alone.shutdown();
    }
    assertThat(run(three("x", "x", "z"), Map.of("x", 0.4), 2).within(0.5))
        .isNotEqualTo(shared.within(0.5));
  }

  @Test
  void aLedgersRangeStartsFromWhatIsCommitted() {
    Ledger ledger =
        Sample.ledger(
            """
            budget:
              - {line: spars, title: Spars, amount: 1450, remaining: [200, 320, 600], together: 0.5}
              - {line: tools, title: Tools, amount: 100}
            kit: [{id: stave, what: stave, qty: 4 m}]
            shortages:
              - id: short
                item: stave
                qty: 4 m
                found: 2026-01-24
                cause: not-packed
                line: spars
                options: [{kind: wait}, {kind: buy, cost: [90, 110, 140]}]
            spending:
              - {id: p, on: 2026-02-01, line: spars, what: spruce, amount: 900, state: paid}
            """);
    CostRange range = CostRange.of(ledger, Account.on(Facts.of(ledger, Sample.TODAY)));
    assertThat(range.runs()).isEqualTo(100_000);
    assertThat(range.within(0.0001).amount()).isBetween(1200.0, 1215.0);
    assertThat(range.within(1).amount()).isBetween(1700.0, 1740.0);
    assertThat(Costs.mean(range)).isCloseTo(900 + 100 + 1120.0 / 3 + 340.0 / 6, within(2.0));
    assertThat(range.contributions()).hasSize(2);
  }

  /**
   * By hand: the forecast takes 320 and the cheapest way out, 0; the ranges cost 1120 / 3 on
   * average, the two ways out 340 / 6.
   */
  @Test
  void theAverageEndIsTheForecastAndWhatEachCostLeans() {
    Ledger ledger =
        Sample.ledger(
            """
            budget: [{line: spars, title: Spars, amount: 1450, remaining: [200, 320, 600]}]
            kit: [{id: stave, what: stave, qty: 4 m}]
            shortages:
              - id: short
                item: stave
                qty: 4 m
                found: 2026-01-24
                cause: not-packed
                line: spars
                options: [{kind: wait}, {kind: buy, cost: [90, 110, 140]}]
            """);
    Account account = Account.on(Facts.of(ledger, Sample.TODAY));
    CostRange range = CostRange.of(ledger, account);
    assertThat(range.contributions())
        .extracting(each -> each.item().what() + " " + each.item().leaning())
        .containsExactlyInAnyOrder("still to come: Spars 53.33 EUR", "shortage short 56.67 EUR");
    double average = account.whole().forecast().amount().doubleValue() + 53.33 + 56.67;
    double fourErrors = 4 * Costs.deviation(range) / Math.sqrt(range.runs());
    assertThat(Costs.mean(range)).isCloseTo(average, within(fourErrors));
    assertThat(fourErrors).as("small enough to tell").isLessThan(2.0);
  }

  @Test
  void nothingUncertainIsCertain() {
    CostRange range = CostSimulation.run(List.of(), 1450, Map.of(), RUNS, 1);
    assertThat(range.within(0.1).amount()).isEqualTo(1450);
    assertThat(range.chanceWithin(Costs.euro(1450))).isEqualTo(1);
    assertThat(range.chanceWithin(Costs.euro(1449.99))).isZero();
  }
}
