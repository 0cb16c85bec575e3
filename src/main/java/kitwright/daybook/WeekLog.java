package kitwright.daybook;

import java.util.List;
import kitwright.ledger.Evidence;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;

/**
 * What the log says of a week.
 *
 * @param days the days written up, by date
 * @param progress tasks on which something was done
 * @param used what was used up
 */
public record WeekLog(
    List<LogDay> days,
    Hours hours,
    List<Progress> progress,
    List<Consumed> used,
    List<Evidence> photos) {
  public WeekLog {
    days = List.copyOf(days);
    progress = List.copyOf(progress);
    used = List.copyOf(used);
    photos = List.copyOf(photos);
  }

  /** All that the log says of a week. */
  public static WeekLog of(Week week, Ledger ledger) {
    return of(week, ledger, ledger.log());
  }

  /** What some days of the log, by date, say of a week. */
  public static WeekLog of(Week week, Ledger ledger, List<LogDay> log) {
    List<LogDay> days = log.stream().filter(logged -> week.contains(logged.day())).toList();
    return new WeekLog(
        days,
        Hours.of(days, ledger),
        Progress.in(week.days(), ledger, log),
        Consumed.in(days, ledger),
        days.stream().flatMap(day -> day.photos().stream()).toList());
  }

  /** Tasks that were finished. */
  public List<Progress> finished() {
    return progress.stream().filter(Progress::finished).toList();
  }
}
