package kitwright.loan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Ledger;
import kitwright.ledger.Task;

/** Which tasks are begun and not finished, and which need a tool. */
final class UnderWay {
  private final LocalDate today;
  private final Map<String, BigDecimal> logged = new HashMap<>();
  private final Map<String, List<String>> usersOfTool = new HashMap<>();

  UnderWay(Ledger ledger, LocalDate today) {
    this.today = today;
    ledger.log().stream()
        .filter(log -> !log.day().isAfter(today))
        .forEach(log -> log.tasks().forEach((task, share) -> logged.put(task.id(), share)));
    for (Task task : ledger.tasks()) {
      task.tools()
          .forEach(
              tool ->
                  usersOfTool.computeIfAbsent(tool.id(), id -> new ArrayList<>()).add(task.id()));
    }
  }

  /** The tasks that name a tool. */
  List<String> usersOf(String tool) {
    return usersOfTool.getOrDefault(tool, List.of());
  }

  /** Begun by its record or the log, and not finished, complete or given up. */
  boolean isUnderWay(Task task) {
    Optional<BigDecimal> share = Optional.ofNullable(logged.get(task.id())).or(task::progress);
    boolean begun = isPast(task.started()) || share.filter(s -> s.signum() > 0).isPresent();
    boolean complete = share.filter(s -> s.compareTo(BigDecimal.ONE) >= 0).isPresent();
    return begun && !complete && !isPast(task.finished()) && !isPast(task.withdrawn());
  }

  private boolean isPast(Optional<LocalDate> day) {
    return day.filter(date -> !date.isAfter(today)).isPresent();
  }
}
