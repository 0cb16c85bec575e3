package kitwright.network;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;
import kitwright.value.Days;

/** Fires where an open task waits for one that was given up. */
public final class LinkToWithdrawn implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Plan plan = Plan.on(day);
    plan.tasks().stream()
        .filter(task -> plan.isOpen(task.id()))
        .forEach(
            task ->
                task.after()
                    .forEach(
                        link ->
                            day.ledger()
                                .task(link.task())
                                .filter(before -> before.withdrawn().isPresent())
                                .ifPresent(before -> out.add(finding(task, link, before)))));
  }

  private Finding finding(Task task, Task.Link link, Task before) {
    return warn(
        link.task().at(),
        "“"
            + task.what()
            + "” waits for “"
            + before.what()
            + "”, which was given up on "
            + Days.named(before.withdrawn().orElseThrow())
            + ".",
        "The link counts for nothing: the task, and all behind it, may be planned too early.",
        "Link it to what comes in place of the task given up, or take the link out.",
        List.of(task.named(), before.named()));
  }
}
