package kitwright.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ForecastTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 5, 4);
  private static final OptionalDouble NONE = OptionalDouble.empty();

  @Test
  void theFirstRunOfDryDaysIsFound() {
    Window window = forecast(fair(0), wet(1), fair(2), fair(3), fair(4)).firstWindow(dry(3), FIRST);
    assertThat(window.fits()).isTrue();
    assertThat(window.first()).isEqualTo("2026-05-06");
    assertThat(window.last()).isEqualTo("2026-05-08");
  }

  @Test
  void whereNoneFitsTheNearestIsShownWithWhatItLacks() {
    Window window =
        forecast(fair(0), wet(1), wet(2), fair(3), wet(4), fair(5)).firstWindow(dry(3), FIRST);
    assertThat(window.fits()).isFalse();
    assertThat(window.lacking()).isEqualTo(1);
    assertThat(window.first()).isEqualTo("2026-05-07");
    assertThat(window.obstacles())
        .extracting(obstacle -> obstacle.day() + " " + obstacle.words())
        .containsExactly("2026-05-08 4.0 mm rain");
  }

  @Test
  void theNightAfterTheWorkMustBeWarmEnoughForTheCure() {
    ForecastDay cold = new ForecastDay(FIRST.plusDays(1), 0, 4, 15, NONE);
    WeatherNeed need = new WeatherNeed(0, OptionalDouble.of(10), NONE, 1, 1);
    Window window = forecast(fair(0), cold, fair(2), fair(3)).firstWindow(need, FIRST);
    assertThat(window.first()).isEqualTo("2026-05-06");
    assertThat(forecast(fair(0), cold).window(need, FIRST).obstacles().get(0).words())
        .isEqualTo("down to 4 °C, wanted 10");
  }

  @Test
  void theSurfaceMustLieAboveTheDewPointWhileTheWorkGoesOn() {
    // At 15 °C and 85 % the dew point is 12.5 °C: 2.5 K.
    ForecastDay damp = ForecastDay.humid(FIRST, 0, 12, 18, 85);
    WeatherNeed need =
        new WeatherNeed(0, NONE, OptionalDouble.of(WeatherNeed.USUAL_DEW_MARGIN), 1, 0);
    Window window = forecast(damp).window(need, FIRST);
    assertThat(window.obstacles().get(0).words())
        .isEqualTo("2.5 K above the dew point, wanted 3.0");
    ForecastDay drier = ForecastDay.humid(FIRST, 0, 12, 18, 80);
    assertThat(forecast(drier).window(need, FIRST).fits()).isTrue();
  }

  @Test
  void aForecastWithoutHumidityDoesNotPassForDryAir() {
    WeatherNeed need = new WeatherNeed(0, NONE, OptionalDouble.of(3), 1, 0);
    assertThat(forecast(fair(0)).window(need, FIRST).obstacles().get(0).kind())
        .isEqualTo(Obstacle.Kind.HUMIDITY_UNKNOWN);
  }

  @Test
  void aGapInTheForecastDoesNotPassForAFineDay() {
    Forecast forecast = forecast(fair(0), fair(2), fair(3));
    assertThat(forecast.gaps()).containsExactly(FIRST.plusDays(1));
    Window window = forecast.firstWindow(dry(3), FIRST);
    assertThat(window.fits()).isFalse();
    assertThat(window.obstacles()).extracting(Obstacle::words).containsExactly("no forecast");
  }

  @Test
  void aTaskBeginsOnlyWhereItMay() {
    Window window =
        forecast(fair(0), fair(1), fair(2), fair(3))
            .firstWindow(dry(1), FIRST, day -> day.getDayOfWeek() == DayOfWeek.WEDNESDAY);
    assertThat(window.first()).isEqualTo("2026-05-06");
  }

  @Test
  void withoutAForecastNothingFits() {
    assertThat(forecast().firstWindow(dry(2), FIRST).lacking()).isEqualTo(2);
  }

  @Test
  void rainAfterTheDryDaysDoesNotMatter() {
    WeatherNeed need = new WeatherNeed(1, NONE, NONE, 1, 2);
    assertThat(forecast(fair(0), wet(1), wet(2)).window(need, FIRST).fits()).isTrue();
  }

  @Test
  void impossibleRowsAreRefused() {
    assertThatThrownBy(() -> new ForecastDay(FIRST, -1, 5, 9, NONE)).hasMessageContaining("rain");
    assertThatThrownBy(() -> new ForecastDay(FIRST, 0, 9, 5, NONE)).hasMessageContaining("above");
    assertThatThrownBy(() -> new WeatherNeed(0, NONE, NONE, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static WeatherNeed dry(int days) {
    return new WeatherNeed(days, NONE, NONE, 1, 0);
  }

  private static Forecast forecast(ForecastDay... rows) {
    return Forecast.of(List.of(rows));
  }

  private static ForecastDay fair(int day) {
    return new ForecastDay(FIRST.plusDays(day), 0, 12, 18, NONE);
  }

  private static ForecastDay wet(int day) {
    return new ForecastDay(FIRST.plusDays(day), 4, 12, 18, NONE);
  }
}
