package kitwright.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;

/** The forecast by day; days may be missing. */
public final class Forecast {
  private final NavigableMap<LocalDate, ForecastDay> days;

  private Forecast(NavigableMap<LocalDate, ForecastDay> days) {
    this.days = days;
  }

  /** The forecast of these days; of two rows for one day the first counts. */
  public static Forecast of(Collection<ForecastDay> rows) {
    NavigableMap<LocalDate, ForecastDay> days = new TreeMap<>();
    rows.forEach(row -> days.putIfAbsent(row.day(), row));
    return new Forecast(days);
  }

  /** Days missing between the first and the last row. */
  public List<LocalDate> gaps() {
    if (days.isEmpty()) {
      return List.of();
    }
    return days.firstKey()
        .datesUntil(days.lastKey())
        .filter(day -> !days.containsKey(day))
        .toList();
  }

  /** The window that begins on {@code from} or later and fits, or the one that lacks least. */
  public Window firstWindow(WeatherNeed need, LocalDate from) {
    return firstWindow(need, from, day -> true);
  }

  /**
   * The first window that fits, or else the one that lacks the fewest days, the earliest of such.
   *
   * @param from first day on which the task could begin
   * @param mayBegin whether the task may begin on a day: a working day, for one
   */
  public Window firstWindow(WeatherNeed need, LocalDate from, Predicate<LocalDate> mayBegin) {
    Optional<Window> best = Optional.empty();
    LocalDate last = days.isEmpty() || days.lastKey().isBefore(from) ? from : days.lastKey();
    for (LocalDate start : from.datesUntil(last.plusDays(1)).filter(mayBegin).toList()) {
      Window window = window(need, start);
      if (window.fits()) {
        return window;
      }
      best = best.filter(b -> b.lacking() <= window.lacking()).or(() -> Optional.of(window));
    }
    return best.orElseGet(() -> window(need, last.plusDays(1)));
  }

  /** The window that begins on a day, with what stands against it. */
  public Window window(WeatherNeed need, LocalDate start) {
    List<Obstacle> obstacles = new ArrayList<>();
    for (int i = 0; i < need.length(); i++) {
      LocalDate day = start.plusDays(i);
      ForecastDay row = days.get(day);
      if (row == null) {
        obstacles.add(new Obstacle(day, Obstacle.Kind.NO_FORECAST, Double.NaN, Double.NaN));
      } else {
        judge(need, i, row, obstacles);
      }
    }
    return new Window(start, start.plusDays(need.length() - 1L), obstacles);
  }

  private static void judge(WeatherNeed need, int index, ForecastDay row, List<Obstacle> out) {
    if (index < need.dry() && row.rain() > 0) {
      out.add(new Obstacle(row.day(), Obstacle.Kind.RAIN, row.rain(), 0));
    }
    if (index < need.work() + need.cure()
        && need.above().isPresent()
        && row.low() < need.above().getAsDouble()) {
      double wanted = need.above().getAsDouble();
      out.add(new Obstacle(row.day(), Obstacle.Kind.COLD, row.low(), wanted));
    }
    if (index < need.work() && need.dewMargin().isPresent()) {
      double wanted = need.dewMargin().getAsDouble();
      if (row.dewMargin().isEmpty()) {
        out.add(new Obstacle(row.day(), Obstacle.Kind.HUMIDITY_UNKNOWN, Double.NaN, wanted));
      } else if (row.dewMargin().getAsDouble() < wanted) {
        double found = row.dewMargin().getAsDouble();
        out.add(new Obstacle(row.day(), Obstacle.Kind.DEW, found, wanted));
      }
    }
  }
}
