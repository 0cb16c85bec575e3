package kitwright.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Currency;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sums and differences of money, quantities and days, by hand. */
class ReckoningTest {
  private static final Currency EUR = Currency.getInstance("EUR");

  private static Money money(String text) throws Misread {
    return Money.parse(text, EUR);
  }

  private static Quantity qty(String text) throws Misread {
    return Quantity.parse(text, Unit.EACH);
  }

  @ParameterizedTest
  @CsvSource({
    "10, 4, 14.00 EUR, 6.00 EUR, 10.00 EUR, 4.00 EUR",
    "4, 10, 14.00 EUR, -6.00 EUR, 10.00 EUR, 4.00 EUR",
    "10, 0, 10.00 EUR, 10.00 EUR, 10.00 EUR, 0.00 EUR",
    "0, 4, 4.00 EUR, -4.00 EUR, 4.00 EUR, 0.00 EUR",
    "5, 5, 10.00 EUR, 0.00 EUR, 5.00 EUR, 5.00 EUR"
  })
  void moneyOfOneCurrencyAdds(
      String one, String other, String sum, String difference, String max, String min)
      throws Misread {
    assertThat(money(one).plus(money(other))).hasToString(sum);
    assertThat(money(one).minus(money(other))).hasToString(difference);
    assertThat(money(one).max(money(other))).hasToString(max);
    assertThat(money(one).min(money(other))).hasToString(min);
  }

  @Test
  void moneyOfTwoCurrenciesDoesNotEvenWhereItIsNone() throws Misread {
    for (Money other : new Money[] {money("4 NZD"), money("0 NZD")}) {
      Money euros = money("10 EUR");
      assertThatThrownBy(() -> euros.plus(other)).hasMessageContaining("EUR and NZD do not add");
      assertThatThrownBy(() -> euros.minus(other)).hasMessageContaining("do not add");
      assertThatThrownBy(() -> euros.compareAmount(other)).hasMessageContaining("do not add");
    }
  }

  @Test
  void moneyIsNegatedAndMultipliedHalfUp() throws Misread {
    assertThat(money("4.10").negated()).hasToString("-4.10 EUR");
    assertThat(money("0").negated()).hasToString("0.00 EUR");
    assertThat(money("4.10").times(new BigDecimal("0.5"))).hasToString("2.05 EUR");
    assertThat(money("0.05").times(new BigDecimal("0.5"))).hasToString("0.03 EUR");
    assertThat(Money.zero(EUR)).hasToString("0.00 EUR");
  }

  @ParameterizedTest
  @CsvSource({
    "31763.86, '31 763.86 EUR'",
    "2295.52, '2 295.52 EUR'",
    "-26121.99, '−26 121.99 EUR'",
    "999, 999.00 EUR",
    "1234567, '1 234 567.00 EUR'",
    "1500 JPY, '1 500 JPY'",
    "0, 0.00 EUR"
  })
  void moneyIsToldInGroupsOfThree(String amount, String told) throws Misread {
    assertThat(money(amount).told().replace('\u00a0', ' ')).isEqualTo(told);
  }

  @ParameterizedTest
  @CsvSource({
    "10 m, 4 m, 14 m, 6 m, 4 m",
    "4 m, 10 m, 14 m, 0 m, 4 m", // of a quantity no less than nothing is left
    "10 m, 50 cm, 10.5 m, 9.5 m, 50 cm",
    "10 m, 0 m, 10 m, 10 m, 0 m",
    "0 m, 4 m, 4 m, 0 m, 0 m",
    "0 m, 50 cm, 0.5 m, 0 m, 0 m",
    "5 m, 500 cm, 10 m, 0 m, 5 m"
  })
  void quantitiesAddInTheUnitOfTheFirst(
      String one, String other, String sum, String less, String min) throws Misread {
    assertThat(qty(one).plus(qty(other))).hasToString(sum);
    assertThat(qty(one).less(qty(other))).hasToString(less);
    assertThat(qty(one).min(qty(other))).hasToString(min);
  }

  @Test
  void whatDoesNotConvertIsNeverAdded() throws Misread {
    Quantity metres = qty("10 m");
    Quantity kilogrammes = qty("4 kg");
    assertThat(metres.convertsTo(kilogrammes)).isFalse();
    assertThat(metres.convertsTo(qty("4 ft"))).isTrue();
    assertThatThrownBy(() -> metres.plus(kilogrammes))
        .hasMessageContaining("kg does not convert to m");
    assertThatThrownBy(() -> metres.compareAmount(kilogrammes)).hasMessageContaining("convert");
    assertThat(qty("2 m").times(new BigDecimal("1.5"))).hasToString("3 m");
  }

