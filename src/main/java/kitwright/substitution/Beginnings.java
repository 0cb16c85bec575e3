package kitwright.substitution;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Task;
import kitwright.value.Place;
import kitwright.value.Ref;

/** When each task is first known to be under way, and whether it has ended: by record or log. */
final class Beginnings {
  /**
   * The first sign of work on a task.
   *
   * @param on empty where the task tells progress but no day
   */
  record Beginning(Optional<LocalDate> on, Place at) {}

  private final Ledger ledger;
  private final LocalDate today;
  private final Map<String, Beginning> logged = new HashMap<>();
  private final Set<String> ended = new HashSet<>();

  Beginnings(Ledger ledger, LocalDate today) {
    this.ledger = ledger;
    this.today = today;
    for (LogDay log : ledger.log()) { // by date, so that the first entry is the earliest
      if (!log.day().isAfter(today)) {
        log.tasks()
            .forEach(
                (task, share) -> {
                  logged.putIfAbsent(task.id(), new Beginning(Optional.of(log.day()), task.at()));
                  if (isWhole(share)) {
                    ended.add(task.id());
                  }
                });
      }
    }
  }

  /** The first sign of work on a task; empty where there is none. */
  Optional<Beginning> of(Ref ref) {
    Optional<Beginning> recorded = ledger.task(ref).flatMap(this::recorded);
    Optional<Beginning> inLog = Optional.ofNullable(logged.get(ref.id()));
    if (recorded.isPresent() && inLog.isPresent()) {
      LocalDate day = recorded.get().on().orElse(LocalDate.MAX);
      return inLog.get().on().orElseThrow().isBefore(day) ? inLog : recorded;
    }
    return recorded.or(() -> inLog);
  }

  /** Whether a task has ended: finished by its record, or all of it done by record or log. */
  boolean hasEnded(Ref ref) {
    return ended.contains(ref.id())
        || ledger
            .task(ref)
            .filter(
                task ->
                    task.finished().filter(day -> !day.isAfter(today)).isPresent()
                        || task.progress().filter(Beginnings::isWhole).isPresent())
            .isPresent();
  }

  private static boolean isWhole(BigDecimal share) {
    return share.compareTo(BigDecimal.ONE) >= 0;
  }

  private Optional<Beginning> recorded(Task task) {
    for (String key : new String[] {"started", "finished"}) {
      Optional<LocalDate> day = key.equals("started") ? task.started() : task.finished();
      if (day.isPresent()) {
        return day.filter(on -> !on.isAfter(today))
            .map(on -> new Beginning(Optional.of(on), task.at().of(key)));
      }
    }
    return task.progress()
        .filter(share -> share.signum() > 0)
        .map(share -> new Beginning(Optional.empty(), task.at().of("progress")));
  }
}
