package kitwright.takeoff;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;

/** Fires where what open work takes of a section cannot be worked out. */
public final class TakeOffIncomplete implements Rule {
  @Override
  public String name() {
    return "takeoff-incomplete";
  }

  @Override
  public void examine(Facts day, Findings out) {
    for (Task task : day.ledger().tasks()) {
      if (task.finished().isEmpty() && task.withdrawn().isEmpty()) {
        for (Task.Use use : task.uses()) {
          TakeOff.of(use, day.ledger()).gaps().forEach(gap -> out.add(finding(task, use, gap)));
        }
      }
    }
  }

  private Finding finding(Task task, Task.Use use, TakeOff.Gap gap) {
    return warn(
        use.at().of("section"),
        "It is not known " + gap.what() + ", which " + task.named() + " takes.",
        "It is in no look-ahead and no order, and the task is not told as ready.",
        gap.mend(),
        List.of(task.named()));
  }
}
