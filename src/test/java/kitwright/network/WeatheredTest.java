package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** End dates with the weather in them. Sample's today is Monday, 2 March 2026. */
class WeatheredTest {
  private static final String BUILD =
      "build: {name: S, currency: EUR, started: 2026-01-05, week: {days: [mon, tue, wed, thu, fri],"
          + " hours: 8}%s}\n";
  private static final String HALF =
      ", climate: [{month: mar, fit: 50 %, source: s}, {month: apr, fit: 100 %, source: s}]";

  private static Weathered weathered(String climate, String tasks, String forecast) {
    Facts now =
        Facts.of(
            Sample.ledger(BUILD.formatted(climate) + "tasks:\n" + tasks + forecast), Sample.TODAY);
    return Weathered.of(Plan.on(now).schedule(), now);
  }

  private static String paint(String takes, String more) {
    return "  - {id: paint, what: P, takes: "
        + takes
        + ", place: outdoors, weather: {dry: 1 d}"
        + more
        + "}\n";
  }

  private static String rows(int... rain) {
    StringBuilder rows = new StringBuilder("forecast:\n");
    for (int i = 0; i < rain.length; i++) {
      LocalDate day = Sample.TODAY.plusDays(i);
      rows.append("  - {day: %s, rain: %d mm, low: 12, high: 18}\n".formatted(day, rain[i]));
    }
    return rows.toString();
  }

  @Test
  void aTaskWaitsForItsWindowAndWhatFollowsWithIt() {
    Weathered weathered =
        weathered(
            "",
            paint("1 d", "")
                + "  - {id: next, what: N, takes: 1 d, after: [paint], place: indoors}\n",
            rows(2, 2, 0));
    assertThat(weathered.schedule().of("paint").goesOn()).isEqualTo("2026-03-04T08:00");
    assertThat(weathered.schedule().lastDay()).isEqualTo("2026-03-05");
    assertThat(weathered.leftOut()).isEmpty();
    assertThat(weathered.byForecast()).containsExactly("paint");
    assertThat(weathered.byClimate()).isEmpty();
  }

  /** Half the days are fit by one row of March, all of them by another: the worse counts. */
  @Test
  void ofTwoSharesOfOneMonthTheWorseCounts() {
    String march = "{month: mar, fit: %s %%, source: s}";
    LocalDate half = end(march.formatted("50"));
    assertThat(half).isAfter(end(march.formatted("100")));
    assertThat(end(march.formatted("100") + ", " + march.formatted("50"))).isEqualTo(half);
    assertThat(end(march.formatted("50") + ", " + march.formatted("100"))).isEqualTo(half);
  }

  private static LocalDate end(String rows) {
    return weathered(", climate: [" + rows + "]", paint("4 d", ""), "").schedule().lastDay();
  }

  @Test
  void beyondTheForecastHalfFitDaysTakeTwiceAsLong() {
    // four days of work on days of which one in two is fit: eight working days
    Weathered weathered = weathered(HALF, paint("4 d", ""), "");
    assertThat(weathered.byClimate()).containsExactly("paint");
    assertThat(weathered.byForecast()).isEmpty();
    assertThat(weathered.schedule().lastDay()).isEqualTo("2026-03-11");
  }

  @Test
  void eachMonthCountsWithItsOwnShare() {
    // Monday 30 and Tuesday 31 March give one day of work, Wednesday 1 and Thursday 2 April two
    Weathered weathered =
        weathered(
            HALF,
            "  - {id: first, what: F, takes: 20 d, place: indoors}\n"
                + paint("3 d", ", after: [first]"),
            "");
    assertThat(weathered.schedule().of("paint").goesOn()).isEqualTo("2026-03-30T08:00");
    assertThat(weathered.schedule().lastDay()).isEqualTo("2026-04-02");
  }

  @Test
  void withoutAClimateTheWeatherIsNotReckonedAndThatIsTold() {
    Weathered weathered = weathered("", paint("4 d", ""), "");
    assertThat(weathered.leftOut()).containsExactly("paint");
    assertThat(weathered.schedule().lastDay()).isEqualTo("2026-03-05");
  }

  @Test
  void aForecastWithoutAWindowHoldsTheTaskUntilItsEnd() {
    Weathered weathered = weathered("", paint("1 d", ""), rows(1, 1, 1));
    assertThat(weathered.schedule().lastDay()).isEqualTo("2026-03-05");
    assertThat(weathered.leftOut()).containsExactly("paint");
  }

  @Test
  void indoorWorkAndWorkThatIsDoneWaitForNoWeather() {
    String tasks =
        paint("1 d", ", finished: 2026-02-27, started: 2026-02-27")
            + "  - {id: in, what: I, takes: 1 d, place: indoors, weather: {above: 10 C}}\n";
    Weathered weathered = weathered("", tasks, rows(5, 5));
    assertThat(weathered.schedule().lastDay()).isEqualTo("2026-03-02");
    assertThat(weathered.leftOut()).isEqualTo(List.of());
  }
}
