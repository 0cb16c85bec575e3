package kitwright.network;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Task;

/**
 * How far each task has come by the evening of a day. Of what the log says the latest entry counts;
 * a share written in the task itself has no day, so that the greater of the two holds. A share of
 * 100 % or more is a finished task.
 */
final class Headways {
  /**
   * What the log says of a task.
   *
   * @param first the first day that names it
   * @param last the last day that names it
   * @param share what that day says
   */
  private record Logged(LocalDate first, LocalDate last, BigDecimal share) {}

  private final LocalDate today;
  private final Map<String, Logged> logged = new HashMap<>();

  Headways(Ledger ledger, LocalDate today) {
    this.today = today;
    for (LogDay log : ledger.log()) { // by date
      if (!log.day().isAfter(today)) {
        log.tasks()
            .forEach(
                (task, share) ->
                    logged.merge(
                        task.id(),
                        new Logged(log.day(), log.day(), share),
                        (a, b) -> new Logged(a.first(), b.last(), b.share())));
      }
    }
  }

  Headway of(Task task) {
    Optional<Logged> log = Optional.ofNullable(logged.get(task.id()));
    Optional<LocalDate> finished = past(task.finished());
    BigDecimal share =
        log.map(Logged::share).orElse(BigDecimal.ZERO).max(task.progress().orElse(BigDecimal.ZERO));
    Optional<LocalDate> begun =
        Stream.of(past(task.started()), log.map(Logged::first), finished)
            .flatMap(Optional::stream)
            .min(LocalDate::compareTo)
            .or(() -> Optional.of(today).filter(day -> share.signum() > 0));
    if (finished.isPresent() || share.compareTo(BigDecimal.ONE) >= 0) {
      LocalDate end = finished.or(() -> log.map(Logged::last)).orElse(today);
      return new Headway.Done(begun.filter(day -> !day.isAfter(end)).orElse(end), end);
    }
    return begun
        .<Headway>map(day -> new Headway.Begun(day, share.doubleValue()))
        .orElse(Headway.WAITING);
  }

  private Optional<LocalDate> past(Optional<LocalDate> day) {
    return day.filter(on -> !on.isAfter(today));
  }
}
