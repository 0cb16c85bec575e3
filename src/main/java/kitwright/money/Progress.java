package kitwright.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import kitwright.ledger.Ledger;
import kitwright.ledger.Task;

/**
 * How much of each task is done on a day, 0 to 1: all of it once finished; else what the log last
 * said up to that day, or what the task itself says where the log says nothing.
 */
final class Progress {
  private final Map<String, BigDecimal> logged = new HashMap<>();
  private final LocalDate asOf;

  Progress(Ledger ledger, LocalDate asOf) {
    this.asOf = asOf;
    ledger.log().stream()
        .filter(day -> !day.day().isAfter(asOf))
        .forEach(day -> day.tasks().forEach((task, share) -> logged.put(task.id(), share)));
  }

  BigDecimal of(Task task) {
    if (task.finished().filter(day -> !day.isAfter(asOf)).isPresent()) {
      return BigDecimal.ONE;
    }
    BigDecimal written =
        task.started().filter(day -> day.isAfter(asOf)).isPresent()
            ? BigDecimal.ZERO
            : task.progress().orElse(BigDecimal.ZERO);
    return logged.getOrDefault(task.id(), written).min(BigDecimal.ONE);
  }
}
