package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Optional;
import kitwright.value.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Earned value as worked examples print it: money to the cent, indices to four decimals. */
class EarnedValuePublishedTest {
  private static final Currency EUR = Currency.getInstance("EUR");

  @ParameterizedTest
  @CsvFileSource(resources = "earned-value.csv", useHeadersInDisplayName = true)
  void workedExamplesComeOut(
      String name,
      BigDecimal budget,
      BigDecimal planned,
      BigDecimal earned,
      BigDecimal actual,
      String cv,
      String sv,
      String cpi,
      String spi,
      String byCost,
      String atBudgetRate,
      String byBoth,
      String toComplete,
      String variance,
      String tcpi) {
    EarnedValue ev = new EarnedValue(EUR, budget, planned, earned, actual);
    Money end = ev.endAtCostIndex().orElseThrow();
    assertThat(ev.costVariance()).hasToString(cv + " EUR");
    assertThat(ev.scheduleVariance()).hasToString(sv + " EUR");
    assertThat(four(ev.costIndex())).isEqualTo(cpi);
    assertThat(four(ev.scheduleIndex())).isEqualTo(spi);
    assertThat(end).hasToString(byCost + " EUR");
    assertThat(ev.endAtBudgetRate()).hasToString(atBudgetRate + " EUR");
    assertThat(ev.endAtBothIndices().orElseThrow()).hasToString(byBoth + " EUR");
    assertThat(ev.toComplete(end)).hasToString(toComplete + " EUR");
    assertThat(ev.varianceAtCompletion(end)).hasToString(variance + " EUR");
    assertThat(four(ev.toCompleteIndex(ev.atCompletion()))).isEqualTo(tcpi);
  }

  private static String four(Optional<BigDecimal> index) {
    return index.map(each -> each.setScale(4, RoundingMode.HALF_UP).toPlainString()).orElse("-");
  }
}
