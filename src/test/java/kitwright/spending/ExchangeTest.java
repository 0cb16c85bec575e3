package kitwright.spending;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Optional;
import kitwright.Sample;
import kitwright.value.Misread;
import kitwright.value.Money;
import org.junit.jupiter.api.Test;

class ExchangeTest {
  private static final Currency EUR = Currency.getInstance("EUR");
  private static final Exchange EXCHANGE =
      Exchange.of(
          Sample.ledger(
              """
              rates:
                - {on: 2026-01-20, from: NZD, to: EUR, rate: 0.54321}
                - {on: 2026-02-20, from: NZD, to: EUR, rate: 0.55}
                - {on: 2026-02-01, from: EUR, to: JPY, rate: 160}
                - {on: 2026-02-01, from: GBP, to: USD, rate: 1.25}
                - {on: 2026-02-01, from: USD, to: EUR, rate: 0.9}
              """));

  private static LocalDate day(String day) {
    return LocalDate.parse(day);
  }

  private static Money money(String text) {
    try {
      return Money.parse(text, EUR);
    } catch (Misread wrong) {
      throw new AssertionError(wrong);
    }
  }

  private static String home(String amount, String on) {
    return EXCHANGE
        .home(money(amount), day(on))
        .match(known -> known.result() + " " + known.quote().how(), none -> "no rate");
  }

  @Test
  void theLatestRateOnOrBeforeTheDayHolds() {
    assertThat(home("100 NZD", "2026-01-20")).isEqualTo("54.32 EUR DIRECT");
    assertThat(home("100 NZD", "2026-02-19")).isEqualTo("54.32 EUR DIRECT");
    assertThat(home("100 NZD", "2026-02-20")).isEqualTo("55.00 EUR DIRECT");
  }

  @Test
  void aRateWrittenTheOtherWayRoundDivides() {
    assertThat(home("1000 JPY", "2026-02-02")).isEqualTo("6.25 EUR INVERSE");
  }

  @Test
  void twoRatesMakeACrossRateThroughAThirdCurrency() {
    assertThat(home("100 GBP", "2026-02-02")).isEqualTo("112.50 EUR CROSS");
    assertThat(EXCHANGE.quote(money("1 GBP").currency(), EUR, day("2026-02-02")).get().via())
        .contains(Currency.getInstance("USD"));
  }

  @Test
  void aMissingRateIsAValue() {
    assertThat(home("100 NZD", "2026-01-19")).isEqualTo("no rate");
    assertThat(home("100 CHF", "2026-02-19")).isEqualTo("no rate");
  }

  @Test
  void theBuildsOwnCurrencyNeedsNoRate() {
    assertThat(home("46.20 EUR", "2025-01-01")).isEqualTo("46.20 EUR SAME");
  }

  @Test
  void aRateOnTheRecordGoesBeforeTheTable() {
    Conversion byRecord =
        EXCHANGE.home(money("100 NZD"), day("2026-02-20"), Optional.of(new BigDecimal("0.561234")));
    assertThat(byRecord.money().get()).hasToString("56.12 EUR");
  }

  @Test
  void theBudgetsRateIsThatOfTheStartOrTheFirstAfterIt() {
    assertThat(EXCHANGE.planned(money("1 NZD").currency()).get().of(money("100000 NZD")))
        .hasToString("54321.00 EUR");
  }
}
