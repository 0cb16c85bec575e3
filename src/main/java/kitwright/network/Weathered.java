package kitwright.network;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import kitwright.ledger.Build;
import kitwright.ledger.Facts;
import kitwright.weather.Forecast;
import kitwright.weather.Outlook;
import kitwright.weather.Spell;
import kitwright.weather.WeatherNeed;
import kitwright.weather.Window;

/**
 * Dates with the weather in them: as far as the forecast reaches every outdoor task that asks
 * something of it is held until its first window; beyond, it takes as much longer as the climate
 * that the builder has stated leaves days unfit.
 *
 * @param schedule with those holds
 * @param butForOwn when work that asks something of the weather could go on but for its own: after
 *     all that it waits for, with the weather of that
 * @param byForecast tasks whose dates lean on the forecast, by id
 * @param byClimate tasks whose dates lean on the climate, by id
 * @param leftOut tasks whose weather is not reckoned, since nobody has stated a climate for then
 */
public record Weathered(
    Schedule schedule,
    Map<String, LocalDateTime> butForOwn,
    List<String> byForecast,
    List<String> byClimate,
    List<String> leftOut) {
  private static final Facts.Fact<Weathered> FACT = day -> of(Plan.on(day).schedule(), day);

  /** Work that would take longer by its climate than this is left out. */
  private static final int MOST_DAYS = 3 * 366;

  /** The dates by work alone with the weather laid over them. */
  public static Weathered on(Facts day) {
    return FACT.on(day);
  }

  /**
   * The first day on which a task can be worked at, with its weather and that of what is before.
   */
  public LocalDate workableOn(String id, Facts now) {
    return workable(schedule.of(id).goesOn().toLocalDate(), id, Plan.on(now));
  }

  /** When it could go on but for its own weather: no earlier than work goes on and people come. */
  LocalDateTime opening(String id, Facts now) {
    Plan plan = Plan.on(now);
    LocalDateTime from = butForOwn.getOrDefault(id, schedule.of(id).goesOn());
    LocalDateTime morning = plan.calendar().openingOf(workable(from.toLocalDate(), id, plan));
    return from.isBefore(morning) ? morning : from;
  }

  private static LocalDate workable(LocalDate day, String id, Plan plan) {
    LocalDate morning = plan.morning();
    return plan.calendarOf(id).plusWorkingDays(day.isBefore(morning) ? morning : day, 0);
  }

  /** The weather laid over dates worked out without it. */
  public static Weathered of(Schedule dry, Facts now) {
    return new Walk(dry, now).done();
  }

  /** One pass over the tasks in the order of work. */
  private static final class Walk {
    private final Plan plan;
    private final Network network;
    private final Passes passes;
    private final Passes.Early early;
    private final long[] work;
    private final Forecast forecast;
    private final Map<Month, BigDecimal> fit = new EnumMap<>(Month.class);
    private final Map<String, LocalDate> held = new HashMap<>();
    private final Map<String, Long> longer = new HashMap<>();
    private final Map<String, LocalDateTime> butForOwn = new HashMap<>();
    private final List<String> byForecast = new ArrayList<>();
    private final List<String> byClimate = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    Walk(Schedule dry, Facts now) {
      plan = Plan.on(now);
      network = dry.network();
      passes = new Passes(network, plan.calendar(), plan.morning());
      early = new Passes.Early(passes.tasks());
      work = network.activities().stream().mapToLong(each -> each.left().expected()).toArray();
      forecast = Outlook.on(now);
      for (Build.Climate month : now.ledger().build().climate()) {
        fit.merge(month.month().ofYear(), month.fit(), BigDecimal::min);
      }
    }

    Weathered done() {
      for (int task : network.order) {
        passes.step(task, work, early);
        Activity activity = network.activities().get(task);
        Optional<WeatherNeed> need =
            activity.isDone()
                ? Optional.empty()
                : plan.task(activity.id()).flatMap(WeatherBound::need);
        if (need.isPresent()) {
          hold(task, activity, need.get());
          passes.step(task, work, early);
        }
      }
      Network changed = network.heldUntil(held).longerBy(longer);
      return new Weathered(plan.scheduled(changed), butForOwn, byForecast, byClimate, leftOut);
    }

    private void hold(int task, Activity activity, WeatherNeed need) {
      WorkCalendar own = activity.calendar(plan.calendar());
      LocalDateTime from = WorkCalendar.moment(plan.calendar().startAt(early.go[task]));
      butForOwn.put(activity.id(), from);
      Optional<LocalDate> last =
          forecast.lastDay().filter(day -> !day.isBefore(from.toLocalDate()));
      if (last.isPresent()) {
        byForecast.add(activity.id());
        List<Spell> spells = WeatherBound.spells(from, activity, own, forecast);
        Window window = forecast.firstWindow(need, spells);
        LocalDate day = window.fits() ? window.first() : last.get().plusDays(1);
        hold(task, activity.id(), day);
        if (window.fits()) {
          return;
        }
      }
      climate(task, activity.id(), own);
    }

    private void hold(int task, String id, LocalDate day) {
      passes.hold(task, day);
      held.put(id, day);
      passes.step(task, work, early);
    }

    /** Stretches a task over the days of its months that are not fit. */
    private void climate(int task, String id, WorkCalendar own) {
      long go = own.worked(plan.calendar().startAt(early.go[task]));
      OptionalLong stretched = stretched(go, work[task], own);
      if (stretched.isEmpty()) {
        leftOut.add(id);
        return;
      }
      byClimate.add(id);
      long more = stretched.getAsLong() - work[task];
      longer.put(id, more);
      work[task] += more;
    }

    /** Working minutes from a moment on in which so many fit ones lie; empty if nobody knows. */
    private OptionalLong stretched(long go, long needed, WorkCalendar calendar) {
      long aDay = calendar.minutesADay();
      double left = needed;
      long passed = 0;
      for (int i = 0; i < MOST_DAYS; i++) {
        LocalDate day = WorkCalendar.moment(calendar.startAt(go + passed)).toLocalDate();
        BigDecimal share = fit.get(day.getMonth());
        if (share == null) {
          return OptionalLong.empty();
        }
        long today = aDay - Math.floorMod(go + passed, aDay);
        if (left <= today * share.doubleValue()) {
          return OptionalLong.of(passed + (long) Math.ceil(left / share.doubleValue()));
        }
        left -= today * share.doubleValue();
        passed += today;
      }
      return OptionalLong.empty();
    }
  }
}