  @ParameterizedTest
  @CsvSource({
    "26 m, 26 m, 26 m of oak",
    "4, 4, 4 × oak",
    "4 each, 4, 4 × oak",
    "3 %, 3 %, 3 % of oak"
  })
  void aQuantityIsToldOfItsThing(String written, String told, String of) throws Misread {
    assertThat(qty(written).told().replace('\u00a0', ' ')).isEqualTo(told);
    assertThat(qty(written).told("oak").replace('\u00a0', ' ')).isEqualTo(of);
  }

  @ParameterizedTest
  @CsvSource({
    "2026-04-02, false",
    "2026-04-03, true",
    "2026-04-06, true",
    "2026-04-07, false",
    "2026-04-01..2026-04-02, false",
    "2026-04-01..2026-04-03, true",
    "2026-04-04..2026-04-05, true",
    "2026-04-06..2026-04-09, true",
    "2026-04-07..2026-04-09, false",
    "2026-04-01..2026-04-30, true"
  })
  void daysOverlapWithTheirEnds(String other, boolean overlap) throws Misread {
    Days days = Days.parse("2026-04-03..2026-04-06");
    Days others = Days.parse(other);
    assertThat(days.overlaps(others)).isEqualTo(overlap);
    assertThat(others.overlaps(days)).isEqualTo(overlap);
    if (others.first().equals(others.last())) {
      assertThat(days.contains(others.first())).isEqualTo(overlap);
    }
  }

  @Test
  void oneDayIsToldAsOneAndMoreByTheirEnds() throws Misread {
    Days one = Days.parse("2026-04-03");
    Days four = Days.parse("2026-04-03..2026-04-06");
    assertThat(one).hasToString("2026-04-03");
    assertThat(four).hasToString("2026-04-03..2026-04-06");
    assertThat(one.named().replace('\u00a0', ' ')).isEqualTo("3 April 2026");
    assertThat(four.named().replace('\u00a0', ' ')).isEqualTo("3 April 2026 to 6 April 2026");
  }

  @ParameterizedTest
  @CsvSource({
    "1, 2, 3, true",
    "1, 1, 3, true",
    "1, 3, 3, true",
    "2, 1, 3, false",
    "1, 4, 3, false"
  })
  void threePointsThatDoNotRiseAreTheirMiddle(int low, int likely, int high, boolean rises) {
    ThreePoint<Integer> points = new ThreePoint<>(low, likely, high);
    assertThat(points.rising(Comparator.naturalOrder()))
        .isEqualTo(rises ? points : ThreePoint.fixed(likely));
    assertThat(points.isFixed()).isFalse();
    assertThat(ThreePoint.fixed(likely).isFixed()).isTrue();
  }

  @Test
  void aPriceIsOfItsUnitOrOfWhatIsCounted() throws Misread {
    Price bare = Price.parse("3 EUR", EUR);
    assertThat(bare.prices(qty("4"))).isTrue();
    assertThat(bare.prices(qty("4 roll"))).isTrue();
    assertThat(bare.prices(qty("4 m"))).isFalse();
    assertThat(bare.forOneOf(Unit.M))
        .isEqualTo(new Price(new BigDecimal("3"), EUR, Optional.of(Unit.M)));
    Price perFoot = Price.parse("3 EUR/ft", EUR);
    assertThat(perFoot.forOneOf(Unit.M)).as("it says of what").isEqualTo(perFoot);
    assertThat(perFoot.prices(qty("4 m"))).isTrue();
    assertThat(perFoot.prices(qty("4 kg"))).isFalse();
    assertThat(perFoot).hasToString("3 EUR/ft");
    assertThat(bare).hasToString("3 EUR");
  }

  @ParameterizedTest
  @CsvSource({"task, a task, Task", "assessment, an assessment, Assessment", "item, an item, Item"})
  void wordsBeginASentence(String word, String withArticle, String capital) {
    assertThat(Word.withArticle(word)).isEqualTo(withArticle);
    assertThat(Word.capital(word)).isEqualTo(capital);
  }

  @Test
  void aUnitBelongsToTheNumberBeforeIt() {
    assertThat(Unit.belongsTo("26", "m")).isTrue();
    assertThat(Unit.belongsTo("26", "m,")).isTrue();
    assertThat(Unit.belongsTo("26", "m”).")).isTrue();
    assertThat(Unit.belongsTo("26", "metres-long")).isFalse();
    assertThat(Unit.belongsTo("", "m")).isFalse();
    assertThat(Unit.belongsTo("of", "m")).isFalse();
    assertThat(Unit.belongsTo("26", ",")).isFalse();
  }
}
