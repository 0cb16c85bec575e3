package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import kitwright.value.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The risk example of a published guide. */
class CostSimulationPublishedTest {
  private static final CostRange RANGE =
      CostSimulation.run(
          List.of(
              Costs.item("design", "a", 4, 6, 10),
              Costs.item("build", "b", 16, 20, 35),
              Costs.item("test", "c", 11, 15, 23)),
          0,
          Map.of(),
          CostSimulation.RUNS,
          CostSimulation.SEED);

  @ParameterizedTest
  @CsvFileSource(resources = "cost-risk.csv", useHeadersInDisplayName = true)
  void theExampleComesOut(String what, double at, double value, double allow, String how) {
    double found =
        switch (what) {
          case "mean" -> Costs.mean(RANGE);
          case "deviation" -> Costs.deviation(RANGE);
          case "chance" ->
              RANGE.chanceWithin(
                  Money.rounded(BigDecimal.valueOf(at), Currency.getInstance("EUR")));
          default -> RANGE.within(at).amount();
        };
    assertThat(found).as(what + " " + at + ", " + how).isCloseTo(value, within(allow));
  }
}
