package kitwright.network;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;

/** Fires where a task names itself among what must be finished before it. */
public final class TaskWaitsForItself implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    day.written()
        .tasks()
        .forEach(
            task ->
                task.after().stream()
                    .filter(link -> link.task().id().equals(task.id()))
                    .forEach(link -> out.add(finding(task, link))));
  }

  private Finding finding(Task task, Task.Link link) {
    return stop(
        link.task().at(),
        "The task “" + task.what() + "” waits for itself.",
        "It could never begin; dates are worked out as if this link were not there.",
        "Name the task that must be finished before, or take the link out.",
        List.of(task.named()));
  }
}
