package kitwright.loan;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Loan;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;
import kitwright.value.Days;
import kitwright.value.Ref;

/** Fires where a tool went back while a task that needs it is under way. */
public final class ToolReturnedWhileNeeded implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    List<LoanStanding> back = LoanStanding.on(day).stream().filter(LoanStanding::isBack).toList();
    if (back.isEmpty()) {
      return;
    }
    UnderWay underWay = new UnderWay(day);
    back.forEach(
        standing ->
            needing(standing.loan(), day, underWay)
                .forEach(task -> out.add(finding(standing.loan(), task))));
  }

  private static List<Task> needing(Loan loan, Facts day, UnderWay underWay) {
    Set<String> tasks = new LinkedHashSet<>();
    loan.neededFor().stream().map(Ref::id).forEach(tasks::add);
    underWay.usersOf(loan.id()).forEach(tasks::add);
    return tasks.stream()
        .flatMap(id -> day.ledger().task(new Ref(id, loan.at().record())).stream())
        .filter(underWay::isUnderWay)
        .filter(task -> AtHand.lacking(task, day).contains(loan.tool()))
        .toList();
  }

  private Finding finding(Loan loan, Task task) {
    return warn(
        loan.at().of("returned"),
        "The "
            + loan.tool()
            + " went back on "
            + Days.named(loan.returned().orElseThrow())
            + ", but the task "
            + task.id()
            + " that needs it is not finished.",
        "The work stops when its turn comes.",
        "Borrow it again, or write that the task is “finished” or no longer needs it.",
        List.of(loan.named(), task.named()));
  }
}
