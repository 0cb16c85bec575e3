package kitwright.network;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import kitwright.ledger.Build;
import kitwright.value.Quantity;
import kitwright.value.ThreePoint;
import kitwright.value.Unit;

/**
 * How a build counts time. Work is counted in working days: {@code 1 d} is a day of the build's
 * hours, {@code 1 w} a week of its working days, {@code 1 h} an hour. A wait runs on the clock.
 *
 * @param calendar working days, hours and days off
 * @param daysAWeek working days of a week
 */
public record WorkTime(WorkCalendar calendar, int daysAWeek) {
  private static final BigDecimal MOST = BigDecimal.valueOf(Estimate.MOST);
  private static final BigDecimal SECONDS = BigDecimal.valueOf(60);

  public static WorkTime of(Build build) {
    Set<DayOfWeek> week =
        build.week().days().stream().map(Build.Day::dayOfWeek).collect(Collectors.toSet());
    long aDay =
        build.week().hours().multiply(SECONDS).setScale(0, RoundingMode.HALF_UP).longValue();
    List<DaysOff> off =
        build.off().stream()
            .map(Build.Off::days)
            .map(days -> new DaysOff(days.first(), days.last()))
            .toList();
    WorkCalendar calendar = WorkCalendar.of(week, Duration.ofMinutes(Math.max(1, aDay)), off);
    return new WorkTime(calendar, week.size());
  }

  /** Working minutes of an amount of work or of a lag, at most a century. */
  public long minutes(Quantity work) {
    long aDay = calendar.minutesADay();
    return switch (work.unit()) {
      case DAY -> bounded(work.amount().multiply(BigDecimal.valueOf(aDay)));
      case WEEK -> bounded(work.amount().multiply(BigDecimal.valueOf(aDay * daysAWeek)));
      default -> bounded(work.in(Unit.MINUTE).amount());
    };
  }

  /** A wait by the clock, day and night, at most a century. */
  public static Duration elapsed(Quantity wait) {
    return Duration.ofMinutes(bounded(wait.in(Unit.MINUTE).amount()));
  }

  /** Calendar days of a lead time or a horizon, rounded up, at most a century. */
  public static int calendarDays(Quantity time) {
    BigDecimal days = time.in(Unit.DAY).amount().min(MOST).setScale(0, RoundingMode.CEILING);
    return (int) Math.min(Estimate.MOST / WorkCalendar.CLOCK_DAY, days.longValue());
  }

  /** An estimate; of one that does not rise only the middle counts. */
  Estimate estimate(ThreePoint<Quantity> takes) {
    long low = minutes(takes.low());
    long likely = minutes(takes.likely());
    long high = minutes(takes.high());
    return low <= likely && likely <= high
        ? new Estimate(low, likely, high)
        : Estimate.fixed(likely);
  }

  private static long bounded(BigDecimal minutes) {
    return minutes.min(MOST).setScale(0, RoundingMode.HALF_UP).longValue();
  }
}
