package kitwright.daybook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Task;

/**
 * Hours of work, in hours. A day's hours are shared equally among the tasks that the day names, and
 * so among their phases: the log says who worked and on what, not for how long on each.
 *
 * @param byPerson by id of the party, in the order of their records
 * @param byPhase by phase, in the order in which tasks name them; {@link #ELSEWHERE} last
 */
public record Hours(Map<String, BigDecimal> byPerson, Map<String, BigDecimal> byPhase) {
  /** The phase of hours of days that name no task, and of tasks without a phase. */
  public static final String ELSEWHERE = "other work";

  public Hours {
    byPerson = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(byPerson));
    byPhase = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(byPhase));
  }

  /** The hours of some days. */
  public static Hours of(List<LogDay> days, Ledger ledger) {
    Map<String, BigDecimal> byPerson = new LinkedHashMap<>();
    ledger.parties().forEach(party -> byPerson.put(party.id(), BigDecimal.ZERO));
    Map<String, BigDecimal> byPhase = new LinkedHashMap<>();
    ledger.tasks().forEach(task -> byPhase.put(phase(task), BigDecimal.ZERO));
    byPhase.remove(ELSEWHERE);
    byPhase.put(ELSEWHERE, BigDecimal.ZERO);
    for (LogDay day : days) {
      day.hours().forEach((who, hours) -> byPerson.merge(who.id(), hours, BigDecimal::add));
      share(day, ledger, byPhase);
    }
    byPerson.values().removeIf(hours -> hours.signum() == 0);
    byPhase.values().removeIf(hours -> hours.signum() == 0);
    return new Hours(byPerson, byPhase);
  }

  private static void share(LogDay day, Ledger ledger, Map<String, BigDecimal> byPhase) {
    BigDecimal all = sum(day.hours());
    List<Task> tasks =
        day.tasks().keySet().stream().map(ledger::task).flatMap(Optional::stream).toList();
    if (tasks.isEmpty()) {
      byPhase.merge(ELSEWHERE, all, BigDecimal::add);
      return;
    }
    BigDecimal part = all.divide(BigDecimal.valueOf(tasks.size()), 2, RoundingMode.DOWN);
    // what rounding leaves goes to the first task, so that nothing is lost
    BigDecimal left = all.subtract(part.multiply(BigDecimal.valueOf(tasks.size())));
    byPhase.merge(phase(tasks.get(0)), left, BigDecimal::add);
    tasks.forEach(task -> byPhase.merge(phase(task), part, BigDecimal::add));
  }

  private static String phase(Task task) {
    return task.phase().orElse(ELSEWHERE);
  }

  private static <K> BigDecimal sum(Map<K, BigDecimal> hours) {
    return hours.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  public BigDecimal total() {
    return sum(byPerson);
  }
}
