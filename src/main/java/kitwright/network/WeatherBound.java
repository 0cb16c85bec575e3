package kitwright.network;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Task;
import kitwright.value.Unit;
import kitwright.weather.Forecast;
import kitwright.weather.Outlook;
import kitwright.weather.Spell;
import kitwright.weather.WeatherNeed;
import kitwright.weather.Window;

/**
 * An outdoor task that asks something of the weather, with the first window of the forecast that
 * fits, or the one that lacks least. Rain and night frost do not reach indoor work, whose warmth is
 * the heater's business.
 *
 * @param from the first day on which the work could begin otherwise, after the weather of what
 *     comes before it
 * @param window beginning on a working day
 * @param until the last day of work if it begins then
 * @param later the other days of the forecast on which it could begin
 */
public record WeatherBound(
    Task task,
    WeatherNeed need,
    LocalDate from,
    Window window,
    LocalDate until,
    List<LocalDate> later) {
  /** Work that goes on longer than this finds no window anyway. */
  private static final int MOST_DAYS = 400;

  /** The open outdoor tasks that could begin by a day, in order of that day. */
  public static List<WeatherBound> by(LocalDate last, Facts now) {
    Plan plan = Plan.on(now);
    return plan.ahead().stream()
        .filter(planned -> !plan.workableOn(planned.id()).isAfter(last))
        .flatMap(planned -> plan.task(planned.id()).stream())
        .flatMap(task -> of(task, now).stream())
        .filter(bound -> !bound.from().isAfter(last))
        .toList();
  }

  /** An open task and its window; empty where it asks nothing of the weather. */
  public static Optional<WeatherBound> of(Task task, Facts now) {
    Plan plan = Plan.on(now);
    return need(task)
        .map(
            need ->
                found(
                    task,
                    need,
                    Weathered.on(now).opening(task.id(), now),
                    plan.schedule().of(task.id()).activity(),
                    plan.calendarOf(task.id()),
                    Outlook.on(now)));
  }

  private static WeatherBound found(
      Task task,
      WeatherNeed need,
      LocalDateTime from,
      Activity activity,
      WorkCalendar calendar,
      Forecast forecast) {
    List<Spell> spells = spells(from, activity, calendar, forecast);
    Window window = forecast.firstWindow(need, spells);
    List<LocalDate> later =
        spells.stream()
            .filter(spell -> spell.first().isAfter(window.first()) && window.fits())
            .filter(spell -> forecast.window(need, spell).fits())
            .map(Spell::first)
            .toList();
    LocalDate until =
        spells.stream()
            .filter(spell -> spell.first().equals(window.first()))
            .map(Spell::lastOfWork)
            .findFirst()
            .orElse(window.last());
    return new WeatherBound(task, need, from.toLocalDate(), window, until, later);
  }

  /** Over which days the work and its cure go, for each working day of the forecast. */
  static List<Spell> spells(
      LocalDateTime from, Activity activity, WorkCalendar calendar, Forecast forecast) {
    LocalDate first = from.toLocalDate();
    LocalDate last = forecast.lastDay().filter(first::isBefore).orElse(first);
    return Stream.concat(
            Stream.of(from),
            first
                .plusDays(1)
                .datesUntil(last.plusDays(1))
                .filter(calendar::isWorkingDay)
                .map(calendar::openingOf))
        .map(start -> spell(start, activity, calendar))
        .toList();
  }

  private static Spell spell(LocalDateTime start, Activity activity, WorkCalendar calendar) {
    Duration work = Duration.ofMinutes(activity.left().expected());
    LocalDateTime end = calendar.add(start, work);
    LocalDate first = start.toLocalDate();
    LocalDate last = work.isZero() ? first : WorkCalendar.lastDay(end);
    List<LocalDate> days =
        Stream.concat(
                Stream.of(first),
                first.plusDays(1).datesUntil(last.plusDays(1)).filter(calendar::isWorkingDay))
            .limit(MOST_DAYS)
            .toList();
    LocalDate cured = WorkCalendar.lastDay(end.plus(activity.cure()));
    LocalDate done = days.get(days.size() - 1);
    LocalDate most = done.plusDays(MOST_DAYS);
    LocalDate through = cured.isAfter(most) ? most : cured;
    return new Spell(days, through.isBefore(done) ? done : through);
  }

  /**
   * What a task asks of the weather; empty where it is done indoors or asks nothing. Where warmth
   * is asked for, something is to cure or dry, and the surface has to stand above the dew point by
   * the usual margin unless the task says its own.
   */
  public static Optional<WeatherNeed> need(Task task) {
    return task.weather()
        .filter(any -> task.place().filter(where -> where == Task.Where.INDOORS).isEmpty())
        .map(WeatherBound::need);
  }

  private static WeatherNeed need(Task.Weather weather) {
    OptionalDouble above =
        number(weather.above().map(q -> q.in(Unit.CELSIUS).amount().doubleValue()));
    OptionalDouble dew =
        number(
            weather
                .dewMargin()
                .map(q -> q.in(Unit.KELVIN_DIFFERENCE).amount().doubleValue())
                .or(() -> weather.above().map(any -> WeatherNeed.USUAL_DEW_MARGIN)));
    int dry = weather.dry().map(q -> days(q.in(Unit.DAY).amount())).orElse(0);
    return new WeatherNeed(dry, above, dew);
  }

  private static OptionalDouble number(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private static int days(BigDecimal days) {
    return days.min(BigDecimal.valueOf(MOST_DAYS)).setScale(0, RoundingMode.CEILING).intValue();
  }

  /** Whether it can begin on the first possible day. */
  public boolean isFree() {
    return window.fits() && !window.first().isAfter(from);
  }

  /** Whether nothing is foretold for any day that counts. */
  public boolean isBeyondForecast() {
    return window.isUnknown();
  }
}
