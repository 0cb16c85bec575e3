package kitwright.daybook;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.LogDay;
import kitwright.ledger.Task;

/**
 * How far a task had come on the evening of a day.
 *
 * @param begun the day on which work on it began; empty where it had not
 * @param done share done, 0 to 1: what the log said last, or 1 from the day it was finished
 */
public record Stage(Optional<LocalDate> begun, BigDecimal done) {

  /**
   * The stage of a task on the evening of a day.
   *
   * @param log by date
   */
  public static Stage on(LocalDate evening, Task task, List<LogDay> log) {
    Optional<LocalDate> named =
        named(task, log).map(LogDay::day).filter(day -> !day.isAfter(evening)).findFirst();
    Optional<LocalDate> begun =
        Stream.of(task.started(), named, task.finished())
            .flatMap(Optional::stream)
            .filter(day -> !day.isAfter(evening))
            .min(LocalDate::compareTo);
    return new Stage(begun, done(evening, task, log));
  }

  private static BigDecimal done(LocalDate evening, Task task, List<LogDay> log) {
    if (task.finished().filter(day -> !day.isAfter(evening)).isPresent()) {
      return BigDecimal.ONE;
    }
    return named(task, log)
        .filter(day -> !day.day().isAfter(evening))
        .reduce((earlier, later) -> later)
        .flatMap(day -> share(day, task))
        .orElse(BigDecimal.ZERO);
  }

  /** The days of the log that name the task. */
  private static Stream<LogDay> named(Task task, List<LogDay> log) {
    return log.stream().filter(day -> share(day, task).isPresent());
  }

  private static Optional<BigDecimal> share(LogDay day, Task task) {
    return day.tasks().entrySet().stream()
        .filter(entry -> entry.getKey().id().equals(task.id()))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  public boolean isBegun() {
    return begun.isPresent();
  }

  public boolean isDone() {
    return done.compareTo(BigDecimal.ONE) >= 0;
  }
}
