package kitwright.loan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.value.Ref;

/**
 * How long open tasks still need a borrowed tool.
 *
 * @param tasks that need it, by earliest start
 * @param until the day on which the last of them could be finished at the earliest
 */
public record Need(LoanStanding loan, List<String> tasks, Optional<LocalDate> until) {
  public Need {
    tasks = List.copyOf(tasks);
  }

  /** What the plan still asks of a tool. */
  public static Need of(LoanStanding loan, Plan plan) {
    List<String> tasks =
        plan.ahead().stream()
            .flatMap(planned -> plan.task(planned.id()).stream())
            .filter(task -> needs(task, loan))
            .map(Task::id)
            .toList();
    return new Need(
        loan,
        tasks,
        tasks.stream()
            .map(task -> plan.schedule().of(task).lastDay())
            .max(Comparator.naturalOrder()));
  }

  private static boolean needs(Task task, LoanStanding loan) {
    Stream<String> byTask = task.tools().stream().map(Ref::id);
    boolean byLoan = loan.loan().neededFor().stream().anyMatch(ref -> ref.id().equals(task.id()));
    return byLoan || byTask.anyMatch(loan.loan().id()::equals);
  }

  /** Whether the work needs it longer than was agreed, or it should be back already. */
  public boolean isTooLong() {
    Optional<LocalDate> due = loan.loan().due();
    return !loan.isBack()
        && due.isPresent()
        && (loan.state() == LoanStanding.State.OVERDUE
            || until.filter(day -> day.isAfter(due.get())).isPresent());
  }

  /** The tasks that can be finished only after the day on which the tool is due. */
  public List<String> beyondDue(Plan plan) {
    return tasks.stream().filter(task -> isBeyondDue(plan.schedule().of(task))).toList();
  }

  private boolean isBeyondDue(Planned task) {
    return loan.loan().due().filter(due -> task.lastDay().isAfter(due)).isPresent();
  }
}
