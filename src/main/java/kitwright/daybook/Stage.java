package kitwright.daybook;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import kitwright.ledger.Task;
import kitwright.network.Headways;

/**
 * How far a task had come on the evening of a day.
 *
 * @param begun the day on which work on it began; empty where it had not, or nobody knows when
 * @param done share done, 0 to 1
 */
public record Stage(Optional<LocalDate> begun, BigDecimal done) {
  static Stage of(Task task, Headways evening) {
    return new Stage(evening.begun(task), evening.share(task));
  }

  public boolean isBegun() {
    return begun.isPresent() || done.signum() > 0;
  }

  public boolean isDone() {
    return done.compareTo(BigDecimal.ONE) >= 0;
  }
}
