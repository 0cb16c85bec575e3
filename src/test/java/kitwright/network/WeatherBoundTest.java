package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.weather.WeatherNeed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Work that waits for its weather: its window, and the others. Today is Monday, 2 March 2026. */
class WeatherBoundTest {
  private static String task(String id, String more) {
    return "  - {id: " + id + ", what: W, takes: 1 d, place: outdoors" + more + "}\n";
  }

  /** So much rain on each day from today on. */
  private static Facts days(String tasks, int... rain) {
    StringBuilder yaml = new StringBuilder("tasks:\n").append(tasks);
    if (rain.length > 0) {
      yaml.append("forecast:\n");
    }
    for (int i = 0; i < rain.length; i++) {
      LocalDate day = Sample.TODAY.plusDays(i);
      yaml.append("  - {day: %s, rain: %d mm, low: 12, high: 18}\n".formatted(day, rain[i]));
    }
    return Facts.of(Sample.ledger(yaml.toString()), Sample.TODAY);
  }

  private static final String DRY = ", weather: {dry: 1 d}";

  private static WeatherBound only(Facts now) {
    return WeatherBound.of(now.ledger().tasks().get(0), now).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "'weather: {dry: 36 h}'; 2; ; ", // a day and a half is two days
        "'weather: {dry: 9999 d}'; 400; ; ",
        "'weather: {above: 10 C}'; 0; 10; 3", // what is to cure wants the usual margin
        "'weather: {above: 10 C, dew-margin: 5 K}'; 0; 10; 5",
        "'weather: {dew-margin: 2 K}'; 0; ; 2"
      })
  void whatATaskAsksOfTheWeather(String weather, int dry, Double above, Double margin) {
    Facts now = days(task("w", ", " + weather));
    assertThat(WeatherBound.need(now.ledger().tasks().get(0)))
        .hasValue(new WeatherNeed(dry, number(above), number(margin)));
  }

  private static OptionalDouble number(Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  @Test
  void whatAsksNothingOrStandsIndoorsIsNotBound() {
    Facts now =
        days(task("w", "") + task("in", DRY).replace("outdoors", "indoors") + task("out", DRY), 0);
    assertThat(WeatherBound.by(Sample.TODAY, now))
        .extracting(each -> each.task().id())
        .containsExactly("out");
  }

  @Test
  void aDryDayAtOnceIsFree() {
    WeatherBound bound = only(days(task("w", DRY), 0, 1, 0));
    assertThat(bound.isFree()).isTrue();
    assertThat(bound.until()).isEqualTo("2026-03-02");
    assertThat(bound.later()).containsExactly(LocalDate.of(2026, 3, 4));
  }

  @Test
  void rainTodayAndDryTomorrowIsNotFreeToday() {
    WeatherBound bound = only(days(task("w", DRY), 1, 0, 1, 0));
    assertThat(bound.isFree()).isFalse();
    assertThat(bound.isBeyondForecast()).isFalse();
    assertThat(bound.from()).isEqualTo("2026-03-02");
    assertThat(bound.window().first()).isEqualTo("2026-03-03");
    assertThat(bound.until()).isEqualTo("2026-03-03");
    assertThat(bound.later()).containsExactly(LocalDate.of(2026, 3, 5));
  }

  @Test
  void rainOnEveryDayLeavesNoWindowAndNoOtherDay() {
    WeatherBound bound = only(days(task("w", DRY), 1, 1, 1));
    assertThat(bound.isFree()).isFalse();
    assertThat(bound.isBeyondForecast()).isFalse();
    assertThat(bound.later()).isEmpty();
  }

  @Test
  void whereNothingIsForetoldNothingIsFree() {
    WeatherBound bound = only(days(task("w", DRY)));
    assertThat(bound.isFree()).isFalse();
    assertThat(bound.isBeyondForecast()).isTrue();
  }

  /** Two days of work from Thursday on end on Friday; three end on Monday. */
  @Test
  void workGoesOnOverTheDaysOnWhichWorkIsDone() {
    String two = task("w", DRY).replace("1 d, place", "2 d, place");
    WeatherBound bound = only(days(two, 1, 1, 1, 0, 0, 0, 0));
    assertThat(bound.window().first()).isEqualTo("2026-03-05");
    assertThat(bound.until()).isEqualTo("2026-03-06");
    assertThat(only(days(two.replace("2 d", "3 d"), 1, 1, 1, 0, 0, 0, 0, 0)).until())
        .isEqualTo("2026-03-09");
  }

  @Test
  void onlyWhatCanBeginByTheDayIsTold() {
    Facts now =
        days(
            "  - {id: first, what: F, takes: 2 d, place: indoors}\n"
                + task("then", DRY + ", after: [first]")
                + task("behind", DRY + ", after: [then]"),
            0,
            0,
            1,
            0,
            0);
    assertThat(by(now, "2026-03-03")).isEmpty();
    assertThat(by(now, "2026-03-04")).as("not: it waits for the first").containsExactly("then");
    // Rain holds what comes before it until Thursday, so it cannot begin on that day.
    assertThat(by(now, "2026-03-05")).containsExactly("then");
    assertThat(by(now, "2026-03-06")).containsExactly("then", "behind");
  }

  private static List<String> by(Facts now, String last) {
    return WeatherBound.by(LocalDate.parse(last), now).stream()
        .map(each -> each.task().id())
        .toList();
  }
}
