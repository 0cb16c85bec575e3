package kitwright.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import kitwright.value.Misread;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SayTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|0.00 EUR",
        "999.5|999.50 EUR",
        "9999.5|9 999.50 EUR",
        "10000|10 000.00 EUR",
        "1234567.89|1 234 567.89 EUR",
        "-12345.6|−12 345.60 EUR",
        "1234567 JPY|1 234 567 JPY"
      })
  void groupsDigitsByThree(String amount, String said) throws Misread {
    Money money = Money.parse(amount, Currency.getInstance("EUR"));
    assertThat(Say.money(money).replace('\u00a0', ' ')).isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource({
    "1,SHEET,1 sheet of ply",
    "2,SHEET,2 sheets of ply",
    "3,BOX,3 boxes of ply",
    "3,EACH,3 × ply",
    "1.50,M2,1.5 m² of ply",
    "0.25,KG,0.25 kg of ply"
  })
  void countsThings(String amount, Unit unit, String said) {
    assertThat(Say.so(Quantity.of(amount, unit), "ply").replace('\u00a0', ' ')).isEqualTo(said);
  }

  @Test
  void joinsListsAndNamesDays() {
    assertThat(Say.list(List.of())).isEmpty();
    assertThat(Say.list(List.of("a"))).isEqualTo("a");
    assertThat(Say.list(List.of("a", "b", "c"))).isEqualTo("a, b and c");
    assertThat(Say.day(LocalDate.of(2026, 3, 29))).isEqualTo("Sun 29 March 2026");
    assertThat(Say.days(1)).isEqualTo("1 day");
  }

  @Test
  void whatRunsCannotTellFromAllOrNoneIsSaidSo() {
    assertThat(Say.beyondRuns(1)).contains("above 99.9\u00a0%");
    assertThat(Say.beyondRuns(0.9995)).contains("above 99.9\u00a0%");
    assertThat(Say.beyondRuns(0.9994)).isEmpty();
    assertThat(Say.beyondRuns(0.0005)).isEmpty();
    assertThat(Say.beyondRuns(0.0004)).contains("below 0.1\u00a0%");
    assertThat(Say.beyondRuns(0)).contains("below 0.1\u00a0%");
  }
}
