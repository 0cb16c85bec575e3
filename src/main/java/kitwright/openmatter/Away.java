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
 * Somebody a task waits for when it waits for nothing else.
 *
 * @param until the last day away: absences with no working day between them are one
 */
record Away(Party who, LocalDate until) {
  /** Everybody who is away on a working day after all else is over and before the work goes on. */
  static List<Away> of(Task task, Facts now) {
    Plan plan = Plan.on(now);
    LocalDate first = plan.workableOn(task.id());
    List<LocalDate> days =
        plan.freedOn(task.id()).isBefore(first)
            ? plan.freedOn(task.id())
                .datesUntil(first)
                .filter(plan.calendar()::isWorkingDay)
                .toList()
            : List.of();
    return task.who().stream()
        .distinct()
        .flatMap(who -> now.ledger().party(who).stream())
        .flatMap(
            who ->
                days.stream()
                    .flatMap(day -> last(who, day).stream())
                    .findFirst()
                    .map(day -> new Away(who, until(who, day, plan)))
                    .stream())
        .toList();
  }

  /**
   * The last day of an absence that goes over a day, and of those that follow without a working
   * day.
   */
  private static LocalDate until(Party who, LocalDate last, Plan plan) {
    LocalDate until = last;
    Optional<LocalDate> next = Optional.of(last);
    while (next.isPresent()) {
      until = next.get();
      next = last(who, plan.calendar().plusWorkingDays(until.plusDays(1), 0));
    }
    return until;
  }

  private static Optional<LocalDate> last(Party who, LocalDate day) {
    return who.off().stream()
        .filter(off -> !day.isBefore(off.first()) && !day.isAfter(off.last()))
        .map(Days::last)
        .max(LocalDate::compareTo);
  }

  String words() {
    return who.name() + " is away until " + Days.named(until);
  }
}
