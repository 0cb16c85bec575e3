package kitwright.spending;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Currency;
import java.util.Map;
import kitwright.Sample;
import kitwright.value.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

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

  /**
   * The other way: eu-info.de, 5178 (40 EUR are 78.2332 DEM, so 78.23); stb-michael-mueller.de (500
   * EUR are 977.915 DEM, so 977.92: an exact half); wildnis-wandern.de, eu_kurs (12 EUR are
   * 23.46996 DEM, so 23.47).
   */
  @ParameterizedTest
  @CsvSource({"40, 78.23", "500, 977.92", "12, 23.47"})
  void eurosBecomeMarksByTheSameRate(BigDecimal euro, String marks) {
    Money amount = new Money(euro, Currency.getInstance("EUR"));
    assertThat(fixed().convert(amount, Currency.getInstance("DEM"), Sample.TODAY).money())
        .hasToString("Optional[" + marks + " DEM]");
  }

  /**
   * Article 4(3): no inverse rate. eu-info.de, 5178, names the inverse that must not be used, 1 DEM
   * = 0.511292 EUR: a million marks would be 511292.00 by it, and are 511291.88.
   */
  @Test
  void noInverseRateIsUsed() {
    Money million = new Money(new BigDecimal("1000000"), Currency.getInstance("DEM"));
    assertThat(fixed().home(million, Sample.TODAY).money().orElseThrow())
        .hasToString("511291.88 EUR");
  }

  /** fxtop.com, rules: 22.224 is 22.22, 22.226 is 22.23, 22.225 is 22.23. */
  @ParameterizedTest
  @CsvSource({"22.224, 22.22", "22.226, 22.23", "22.225, 22.23"})
  void theThirdDecimalDecides(BigDecimal amount, String rounded) {
    assertThat(Money.rounded(amount, Currency.getInstance("EUR"))).hasToString(rounded + " EUR");
  }

  /** Regulation (EC) 2866/98, Article 1, as it stands today, for what java.util.Currency knows. */
  private static final Map<String, String> RATES =
      Map.ofEntries(
          Map.entry("BEF", "40.3399"),
          Map.entry("DEM", "1.95583"),
          Map.entry("EEK", "15.6466"),
          Map.entry("GRD", "340.750"),
          Map.entry("ESP", "166.386"),
          Map.entry("FRF", "6.55957"),
          Map.entry("HRK", "7.53450"),
          Map.entry("IEP", "0.787564"),
          Map.entry("ITL", "1936.27"),
          Map.entry("CYP", "0.585274"),
          Map.entry("LVL", "0.702804"),
          Map.entry("LTL", "3.45280"),
          Map.entry("LUF", "40.3399"),
          Map.entry("MTL", "0.429300"),
          Map.entry("NLG", "2.20371"),
          Map.entry("ATS", "13.7603"),
          Map.entry("PTE", "200.482"),
          Map.entry("SIT", "239.640"),
          Map.entry("SKK", "30.1260"),
          Map.entry("FIM", "5.94573"));

  private static Exchange fixed() {
    StringBuilder yaml = new StringBuilder("rates:\n");
    RATES.forEach(
        (currency, rate) ->
            yaml.append("  - {on: 2026-01-01, from: EUR, to: ")
                .append(currency)
                .append(", rate: ")
                .append(rate)
                .append("}\n"));
    return Exchange.of(Sample.ledger(yaml.toString()));
  }

  /**
   * Every pair of the twenty currencies, through the euro kept to 30 decimals: “not less than
   * three” (Article 4(4)). The sum is done here in long division of whole numbers, not by the
   * product's classes.
   */
  @Test
  void everyCrossOfTheFixedRatesGoesThroughTheEuro() {
    Exchange exchange = fixed();
    for (String from : RATES.keySet()) {
      for (String to : RATES.keySet()) {
        if (!from.equals(to)) {
          Currency into = Currency.getInstance(to);
          BigInteger minor = BigInteger.valueOf(1_234_567);
          Currency of = Currency.getInstance(from);
          Money amount =
              new Money(new BigDecimal(minor, Math.max(0, of.getDefaultFractionDigits())), of);
          assertThat(exchange.convert(amount, into, Sample.TODAY).money().orElseThrow().amount())
              .as(from + " to " + to)
              .isEqualByComparingTo(cross(amount.amount(), RATES.get(from), RATES.get(to), into));
        }
      }
    }
  }

  private static BigDecimal cross(
      BigDecimal amount, @Nullable String from, @Nullable String to, Currency into) {
    int digits = Math.max(0, into.getDefaultFractionDigits());
    BigDecimal one = new BigDecimal(from);
    BigDecimal other = new BigDecimal(to);
    // amount · other / one in units of 10^-digits, doubled so that a half can be seen
    BigInteger upper =
        amount.unscaledValue().multiply(other.unscaledValue()).multiply(BigInteger.TWO);
    BigInteger lower = one.unscaledValue();
    int scale = amount.scale() + other.scale() - one.scale() - digits;
    BigInteger ten = BigInteger.TEN.pow(Math.abs(scale));
    BigInteger halves =
        scale > 0 ? upper.divide(lower.multiply(ten)) : upper.multiply(ten).divide(lower);
    BigInteger rounded = halves.add(BigInteger.ONE).divide(BigInteger.TWO);
    return new BigDecimal(rounded, digits);
  }
}
