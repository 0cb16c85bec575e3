package kitwright.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kitwright.ledger.Ledger;
import kitwright.ledger.Task;
import kitwright.network.Headways;

/**
 * Earned value of every line that tasks earn. A line's budget is spread over its tasks by their
 * likely duration.
 *
 * @param lines by line, in the order of the budget
 * @param whole their sum; empty where there are none
 * @param unearned lines that no task names, and so are in no figure
 */
public record EarnedBook(
    Map<String, EarnedValue> lines, Optional<EarnedValue> whole, List<String> unearned) {

  /**
   * Works it out for the day of the account.
   *
   * @param plannedShare of a task, by its id: how much of it was to be done by that day, 0 to 1
   */
  public static EarnedBook of(
      Ledger ledger, Account account, Function<String, BigDecimal> plannedShare) {
    Headways headways = Headways.of(ledger, account.asOf());
    Earned earned = new Earned(ledger.build().week(), headways);
    Map<String, EarnedValue> lines = new LinkedHashMap<>();
    List<String> unearned = new ArrayList<>();
    for (LineState line : account.lines()) {
      List<Task> tasks =
          ledger.tasks().stream()
              .filter(task -> task.withdrawn().isEmpty() && names(task, line.line()))
              .toList();
      if (tasks.isEmpty()) {
        unearned.add(line.line());
      } else {
        BigDecimal done = earned.share(tasks, headways::share);
        BigDecimal planned = earned.share(tasks, task -> plannedShare.apply(task.id()));
        lines.put(line.line(), value(line, planned, done));
      }
    }
    return new EarnedBook(
        java.util.Collections.unmodifiableMap(lines),
        lines.values().stream().reduce(EarnedValue::plus),
        List.copyOf(unearned));
  }

  private static boolean names(Task task, String line) {
    return task.budget().filter(ref -> ref.id().equals(line)).isPresent();
  }

  private static EarnedValue value(LineState line, BigDecimal planned, BigDecimal done) {
    BigDecimal budget = line.budget().amount();
    return new EarnedValue(
        line.budget().currency(),
        budget,
        budget.multiply(planned, MathContext.DECIMAL128),
        budget.multiply(done, MathContext.DECIMAL128),
        line.spent().amount());
  }
}
