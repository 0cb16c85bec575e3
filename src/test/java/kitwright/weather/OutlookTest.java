package kitwright.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.OptionalDouble;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.ledger.Facts;
import kitwright.ledger.ForecastDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which rows of the forecast can be leaned on. */
class OutlookTest {
  private static final String FAIR = "{day: 2026-03-03, rain: 0 mm, low: 12, high: 18%s}";

  private static String forecast(String... rows) {
    return "forecast: [" + String.join(", ", rows) + "]\n";
  }

  private static List<ForecastDay> rows(String... rows) {
    return Outlook.rows(Facts.of(Sample.ledger(forecast(rows)), Sample.TODAY));
  }

  @Test
  void aRowThatSaysWhatCanBeCounts() {
    assertThat(rows(FAIR.formatted(""))).hasSize(1);
    assertThat(rows(FAIR.formatted(", humidity: 100 %"))).hasSize(1);
    assertThat(rows(FAIR.formatted(", dew-point: 18"))).hasSize(1);
    assertThat(rows("{day: 2026-03-03, rain: 0 mm, low: 12, high: 12}")).hasSize(1);
    assertThat(rows("{day: 2026-03-03, rain: 0 mm, low: -45, high: 59.9, humidity: 50 %}"))
        .as("as far as the formula of the dew point reaches")
        .hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{day: 2026-03-03, rain: 0 mm, low: 19, high: 12}",
        "{day: 2026-03-03, rain: 0 mm, low: -46, high: 12}",
        "{day: 2026-03-03, rain: 0 mm, low: -45.1, high: -45.1, humidity: 50 %}",
        "{day: 2026-03-03, rain: 0 mm, low: 12, high: 60}",
        "{day: 2026-03-03, rain: 0 mm, low: 12, high: 18, humidity: 0 %}",
        "{day: 2026-03-03, rain: 0 mm, low: 12, high: 18, humidity: 101 %}",
        "{day: 2026-03-03, rain: 0 mm, low: 12, high: 18, dew-point: 18.1}"
      })
  void oneThatContradictsItselfIsToldAndItsDayCountsAsNotForetold(String row) {
    assertThat(rows(row)).isEmpty();
    assertThat(rows(row, FAIR.formatted(""))).isEmpty();
    assertThat(rows(FAIR.formatted(""), row)).isEmpty();
    Facts day = Facts.of(Sample.ledger(forecast(row)), Sample.TODAY);
    assertThat(Outlook.on(day).lastDay()).isEmpty();
    assertThat(Outlook.row(Sample.TODAY.plusDays(1), day)).isEmpty();
    assertThat(Sample.findings(new Outlook(), forecast(row)))
        .extracting(Finding::follows)
        .containsExactly("The day counts as not foretold, and no window is found across it.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{day: 2026-03-03, rain: 9 mm, low: 12, high: 18}",
        "{day: 2026-03-03, rain: 0 mm, low: 11, high: 18}",
        "{day: 2026-03-03, rain: 0 mm, low: 12, high: 17}",
        "{day: 2026-03-03, rain: 0 mm, low: 12, high: 18, humidity: 80 %}",
        "{day: 2026-03-03, rain: 0 mm, low: 12, high: 18, dew-point: 3}"
      })
  void ofTwoRowsThatDifferNeitherCounts(String other) {
    assertThat(rows(FAIR.formatted(""), other)).isEmpty();
    assertThat(Sample.findings(new ForecastTwice(), forecast(FAIR.formatted(""), other)))
        .extracting(Finding::follows, Finding::mend)
        .containsExactly(
            tuple(
                "Nobody knows which is the newer: the day counts as not foretold.",
                "Take out the older row."));
  }

  @Test
  void twoThatSayTheSameCountOnce() {
    String again = "{day: 2026-03-03, rain: 0.0 cm, low: 12.0, high: 18, source: radio}";
    assertThat(rows(FAIR.formatted(""), again)).hasSize(1);
    assertThat(Sample.findings(new ForecastTwice(), forecast(FAIR.formatted(""), again)))
        .extracting(Finding::follows, Finding::mend)
        .containsExactly(tuple("It counts once.", "Take one of them out."));
    assertThat(Sample.findings(new ForecastTwice(), forecast(FAIR.formatted(""), again)))
        .extracting(Finding::what)
        .singleElement()
        .asString()
        .contains(", and they say the same. The first is at ");
  }

  @Test
  void twoSharesOfOneMonthAreTold() {
    String build =
        "build: {name: S, currency: EUR, started: 2026-01-05, climate: [{month: apr, fit: 60 %,"
            + " source: s}, {month: may, fit: 60 %, source: s}, {month: apr, fit: %s, source:"
            + " t}]}\n";
    assertThat(Sample.findings(new ForecastTwice(), build.replace("%s", "60 %"))).isEmpty();
    assertThat(Sample.findings(new ForecastTwice(), build.replace("%s", "70 %")))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.what())
                  .startsWith("The climate has more than one row for April, and they do not say");
              assertThat(finding.follows()).isEqualTo("The worse of them counts.");
            });
  }

  private static final WeatherNeed DEW =
      new WeatherNeed(0, OptionalDouble.empty(), OptionalDouble.of(WeatherNeed.USUAL_DEW_MARGIN));

  /** What the margin of a day is told to be; “fits” where it is enough. */
  private static String dew(String more) {
    Facts day = Facts.of(Sample.ledger(forecast(FAIR.formatted(more))), Sample.TODAY);
    Window window =
        Outlook.on(day)
            .window(DEW, new Spell(List.of(Sample.TODAY.plusDays(1)), Sample.TODAY.plusDays(1)));
    return window.fits() ? "fits" : window.obstacles().get(0).words();
  }

  /** At 15 °C, between 12 and 18, and 85 % the dew point is 12.5 °C. */
  @Test
  void theDewPointIsTheOneThatIsStatedElseTheOneOfTheHumidity() {
    assertThat(dew(", humidity: 85 %")).isEqualTo("2.5 K above the dew point, wanted 3.0");
    assertThat(dew(", humidity: 80 %")).isEqualTo("fits");
    assertThat(dew(", dew-point: 13")).isEqualTo("2.0 K above the dew point, wanted 3.0");
    assertThat(dew(", dew-point: 13, humidity: 10 %"))
        .isEqualTo("2.0 K above the dew point, wanted 3.0");
    assertThat(dew("")).isNotEqualTo("fits");
  }

  @Test
  void aDayIsToldByItsOwnRowAndTheForecastEndsWithItsLastDay() {
    String later = "{day: 2026-03-05, rain: 7 mm, low: 4, high: 9}";
    Facts day = Facts.of(Sample.ledger(forecast(later, FAIR.formatted(""))), Sample.TODAY);
    assertThat(Outlook.row(Sample.TODAY.plusDays(1), day).orElseThrow().low()).isEqualTo("12");
    assertThat(Outlook.row(Sample.TODAY.plusDays(3), day).orElseThrow().low()).isEqualTo("4");
    assertThat(Outlook.row(Sample.TODAY.plusDays(2), day)).isEmpty();
    assertThat(Outlook.on(day).lastDay()).contains(Sample.TODAY.plusDays(3));
  }

  /** On Monday, 2 March, the gap of February is over; that of 4 March is not. */
  @Test
  void onlyAGapAheadIsTold() {
    String rows =
        forecast(
            "{day: 2026-02-20, rain: 0 mm, low: 4, high: 9}",
            "{day: 2026-02-24, rain: 0 mm, low: 4, high: 9}",
            FAIR.formatted(""),
            "{day: 2026-03-05, rain: 7 mm, low: 4, high: 9}");
    assertThat(Sample.findings(new ForecastGap(), rows))
        .extracting(Finding::what)
        .containsExactly("The forecast has nothing for 4\u00a0March\u00a02026.");
  }
}
