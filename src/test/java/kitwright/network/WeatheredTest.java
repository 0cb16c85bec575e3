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

  /**
   * The first ends at noon of Tuesday 31 March. Of six hours of painting the afternoon, half fit,
   * gives two; the other four are the morning of 1 April.
   */
  @Test
  void aDayThatHasBegunCountsWithWhatIsLeftOfIt() {
    Weathered weathered =
        weathered(
            HALF,
            "  - {id: first, what: F, takes: 172 h, place: indoors}\n"
                + paint("6 h", ", after: [first]"),
            "");
    assertThat(weathered.schedule().of("paint").goesOn()).isEqualTo("2026-03-31T12:00");
    assertThat(weathered.schedule().of("paint").earliestFinish()).isEqualTo("2026-04-01T12:00");
  }

  @Test
  void aDayIsLeftWhenTheWorkIsDone() {
    Weathered weathered = weathered(HALF, paint("3 h", ""), "");
    assertThat(weathered.schedule().of("paint").earliestFinish()).isEqualTo("2026-03-02T14:00");
  }

  /** Eleven days of work fill the 22 working days of March; April, which nobody stated, is not. */
  @Test
  void workThatEndsWithTheLastStatedMonthIsReckoned() {
    String march = ", climate: [{month: mar, fit: 50 %, source: s}]";
    Weathered weathered = weathered(march, paint("11 d", ""), "");
    assertThat(weathered.byClimate()).containsExactly("paint");
    assertThat(weathered.schedule().lastDay()).isEqualTo("2026-03-31");
    assertThat(weathered(march, paint("89 h", ""), "").leftOut()).containsExactly("paint");
  }

  @Test
  void whereNoDayIsFitNoEndIsTold() {
    String never =
        ", climate: ["
            + String.join(
                ", ",
                List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov")
                    .stream()
                    .map(month -> "{month: " + month + ", fit: 0 %, source: s}")
                    .toList())
            + ", {month: dec, fit: 0 %, source: s}]";
    assertThat(weathered(never, paint("1 d", ""), "").leftOut()).containsExactly("paint");
  }

  /** The first coat takes the 22 working days of March; the second dries in April in one. */
  @Test
  void whatFollowsIsJudgedByTheMonthInWhichItCanBegin() {
    Weathered weathered =
        weathered(
            HALF,
            paint("11 d", "") + paint("1 d", ", after: [paint]").replace("id: paint", "id: second"),
            "");
    assertThat(weathered.schedule().of("second").goesOn()).isEqualTo("2026-04-01T08:00");
    assertThat(weathered.schedule().of("second").earliestFinish()).isEqualTo("2026-04-01T16:00");
  }

  @Test
  void aForecastThatEndsBeforeTheWorkCanBeginTellsNothingOfIt() {
    Weathered weathered =
        weathered(
            HALF,
            "  - {id: first, what: F, takes: 5 d, place: indoors}\n"
                + paint("1 d", ", after: [first]"),
            rows(0, 0, 0));
    assertThat(weathered.byForecast()).isEmpty();
    assertThat(weathered.byClimate()).containsExactly("paint");
    assertThat(weathered.schedule().lastDay()).isEqualTo("2026-03-10");
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
