package kitwright.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Units and currencies against the published tables named in the files. */
class UnitPublishedTest {
  @ParameterizedTest(name = "{0} is {2} {1}")
  @CsvFileSource(resources = "/value/unit-factors.csv")
  void exactFactorsAreExact(String from, String to, BigDecimal factor, String where)
      throws Misread {
    Quantity converted = Quantity.parse(from, Unit.EACH).in(Unit.of(to).orElseThrow());
    assertThat(converted.amount()).as(where).isEqualByComparingTo(factor);
  }

  @ParameterizedTest(name = "{0} is {2} {1}")
  @CsvFileSource(resources = "/value/unit-factors-rounded.csv")
  void roundedFactorsAgreeToTheFiguresPrinted(String from, String to, double factor, double share)
      throws Misread {
    Quantity converted = Quantity.parse(from, Unit.EACH).in(Unit.of(to).orElseThrow());
    assertThat(converted.amount().doubleValue()).isCloseTo(factor, within(factor * share));
  }

  @ParameterizedTest(name = "{0} has {1} decimals")
  @CsvFileSource(resources = "/value/iso4217-minor-units.csv")
  void moneyHasTheMinorUnitsOfItsCurrency(String code, int minor) throws Misread {
    Currency currency = Money.currency(code);
    Money least = new Money(BigDecimal.ONE.movePointLeft(minor), currency);
    assertThat(Money.parse(least.toString(), currency)).isEqualTo(least);
    String finer = BigDecimal.ONE.movePointLeft(minor + 1).toPlainString() + " " + code;
    assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> Money.parse(finer, currency)))
        .isInstanceOf(Misread.class)
        .hasMessageContaining("more decimals than " + code + " has (" + minor + ")");
  }
}
