package kitwright.network;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.LocalDateTime;

/**
 * How much of each task was to be done by a day, had everything gone from the build's first day as
 * the network has it now. Durations and links are today's; a ledger in Git knows the older ones.
 */
public final class Baseline {
  private final Network network;
  private final Schedule schedule;
  private final WorkCalendar calendar;
  private final LocalDateTime evening;

  private Baseline(
      Network network, Schedule schedule, WorkCalendar calendar, LocalDateTime evening) {
    this.network = network;
    this.schedule = schedule;
    this.calendar = calendar;
    this.evening = evening;
  }

  /** The shares at the end of a day. */
  public static Baseline of(Plan plan, LocalDate started, LocalDate day) {
    Network unbegun = plan.network().unbegun();
    return new Baseline(
        unbegun,
        Schedule.of(unbegun, plan.calendar(), started),
        plan.calendar(),
        day.plusDays(1).atStartOfDay());
  }

  /** Share of a task that was to be done, 0 to 1; none of a task that is not in the network. */
  public BigDecimal share(String task) {
    return network.activity(task).isPresent() ? share(schedule.of(task)) : BigDecimal.ZERO;
  }

  private BigDecimal share(Planned planned) {
    if (!planned.earliestFinish().isAfter(evening)) {
      return BigDecimal.ONE;
    }
    if (!planned.earliestStart().isBefore(evening)) {
      return BigDecimal.ZERO;
    }
    WorkCalendar own = planned.activity().calendar(calendar);
    long all = own.workBetween(planned.earliestStart(), planned.earliestFinish()).toMinutes();
    long done = own.workBetween(planned.earliestStart(), evening).toMinutes();
    return all == 0
        ? BigDecimal.ONE
        : BigDecimal.valueOf(done).divide(BigDecimal.valueOf(all), MathContext.DECIMAL64);
  }
}
