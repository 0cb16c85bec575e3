package kitwright.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.function.Function;
import kitwright.ledger.Build;
import kitwright.ledger.Task;
import kitwright.network.Headways;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/** The share of a line's budget that its work has earned: tasks weigh by their likely duration. */
final class Earned {
  /** So that a task without duration weighs a little too. */
  private static final BigDecimal LEAST = new BigDecimal("0.01");

  private final Build.Week week;
  private final Headways headways;

  Earned(Build.Week week, Headways headways) {
    this.week = week;
    this.headways = headways;
  }

  /** Done, of all the work of these tasks, 0 to 1. */
  BigDecimal share(List<Task> tasks) {
    return share(tasks, headways::share);
  }

  /** The share of all the work of these tasks, by the share of each, 0 to 1. */
  BigDecimal share(List<Task> tasks, Function<Task, BigDecimal> shareOf) {
    BigDecimal all = BigDecimal.ZERO;
    BigDecimal done = BigDecimal.ZERO;
    for (Task task : tasks) {
      all = all.add(weight(task));
      done = done.add(weight(task).multiply(shareOf.apply(task)));
    }
    return all.signum() == 0 ? BigDecimal.ZERO : done.divide(all, MathContext.DECIMAL128);
  }

  /** Likely working time in hours; a day is a working day of the build. */
  BigDecimal weight(Task task) {
    Quantity takes = task.takes().likely();
    BigDecimal hours =
        switch (takes.unit()) {
          case DAY -> takes.amount().multiply(week.hours());
          case WEEK ->
              takes
                  .amount()
                  .multiply(week.hours())
                  .multiply(BigDecimal.valueOf(week.days().size()));
          default -> takes.in(Unit.HOUR).amount();
        };
    return hours.max(LEAST);
  }
}
