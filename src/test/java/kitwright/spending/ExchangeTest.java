package kitwright.spending;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import kitwright.Sample;
import kitwright.ledger.Spend;
import kitwright.value.Misread;
import kitwright.value.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  /** By hand: what was paid at home, and from there by the order's rate, or the table's. */
  @ParameterizedTest
  @CsvSource({
    // order, its rate, payment, its rate, its day, asked on, is of the order
    "100 NZD, , 40 NZD, , 2025-01-01, 2025-01-01, 40.00 NZD",
    "100 EUR, , 40 NZD, 0.6, 2026-02-02, 2026-02-02, 24.00 EUR",
    "100 EUR, , 40 NZD, , 2026-02-20, 2026-03-01, 22.00 EUR",
    "100 NZD, 0.5, 36 EUR, , 2026-02-20, 2026-03-01, 72.00 NZD",
    "100 NZD, 0.5, 30 GBP, 1.2, 2026-02-20, 2026-03-01, 72.00 NZD",
    "100 NZD, 0.5, 30 GBP, , 2026-02-02, 2026-03-01, 67.50 NZD",
    "100 NZD, , 11 EUR, , 2026-02-21, 2026-03-01, 20.00 NZD",
    "100 NZD, 0, 11 EUR, , 2026-02-21, 2026-03-01, 20.00 NZD",
    "100 NZD, , 11 EUR, , 2026-01-01, 2026-03-01, 20.00 NZD",
    "100 NZD, , 11 EUR, , 2026-01-01, 2026-01-02, none",
    "100 NZD, 0.5, 30 GBP, , 2026-01-01, 2026-03-01, none",
    "100 CHF, , 11 EUR, , 2026-02-21, 2026-03-01, none",
  })
  void aPaymentInAnotherCurrencyIsWorthSoMuchOfItsOrder(
      String order,
      String orderRate,
      String paid,
      String paidRate,
      String on,
      String asked,
      String worth) {
    String records =
        """
        budget: [{line: kit, title: Kit, amount: 500}]
        spending:
          - {id: o, on: 2026-01-10, line: kit, what: sails, amount: %s%s, state: ordered}
          - {id: p, on: %s, line: kit, what: half, amount: %s%s, state: paid, pays: o}
        """
            .formatted(order, rate(orderRate), on, paid, rate(paidRate));
    List<Spend> spends = Sample.ledger(records).spending();
    assertThat(EXCHANGE.inOrder(spends.get(1), spends.get(0), day(asked)).map(Money::toString))
        .isEqualTo(Optional.of(worth).filter(each -> !each.equals("none")));
  }

  private static String rate(@Nullable String rate) {
    return rate == null ? "" : ", rate: " + rate;
  }
}
