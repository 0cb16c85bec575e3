package kitwright.openmatter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Party;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.value.Days;

/**
 * Somebody a task needs who cannot come on the first day on which it could go on.
 *
 * @param until the last day away
 */
record Away(Party who, LocalDate until) {
  /** Everybody who is away on the first day on which a task could go on. */
  static List<Away> of(Task task, Facts now) {
    return on(Plan.on(now).workableOn(task.id()), task, now);
  }

  private static List<Away> on(LocalDate day, Task task, Facts now) {
    return task.who().stream()
        .flatMap(who -> now.ledger().party(who).stream())
        .flatMap(who -> until(who, day).map(last -> new Away(who, last)).stream())
        .toList();
  }

  private static Optional<LocalDate> until(Party who, LocalDate day) {
    return who.off().stream()
        .filter(off -> !day.isBefore(off.first()) && !day.isAfter(off.last()))
        .map(Days::last)
        .max(LocalDate::compareTo);
  }

  /** The first working day on which it could go on with everybody here. */
  static LocalDate backBy(Task task, Facts now) {
    LocalDate day = Plan.on(now).workableOn(task.id());
    List<Away> away = on(day, task, now);
    while (!away.isEmpty()) {
      LocalDate last = away.stream().map(Away::until).max(LocalDate::compareTo).orElseThrow();
      day = Plan.on(now).calendar().plusWorkingDays(last.plusDays(1), 0);
      away = on(day, task, now);
    }
    return day;
  }

  String words() {
    return who.name() + " is away until " + Days.named(until);
  }
}
