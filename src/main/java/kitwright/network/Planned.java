package kitwright.network;

import java.time.LocalDate;
import java.time.LocalDateTime;

/**
 * A task with its dates.
 *
 * @param activity the task
 * @param earliestStart when it can begin, or did begin
 * @param goesOn when its work, or what is left of it, can go on: after all that it waits for
 * @param earliestFinish when its work can be finished, or was
 * @param ready when it is cured as well, on the clock
 * @param latestStart when it must begin so that the end does not move
 * @param latestFinish when its work must be finished
 * @param total time it can lose before the end moves
 * @param free time it can lose before any other task moves
 * @param critical whether it decides the end
 */
public record Planned(
    Activity activity,
    LocalDateTime earliestStart,
    LocalDateTime goesOn,
    LocalDateTime earliestFinish,
    LocalDateTime ready,
    LocalDateTime latestStart,
    LocalDateTime latestFinish,
    Slack total,
    Slack free,
    boolean critical) {
  public String id() {
    return activity.id();
  }

  /** The day on which its work can be finished, or was. */
  public LocalDate lastDay() {
    return earliestFinish.equals(earliestStart)
        ? earliestFinish.toLocalDate()
        : WorkCalendar.lastDay(earliestFinish);
  }

  /** The day on which it must be finished so that the end does not move. */
  public LocalDate lastDayAtLatest() {
    return WorkCalendar.lastDay(latestFinish);
  }
}
