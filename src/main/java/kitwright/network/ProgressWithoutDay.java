package kitwright.network;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;

/** Fires where a task is all done by its own word, and nobody wrote on which day. */
public final class ProgressWithoutDay implements Rule {
  @Override
  public String name() {
    return "progress-without-day";
  }

  @Override
  public void examine(Facts day, Findings out) {
    Headways headways = Headways.on(day);
    day.ledger().tasks().stream()
        .filter(task -> task.withdrawn().isEmpty() && task.finished().isEmpty())
        .filter(task -> headways.undated(task).filter(Headways::isAll).isPresent())
        .forEach(task -> out.add(finding(task, headways)));
  }

  private Finding finding(Task task, Headways headways) {
    String until =
        task.cure().map(cure -> ", and its wait of " + cure + " runs from there").orElse("");
    return new Finding(
        name(),
        Severity.WARN,
        task.at().of("progress"),
        "“" + task.what() + "” is all done, and nobody wrote on which day.",
        task.started().isPresent()
            ? "It counts as finished on "
                + headways.lastKnown(task)
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
