package kitwright.network;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;
import kitwright.value.Days;

/** Fires where a task has begun though something that it waits for is not over. */
public final class BegunEarly implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Plan plan = Plan.on(day);
    plan.tasks().stream()
        .filter(task -> plan.isOpen(task.id()) && plan.isBegun(task.id()))
        .forEach(
            task ->
                plan.waits(task).stream()
                    .filter(wait -> plan.task(wait.before()).isPresent())
                    .filter(wait -> wait.kind() != Wait.Kind.RING)
                    .forEach(wait -> out.add(finding(task, wait, plan))));
  }

  private Finding finding(Task task, Wait wait, Plan plan) {
    String before = "“" + plan.name(wait.before()) + "”";
    boolean cures = wait.kind() == Wait.Kind.CURING;
    return warn(
        task.after().stream()
            .filter(link -> link.task().id().equals(wait.before()))
            .map(link -> link.task().at())
            .findFirst()
            .orElse(task.at().record()),
        "“"
            + task.what()
            + "” has begun, though "
            + before
            + (cures
                ? ", which it waits for, is still to cure."
                : ", which it waits for, is not finished."),
        "What is left of it counts as waiting"
            + wait.until().map(day -> " until " + Days.named(day)).orElse("")
            + "; what was done may have to be undone.",
        "Leave it until "
            + before
            + (cures ? " has cured" : " is finished (if it is, write the day under its “finished”)")
            + ", or take the link out if the order does not matter.",
        List.of(task.named(), "task " + wait.before()));
  }
}
