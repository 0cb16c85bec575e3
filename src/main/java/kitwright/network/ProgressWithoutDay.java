package kitwright.network;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;
import kitwright.value.Days;

/** Fires where a task is begun or all done by its own word, and nobody wrote on which day. */
public final class ProgressWithoutDay implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Headways headways = Headways.on(day);
    day.ledger().tasks().stream()
        .filter(task -> task.withdrawn().isEmpty() && task.finished().isEmpty())
        .forEach(
            task ->
                headways
                    .undated(task)
                    .flatMap(s -> finding(task, s, headways))
                    .ifPresent(out::add));
  }

  private Optional<Finding> finding(Task task, BigDecimal share, Headways headways) {
    if (Headways.isAll(share)) {
      return Optional.of(finding(task, headways));
    }
    return Optional.of(share)
        .filter(some -> some.signum() > 0 && headways.begun(task).isEmpty())
        .map(some -> begun(task));
  }

  private Finding begun(Task task) {
    return note(
        task.at().of("progress"),
        "“" + task.what() + "” is begun by its own word, and nobody wrote on which day.",
        "It counts as begun on the day on which you ask: nobody can tell how long it took, or"
            + " whether it began before it might.",
        "Write the day under “started”, or the share done in the log of its day.",
        List.of(task.named()));
  }

  private Finding finding(Task task, Headways headways) {
    String until =
        task.cure().map(cure -> ", and its wait of " + cure + " runs from there").orElse("");
    return warn(
        task.at().of("progress"),
        "“" + task.what() + "” is all done, and nobody wrote on which day.",
        task.started().isPresent()
            ? "It counts as finished on "
                + Days.named(headways.lastKnown(task))
                + ", by the day it began and the time it takes"
                + until
                + "."
            : "It counts as finished on the day on which you ask"
                + task.cure()
                    .map(cure -> ", so that its wait of " + cure + " never ends")
                    .orElse("")
                + ".",
        "Write the day under “finished”, or 100 % in the log of that day.",
        List.of(task.named()));
  }
}
