package kitwright.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** The forecast by day; days may be missing. */
public final class Forecast {
  private final NavigableMap<LocalDate, ForecastDay> days;

  private Forecast(NavigableMap<LocalDate, ForecastDay> days) {
    this.days = days;
  }

  /** The forecast of these days, each once. */
  public static Forecast of(Collection<ForecastDay> rows) {
    NavigableMap<LocalDate, ForecastDay> days = new TreeMap<>();
    rows.forEach(row -> days.put(row.day(), row));
    return new Forecast(days);
  }

  /** The last day that is foretold. */
  public Optional<LocalDate> lastDay() {
    return days.isEmpty() ? Optional.empty() : Optional.of(days.lastKey());
  }

  /**
   * The first window that fits, or else the one that lacks the fewest days, the earliest of such.
   *
   * @param spells over which days the task would go, by the day on which it begins: each of these
   *     days is tried, in order
   */
  public Window firstWindow(WeatherNeed need, List<Spell> spells) {
    Optional<Window> best = Optional.empty();
    for (Spell spell : spells) {
      Window window = window(need, spell);
      if (window.fits()) {
        return window;
      }
      best = best.filter(b -> b.lacking() <= window.lacking()).or(() -> Optional.of(window));
    }
    return best.orElseThrow(() -> new IllegalArgumentException("no day on which it could begin"));
  }

  /** The window over some days, with what stands against it. */
  public Window window(WeatherNeed need, Spell spell) {
    LocalDate dryUntil = spell.first().plusDays(need.dry() - 1L);
    LocalDate last = dryUntil.isAfter(spell.cured()) ? dryUntil : spell.cured();
    List<Obstacle> obstacles = new ArrayList<>();
    for (LocalDate day : spell.first().datesUntil(last.plusDays(1)).toList()) {
      Asked asked =
          new Asked(
              !day.isAfter(dryUntil),
              need.above().isPresent() && spell.isWarmthAsked(day),
              need.dewMargin().isPresent() && spell.work().contains(day));
      judge(need, asked, day, obstacles);
    }
    return new Window(spell.first(), last, obstacles);
  }

  /** What counts on a day. */
  private record Asked(boolean dry, boolean warm, boolean dew) {
    boolean isNothing() {
      return !dry && !warm && !dew;
    }
  }

  private void judge(WeatherNeed need, Asked asked, LocalDate day, List<Obstacle> out) {
    ForecastDay row = days.get(day);
    if (asked.isNothing()) {
      return;
    }
    if (row == null) {
      out.add(new Obstacle(day, Obstacle.Kind.NO_FORECAST, Double.NaN, Double.NaN));
      return;
    }
    if (asked.dry() && row.rain() > 0) {
      out.add(new Obstacle(day, Obstacle.Kind.RAIN, row.rain(), 0));
    }
    if (asked.warm() && row.low() < need.above().getAsDouble()) {
      out.add(new Obstacle(day, Obstacle.Kind.COLD, row.low(), need.above().getAsDouble()));
    }
    if (asked.dew()) {
      dew(row, need.dewMargin().getAsDouble()).ifPresent(out::add);
    }
  }

  private static Optional<Obstacle> dew(ForecastDay row, double wanted) {
    if (row.dewMargin().isEmpty()) {
      return Optional.of(
          new Obstacle(row.day(), Obstacle.Kind.HUMIDITY_UNKNOWN, Double.NaN, wanted));
    }
    double found = row.dewMargin().getAsDouble();
    return found < wanted
        ? Optional.of(new Obstacle(row.day(), Obstacle.Kind.DEW, found, wanted))
        : Optional.empty();
  }
}
