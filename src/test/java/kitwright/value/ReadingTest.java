package kitwright.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Values as a builder writes them. */
class ReadingTest {
  private static final Currency EUR = Currency.getInstance("EUR");

  @ParameterizedTest
  @CsvSource({
    "26 m, 26 m",
    "1.2 kg, 1.2 kg",
    "4 sheets, 4 sheet",
    "14, 14 each",
    "3.50 m, 3.5 m",
    ".5 l, 0.5 l",
    "012, 12 each",
    "12 %, 12 %",
    "1 roll, 1 roll",
    "60%, 60 %"
  })
  void quantitiesAreReadAndWrittenBack(String written, String read) throws Misread {
    assertThat(Quantity.parse(written, Unit.EACH)).hasToString(read);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1_000",
        "190:20:30",
        "1e3",
        "0x1F",
        "NaN",
        ".inf",
        "yes",
        "4 furlong",
        "-1 m",
        "--4",
        "1.2.3 m",
        "",
        "m",
        "1,5 m"
      })
  void whatYamlWouldGuessAtIsRefused(String written) {
    assertThatThrownBy(() -> Quantity.parse(written, Unit.EACH)).isInstanceOf(Misread.class);
  }

  /** NIST Handbook 44, Appendix C: 12 inches a foot, 25.4 mm an inch exactly. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3/4 in | 19.05",
        "1/8 in | 3.175",
        "23 7/16 in | 595.3125",
        "23-7/16 in | 595.3125",
        "8 ft 3 1/2 in | 2527.3",
        "8 ft 3 in | 2514.6",
        "5' 3\" | 1600.2",
        "5' | 1524",
        "8.5 ft | 2590.8"
      })
  void lengthsAreReadAsATapeShowsThem(String written, String millimetres) throws Misread {
    Quantity read = Quantity.parse(written, Unit.ONE, Dimension.LENGTH).in(Unit.MM);
    assertThat(read.amount()).isEqualByComparingTo(millimetres);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1/3 in", "1/0 in", "3/4 kg", "3/4", "1/2048 in", "1/ in", "/4 in"})
  void whatNoTapeShowsIsRefused(String written) {
    assertThatThrownBy(() -> Quantity.parse(written, Unit.ONE, Dimension.LENGTH))
        .isInstanceOf(Misread.class);
  }

  /** NIST SP 811, 2008, Appendix B.8: psi, lbf/in2, kgf/mm2, bar. */
  @ParameterizedTest
  @CsvSource({
    "1.8e6 psi, 12.410563127703050",
    "1.8E+6 lb/in2, 12.410563127703050",
    "40 N/mm², 0.04",
    "12 kN/mm², 12",
    "4 kgf/mm2, 0.0392266",
    "100 bar, 0.01"
  })
  void stressesAreReadInEachUnitOfTheTrade(String written, double gigapascal) throws Misread {
    assertThat(Quantity.parse(written, Unit.ONE, Dimension.STRESS).base() / 1e9)
        .isCloseTo(gigapascal, org.assertj.core.data.Offset.offset(1e-12));
  }

  /** A hint must never be another size: one letter makes a thousand of one. */
  @ParameterizedTest
  @CsvSource({
    "12 mpa, did you mean “MPa”?",
    "3 metrs, did you mean “metre”?",
    "4 tons/mm2, 'write it in one of: mm, cm, m, in, ft, yd'",
    "4 nm, 'write it in one of: mm, cm, m, in, ft, yd'",
    "4 mn, 'write it in one of: mm, cm, m, in, ft, yd'"
  })
  void aHintIsASpellingAwayAndNoMore(String written, String mend) {
    Dimension wanted = written.contains("pa") ? Dimension.STRESS : Dimension.LENGTH;
    assertThatThrownBy(() -> Quantity.parse(written, Unit.ONE, wanted))
        .isInstanceOfSatisfying(
            Misread.class, misread -> assertThat(misread.mend()).isEqualTo(mend));
  }

  /** What lacks a power, or writes it otherwise, is the same size and no other. */
  @ParameterizedTest
  @CsvSource({
    "STRESS, 12 N/mm, N/mm2",
    "STRESS, 12 kN/mm, kN/mm2",
    "STRESS, 12 N/mm^2, N/mm2",
    "STRESS, 12 lbf/in, lbf/in2",
    "DENSITY, 12 kg/m^3, kg/m3",
    "AREA, 12 sq mm, mm2",
    "AREA, 12 mm^2, mm2",
    "MOMENT, 12 N.m, Nm",
    "LINEAR_LOAD, 12 N/mm, ''",
    "STRESS, 12 N/mm3, ''"
  })
  void aPowerIsASpelling(Dimension wanted, String written, String near) {
    assertThatThrownBy(() -> Quantity.parse(written, Unit.ONE, wanted))
        .isInstanceOfSatisfying(
            Misread.class,
            misread ->
                assertThat(misread.mend().startsWith("did you mean “" + near + "”?"))
                    .as(misread.mend())
                    .isEqualTo(!near.isEmpty()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.312,40 EUR | write 1312.40 EUR",
        "1,312.40 EUR | write 1312.40 EUR",
        "6,5 EUR | write 6.5 EUR",
        "1,500 EUR | write 1500 EUR if thousands are meant, else 1.500 EUR"
      })
  void aCommaIsAnsweredWithTheNumberMeant(String written, String mend) {
    assertThatThrownBy(() -> Money.parse(written, EUR))
        .isInstanceOfSatisfying(
            Misread.class, misread -> assertThat(misread.mend()).isEqualTo(mend));
  }

  @Test
  void whatIsNoNumberIsAnsweredWithOneOfItsKind() {
    assertThatThrownBy(() -> Quantity.parse("overnight", Unit.HOUR, Dimension.TIME))
        .hasMessage("“overnight” is not a time")
        .isInstanceOfSatisfying(
            Misread.class,
            misread ->
                assertThat(misread.mend()).isEqualTo("write a number and a unit, such as 12 h"));
  }

  @Test
  void aMisspeltUnitIsAnsweredWithTheNearest() {
    assertThatThrownBy(() -> Quantity.parse("3 sheeet", Unit.EACH))
        .isInstanceOfSatisfying(
            Misread.class, misread -> assertThat(misread.mend()).contains("“sheet”"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"25 | “25” has no unit", "25 kg | “25 kg” is mass, not length"})
  void anotherDimensionIsNamedAndNoneIsCalledNone(String written, String told) {
    assertThatThrownBy(() -> Quantity.parse(written, Unit.ONE, Dimension.LENGTH))
        .hasMessage(told)
        .isInstanceOfSatisfying(
            Misread.class, misread -> assertThat(misread.mend()).contains("mm"));
  }

  @ParameterizedTest
  @CsvSource({"0, 0 days, today", "1, 1 day, 1 day ago", "12, 12 days, 12 days ago"})
  void daysAreToldAsAPersonSaysThem(long days, String told, String ago) {
    assertThat(Days.told(days)).isEqualTo(told);
    assertThat(Days.ago(days)).isEqualTo(ago);
  }

  @Test
  void packagesConvertIntoNothing() throws Misread {
    Quantity sheets = Quantity.parse("3 sheet", Unit.EACH);
    assertThat(sheets.convertsTo(Quantity.of("3", Unit.ROLL))).isFalse();
    assertThat(sheets.convertsTo(Quantity.of("3", Unit.EACH))).isFalse();
    assertThatThrownBy(() -> sheets.in(Unit.EACH)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void sizesAreInMillimetresWhateverTheyWereWrittenIn() throws Misread {
    assertThat(Size.parse("1850 x 310 x 25 mm")).hasToString("1850 x 310 x 25 mm");
    assertThat(Size.parse("8 x 4 ft")).hasToString("2438.4 x 1219.2 mm");
    assertThat(Size.parse("72 in × 12 in × 1 in")).hasToString("1828.8 x 304.8 x 25.4 mm");
    for (String wrong :
        List.of(
            "1850",
            "1850 x 0 x 25 mm",
            "1 x 2 x 3 x 4 mm",
            "a x b mm",
            "1850 x 310 x 25",
            "1850 x 310 x 25 kg")) {
      assertThatThrownBy(() -> Size.parse(wrong)).isInstanceOf(Misread.class);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "100 EUR plus VAT | write what was paid in all, with the tax in it; a spend names the tax"
            + " alone under “tax”",
        "100 EUR net | write what was paid in all, with the tax in it; a spend names the tax alone"
            + " under “tax”",
        "100 EUR a metre | write the amount and its currency alone; what else there is to say goes"
            + " into another key",
        "100 euro | write its three capital letters, such as EUR, NZD or JPY"
      })
  void wordsBehindAnAmountAreNotDropped(String written, String mend) {
    assertThatThrownBy(() -> Money.parse(written, EUR))
        .isInstanceOfSatisfying(
            Misread.class, misread -> assertThat(misread.mend()).isEqualTo(mend));
  }

  @Test
  void moneyFinerThanItsCurrencyIsRefusedNotRounded() throws Misread {
    assertThat(Money.parse("46.20 EUR", EUR)).hasToString("46.20 EUR");
    assertThat(Money.parse("46.2", EUR)).hasToString("46.20 EUR");
    assertThat(Money.parse("46 JPY", EUR)).hasToString("46 JPY");
    for (String wrong :
        List.of(
            "46.205 EUR", "46.5 JPY", "46 euro", "46 XAU", "EUR 46", "46,20 EUR", "1e400 EUR")) {
      assertThatThrownBy(() -> Money.parse(wrong, EUR)).as(wrong).isInstanceOf(Misread.class);
    }
  }

  @Test
  void aPriceMayBeFinerAndIsRoundedWhenMultiplied() throws Misread {
    Price price = Price.parse("0.125 EUR/each", EUR);
    assertThat(price.of(Quantity.of("3", Unit.EACH))).hasToString("0.38 EUR");
    assertThat(Price.parse("11.40 NZD/m", EUR).of(Quantity.of("1040", Unit.CM)))
        .hasToString("118.56 NZD");
  }

  @Test
  void daysAreOfTheCalendar() throws Misread {
    assertThat(Days.day("2028-02-29")).isEqualTo(LocalDate.of(2028, 2, 29));
    // as tables for people write it
    assertThat(Days.day("2028\u201102\u201129")).isEqualTo(LocalDate.of(2028, 2, 29));
    assertThat(Days.parse("2026-04-03..2026-04-06").contains(LocalDate.of(2026, 4, 6))).isTrue();
    for (String wrong :
        List.of(
            "2026-02-29",
            "2026-06-31",
            "26-01-01",
            "1.2.2026",
            "2026-1-5",
            "0000-01-01",
            "9999-01-01",
            "today")) {
      assertThatThrownBy(() -> Days.day(wrong)).as(wrong).isInstanceOf(Misread.class);
    }
    assertThatThrownBy(() -> Days.parse("2026-04-06..2026-04-03")).isInstanceOf(Misread.class);
  }

  @Test
  void amountsCompareAcrossUnits() {
    assertThat(Quantity.of("1", Unit.M).compareAmount(Quantity.of("1000", Unit.MM))).isZero();
    assertThat(Quantity.of("4", Unit.EACH)).isEqualTo(Quantity.of("4.0", Unit.EACH));
    assertThat(Quantity.of("2", Unit.M).less(Quantity.of("5", Unit.M)).isNone()).isTrue();
    assertThat(new BigDecimal("1E+2"))
        .satisfies(n -> assertThat(Decimal.print(n)).isEqualTo("100"));
  }

  private static final List<String> WORDS =
      List.of(
          "received",
          "from",
          "tool",
          "dew-margin",
          "expected",
          "due",
          "rate",
          "worth",
          "load",
          "grain",
          "reason",
          "not-structural");

  @ParameterizedTest
  @CsvSource({"borowed, borrowed", "kiit, kit", "duw, due", "sheeet, sheet"})
  void theNearestWordIsOffered(String wrong, String right) {
    assertThat(Nearest.to(wrong, List.of("kit", "borrowed", "due", "sheet"))).hasValue(right);
  }

  @ParameterizedTest
  @CsvSource({
    "recieved, received",
    "receive, received",
    "form, from",
    "tools, tool",
    "margin, dew-margin",
    "expceted, expected",
    "duw, due"
  })
  void aMisspeltWordOfTheProgramIsAnsweredWithTheNearest(String wrong, String right) {
    assertThat(Nearest.ofWords(wrong, WORDS)).hasValue(right);
  }

  @ParameterizedTest
  @ValueSource(strings = {"date", "width", "lead", "rain", "crate", "resin", "toll", "structural"})
  void aWordThatIsRightInItselfIsAnsweredWithNone(String word) {
    assertThat(Nearest.ofWords(word, WORDS)).isEmpty();
  }

  @Test
  void aPartOfOneLongerWordIsTakenForIt() {
    List<String> ids = List.of("delivery-2026-11-30-first-crate", "crate-2", "delivery-2026-12-01");
    assertThat(Nearest.to("first-crate", ids)).hasValue("delivery-2026-11-30-first-crate");
    assertThat(Nearest.to("deliver", ids)).isEmpty();
    assertThat(Nearest.to("fir", ids)).isEmpty();
  }
}
