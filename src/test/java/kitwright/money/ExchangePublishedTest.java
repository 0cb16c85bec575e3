package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Currency;
import kitwright.Sample;
import kitwright.value.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Conversions as the euro's Regulation and the pages that explain it print them, to the cent. */
class ExchangePublishedTest {
  @ParameterizedTest
  @CsvFileSource(resources = "euro-conversion.csv", useHeadersInDisplayName = true)
  void amountsBecomeEurosByTheFixedRates(
      BigDecimal amount, String currency, BigDecimal rate, BigDecimal euro) {
    Exchange exchange =
        Exchange.of(
            Sample.ledger(
                "rates: [{on: 2026-01-01, from: EUR, to: " + currency + ", rate: " + rate + "}]"));
    Money original = new Money(amount, Currency.getInstance(currency));
    assertThat(exchange.home(original, Sample.TODAY).money())
        .contains(new Money(euro, Currency.getInstance("EUR")));
  }

  /** euro-hellas.gr: “24.784 euro is 24.78, 24.785 euro is 24.79”. */
  @Test
  void anExactHalfIsRoundedUp() {
    Currency eur = Currency.getInstance("EUR");
    assertThat(Money.rounded(new BigDecimal("24.784"), eur)).hasToString("24.78 EUR");
    assertThat(Money.rounded(new BigDecimal("24.785"), eur)).hasToString("24.79 EUR");
  }

  /**
   * Article 4(4): from one national unit to another through the euro. 5000 GRD at 340.750 are
   * 14.67351… euro, at 239.640 SIT then 3516.36 SIT; by the rounded 14.67 euro it would be 3515.52.
   * Own arithmetic on the published rates.
   */
  @Test
  void aCrossRateKeepsTheDecimalsOfTheStepBetween() {
    Exchange exchange =
        Exchange.of(
            Sample.ledger(
                """
                rates:
                  - {on: 2026-01-01, from: EUR, to: GRD, rate: 340.750}
                  - {on: 2026-01-01, from: EUR, to: SIT, rate: 239.640}
                """));
    Money drachmas = new Money(new BigDecimal("5000"), Currency.getInstance("GRD"));
    assertThat(exchange.convert(drachmas, Currency.getInstance("SIT"), Sample.TODAY).money().get())
        .hasToString("3516.36 SIT");
  }
}
