package kitwright.network;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;

/** Fires where a task is finished though something that it waits for is not. */
public final class TaskBeforePredecessor implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Plan plan = Plan.on(day);
    plan.tasks().stream()
        .filter(task -> !plan.isOpen(task.id()))
        .forEach(
            task ->
                task.after().stream()
                    .filter(link -> plan.isOpen(link.task().id()))
                    .forEach(link -> out.add(finding(task, link, plan))));
  }

  private Finding finding(Task task, Task.Link link, Plan plan) {
    return warn(
        link.task().at(),
        "“"
            + task.what()
            + "” is finished, though “"
            + plan.name(link.task().id())
            + "”, which it waits for, is not.",
        "One of the two records is false, or the link is; the dates of all that follows lean on"
            + " it.",
        "Write when the earlier task was finished, or take the link out if it was never needed.",
        List.of(task.named(), "task " + link.task().id()));
  }
}
