package kitwright.daybook;

import java.util.List;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Task;
import kitwright.network.Headways;
import kitwright.value.Days;

/**
 * How far a task came in some days.
 *
 * @param before the evening before the first day
 * @param after the evening of the last day
 */
public record Progress(Task task, Stage before, Stage after) {

  /** The tasks on which something was done in these days, in the order of their records. */
  public static List<Progress> in(Days days, Ledger ledger, List<LogDay> log) {
    Headways before = Headways.of(ledger, log, days.first().minusDays(1));
    Headways after = Headways.of(ledger, log, days.last());
    return ledger.tasks().stream()
        .filter(task -> touched(task, days, log))
        .map(task -> new Progress(task, Stage.of(task, before), Stage.of(task, after)))
        .toList();
  }

  private static boolean touched(Task task, Days days, List<LogDay> log) {
    return task.started().filter(days::contains).isPresent()
        || task.finished().filter(days::contains).isPresent()
        || log.stream().anyMatch(day -> days.contains(day.day()) && names(day, task));
  }

  private static boolean names(LogDay day, Task task) {
    return day.tasks().keySet().stream().anyMatch(ref -> ref.id().equals(task.id()));
  }

  /** Whether work on it began in these days. */
  public boolean begun() {
    return after.isBegun() && !before.isBegun();
  }

  /** Whether it was finished in these days. */
  public boolean finished() {
    return after.isDone() && !before.isDone();
  }
}
