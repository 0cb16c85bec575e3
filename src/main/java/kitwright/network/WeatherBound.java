package kitwright.network;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.ledger.Task;
import kitwright.value.Unit;
import kitwright.weather.Forecast;
import kitwright.weather.WeatherNeed;
import kitwright.weather.Window;

/**
 * An outdoor task that asks something of the weather, with the first window of the forecast that
 * fits, or the one that lacks least. Rain and night frost do not reach indoor work, whose warmth is
 * the heater's business.
 *
 * @param from the first day on which the work could begin otherwise
 * @param window beginning on a working day
 */
public record WeatherBound(Task task, WeatherNeed need, LocalDate from, Window window) {

  /** The open outdoor tasks that could begin by a day, in order of that day. */
  public static List<WeatherBound> by(LocalDate last, Plan plan, Forecast forecast) {
    return plan.ahead().stream()
        .filter(planned -> !plan.workableOn(planned.id()).isAfter(last))
        .flatMap(planned -> plan.task(planned.id()).stream())
        .filter(task -> task.place().filter(where -> where == Task.Where.INDOORS).isEmpty())
        .flatMap(task -> of(task, plan, forecast).stream())
        .toList();
  }

  private static Optional<WeatherBound> of(Task task, Plan plan, Forecast forecast) {
    LocalDate from = plan.workableOn(task.id());
    return task.weather()
        .map(weather -> need(task, weather, plan))
        .map(
            need ->
                new WeatherBound(
                    task,
                    need,
                    from,
                    forecast.firstWindow(need, from, plan.calendar()::isWorkingDay)));
  }

  /**
   * What a task asks of the weather. Where warmth is asked for, something is to cure or dry, and
   * the surface has to stand above the dew point by the usual margin unless the task says its own.
   */
  static WeatherNeed need(Task task, Task.Weather weather, Plan plan) {
    OptionalDouble above =
        number(weather.above().map(q -> q.in(Unit.CELSIUS).amount().doubleValue()));
    OptionalDouble dew =
        number(
            weather
                .dewMargin()
                .map(q -> q.in(Unit.KELVIN_DIFFERENCE).amount().doubleValue())
                .or(() -> weather.above().map(any -> WeatherNeed.USUAL_DEW_MARGIN)));
    int dry = weather.dry().map(q -> days(q.in(Unit.DAY).amount())).orElse(0);
    int cure = task.cure().map(q -> days(q.in(Unit.DAY).amount())).orElse(0);
    return new WeatherNeed(dry, above, dew, workDays(task, plan), cure);
  }

  private static OptionalDouble number(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private static int days(BigDecimal days) {
    return days.min(BigDecimal.valueOf(WorkCalendar.CLOCK_DAY))
        .setScale(0, RoundingMode.CEILING)
        .intValue();
  }

  /** Calendar days over which the work goes, the first and the last counted; at most a year. */
  private static int workDays(Task task, Plan plan) {
    Planned planned = plan.schedule().of(task.id());
    LocalDate first = plan.workableOn(task.id());
    LocalDateTime end = planned.earliestFinish();
    long days = ChronoUnit.DAYS.between(first, end.toLocalDate()) + 1;
    return (int) Math.max(1, Math.min(366, days));
  }

  /** Whether it can begin on the first possible day. */
  public boolean isFree() {
    return window.fits() && !window.first().isAfter(from);
  }

  /** Days of the best window that do not fit, and days lost before it. */
  public long waits() {
    return ChronoUnit.DAYS.between(from, window.first());
  }
}
