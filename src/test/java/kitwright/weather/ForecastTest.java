package kitwright.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ForecastTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 5, 4);
  private static final OptionalDouble NONE = OptionalDouble.empty();

  @Test
  void theFirstRunOfDryDaysIsFound() {
    Window window =
        forecast(fair(0), wet(1), fair(2), fair(3), fair(4)).firstWindow(dry(3), daily(6));
    assertThat(window.fits()).isTrue();
    assertThat(window.first()).isEqualTo("2026-05-06");
    assertThat(window.last()).isEqualTo("2026-05-08");
  }

  @Test
  void whereNoneFitsTheNearestIsShownWithWhatItLacks() {
    Window window =
        forecast(fair(0), wet(1), wet(2), fair(3), wet(4), fair(5)).firstWindow(dry(3), daily(6));
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
    WeatherNeed need = new WeatherNeed(0, OptionalDouble.of(10), NONE);
    Window window = forecast(fair(0), cold, fair(2), fair(3)).firstWindow(need, curing(4));
    assertThat(window.first()).isEqualTo("2026-05-06");
    assertThat(forecast(fair(0), cold).window(need, curing(1).get(0)).obstacles().get(0).words())
        .isEqualTo("down to 4 °C, wanted 10");
  }

  @Test
  void theSurfaceMustLieAboveTheDewPointWhileTheWorkGoesOn() {
    // At 15 °C and 85 % the dew point is 12.5 °C: 2.5 K.
    ForecastDay damp = ForecastDay.humid(FIRST, 0, 12, 18, 85);
    WeatherNeed need = new WeatherNeed(0, NONE, OptionalDouble.of(WeatherNeed.USUAL_DEW_MARGIN));
    Window window = forecast(damp).window(need, daily(1).get(0));
    assertThat(window.obstacles().get(0).words())
        .isEqualTo("2.5 K above the dew point, wanted 3.0");
    ForecastDay drier = ForecastDay.humid(FIRST, 0, 12, 18, 80);
    assertThat(forecast(drier).window(need, daily(1).get(0)).fits()).isTrue();
  }

  @Test
  void aForecastWithoutHumidityDoesNotPassForDryAir() {
    WeatherNeed need = new WeatherNeed(0, NONE, OptionalDouble.of(3));
    assertThat(forecast(fair(0)).window(need, daily(1).get(0)).obstacles().get(0).kind())
        .isEqualTo(Obstacle.Kind.HUMIDITY_UNKNOWN);
  }

  @Test
  void aGapInTheForecastDoesNotPassForAFineDay() {
    Forecast forecast = forecast(fair(0), fair(2), fair(3));
    Window window = forecast.firstWindow(dry(3), daily(6));
    assertThat(window.fits()).isFalse();
    assertThat(window.obstacles()).extracting(Obstacle::words).containsExactly("no forecast");
  }

  /** Work on Friday and Monday: the cold Saturday between does it no harm. */
  @Test
  void daysOffBetweenTheWorkDoNotCount() {
    WeatherNeed warm = new WeatherNeed(0, OptionalDouble.of(10), OptionalDouble.of(3));
    ForecastDay frost = new ForecastDay(FIRST.plusDays(1), 9, -4, 2, NONE);
    Forecast forecast = forecast(dryAir(0), frost, dryAir(3));
    List<LocalDate> work = List.of(FIRST, FIRST.plusDays(3));
    assertThat(forecast.window(warm, spell(work)).obstacles()).isEmpty();
    Window curing = forecast.window(warm, new Spell(work, FIRST.plusDays(4)));
    assertThat(curing.obstacles())
        .extracting(each -> each.day().getDayOfMonth() + " " + each.kind())
        .containsExactly("5 COLD", "6 NO_FORECAST", "8 NO_FORECAST");
    assertThat(curing.lacking()).isEqualTo(3);
    assertThat(curing.isUnknown()).isFalse();
  }

  @Test
  void aMarginOfJustWhatIsAskedIsEnough() {
    WeatherNeed need = new WeatherNeed(0, NONE, OptionalDouble.of(3));
    ForecastDay just = new ForecastDay(FIRST, 0, 10, 16, OptionalDouble.of(10));
    assertThat(forecast(just).window(need, daily(1).get(0)).fits()).isTrue();
    ForecastDay less = new ForecastDay(FIRST, 0, 10, 16, OptionalDouble.of(10.01));
    assertThat(forecast(less).window(need, daily(1).get(0)).fits()).isFalse();
  }

  @Test
  void theColdAskedForIsColdEnough() {
    WeatherNeed need = new WeatherNeed(0, OptionalDouble.of(12), NONE);
    assertThat(forecast(fair(0)).window(need, daily(1).get(0)).fits()).isTrue();
    WeatherNeed more = new WeatherNeed(0, OptionalDouble.of(12.1), NONE);
    assertThat(forecast(fair(0)).window(more, daily(1).get(0)).fits()).isFalse();
  }

  @Test
  void aSpellEndsWhereItIsCuredAndHasDaysOfWork() {
    assertThatThrownBy(() -> new Spell(List.of(), FIRST)).isInstanceOf(RuntimeException.class);
    assertThatThrownBy(() -> new Spell(List.of(FIRST, FIRST.plusDays(1)), FIRST))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void withoutAForecastNothingFits() {
    assertThat(forecast().firstWindow(dry(2), daily(1)).lacking()).isEqualTo(2);
  }

  @Test
  void rainAfterTheDryDaysDoesNotMatter() {
    WeatherNeed need = new WeatherNeed(1, NONE, NONE);
    assertThat(forecast(fair(0), wet(1), wet(2)).window(need, daily(1).get(0)).fits()).isTrue();
  }

  @Test
  void impossibleRowsAreRefused() {
    assertThatThrownBy(() -> new ForecastDay(FIRST, -1, 5, 9, NONE)).hasMessageContaining("rain");
    assertThatThrownBy(() -> new ForecastDay(FIRST, 0, 9, 5, NONE)).hasMessageContaining("above");
    assertThatThrownBy(() -> new WeatherNeed(-1, NONE, NONE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** A day of work, on each of so many days. */
  private static List<Spell> daily(int days) {
    return FIRST.datesUntil(FIRST.plusDays(days)).map(day -> spell(List.of(day))).toList();
  }

  /** The same, and a night and a day of cure. */
  private static List<Spell> curing(int days) {
    return daily(days).stream()
        .map(spell -> new Spell(spell.work(), spell.first().plusDays(1)))
        .toList();
  }

  private static ForecastDay dryAir(int day) {
    return new ForecastDay(FIRST.plusDays(day), 0, 12, 18, OptionalDouble.of(5));
  }

  private static WeatherNeed dry(int days) {
    return new WeatherNeed(days, NONE, NONE);
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

  /** Work on some days, after which nothing cures. */
  private static Spell spell(List<LocalDate> work) {
    return new Spell(work, work.get(work.size() - 1));
  }

  /**
   * Fair today, and nothing foretold after: unknown. Wet today: that is known, and stands against
   * it.
   */
  @Test
  void aWindowIsUnknownOnlyWhereNothingElseStandsAgainstIt() {
    assertThat(forecast(fair(0)).window(dry(2), daily(1).get(0)).isUnknown()).isTrue();
    assertThat(forecast(wet(0)).window(dry(2), daily(1).get(0)).isUnknown()).isFalse();
    assertThat(forecast(fair(0), fair(1)).window(dry(2), daily(1).get(0)).isUnknown()).isFalse();
  }

  /** Both lack one day: who waits longer gains nothing. */
  @Test
  void ofWindowsThatLackAsMuchTheEarliestIsShown() {
    assertThat(forecast(wet(0), wet(1)).firstWindow(dry(1), daily(2)).first()).isEqualTo(FIRST);
  }

  /** Cured on Tuesday: a frost on Wednesday does no harm, one on Tuesday night does. */
  @Test
  void coldAfterTheCureDoesNotMatter() {
    WeatherNeed warm = new WeatherNeed(3, OptionalDouble.of(10), NONE);
    ForecastDay frost = new ForecastDay(FIRST.plusDays(2), 0, -4, 2, NONE);
    assertThat(forecast(fair(0), fair(1), frost).window(warm, curing(1).get(0)).fits()).isTrue();
    assertThat(forecast(fair(0), fair(1), frost).window(warm, curing(2).get(1)).fits()).isFalse();
  }
}
