package kitwright.network;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;
import kitwright.value.Days;

/** Fires where a task and the log do not say the same of how far it has come. */
public final class ProgressDiffers implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Headways headways = Headways.on(day);
    day.ledger().tasks().stream()
        .filter(task -> task.withdrawn().isEmpty())
        .forEach(
            task -> {
              headways.log(task).flatMap(log -> finding(task, log)).ifPresent(out::add);
              finishedInPart(task).ifPresent(out::add);
            });
  }

  /** Finished by one key, and not by the other. */
  private Optional<Finding> finishedInPart(Task task) {
    return task.progress()
        .filter(share -> task.finished().isPresent() && !Headways.isAll(share))
        .map(
            share ->
                warn(
                    task.at().of("progress"),
                    "“"
                        + task.what()
                        + "” is finished on "
                        + Days.named(task.finished().orElseThrow())
                        + ", and "
                        + ProgressImpossible.percent(share)
                        + " done by its own word.",
                    "It counts as finished, and what follows as free to begin.",
                    "Take “progress” out of the task; or, where something is left to do, take out"
                        + " “finished”.",
                    List.of(task.named())));
  }

  private Optional<Finding> finding(Task task, Headways.Logged log) {
    Optional<LocalDate> finished = task.finished();
    if (finished.isPresent()) {
      return afterTheEnd(task, log, finished.get());
    }
    return task.progress()
        .filter(share -> share.compareTo(log.share()) != 0)
        .map(share -> share(task, share, log));
  }

  /** The log of the last day or a later one says that something is left. */
  private Optional<Finding> afterTheEnd(Task task, Headways.Logged log, LocalDate finished) {
    if (log.last().isBefore(finished) || Headways.isAll(log.share())) {
      return Optional.empty();
    }
    return Optional.of(
        told(
            task,
            "finished",
            "is finished on " + Days.named(finished),
            log,
            log.leavesAfter(finished)
                ? "The later word counts: it is not finished, and what follows waits for it."
                : "It counts as finished, and what follows as free to begin.",
            "Correct the day under “finished” or take it out, or correct the log."));
  }

  private Finding share(Task task, BigDecimal share, Headways.Logged log) {
    return told(
        task,
        "progress",
        "is " + ProgressImpossible.percent(share) + " done by its own word",
        log,
        "The log counts, since it has its day: plan, money and week all go by "
            + ProgressImpossible.percent(log.share())
            + ".",
        "Take “progress” out of the task; or, where it is the newer, write it in the log of its"
            + " day.");
  }

  private Finding told(
      Task task, String key, String says, Headways.Logged log, String follows, String mend) {
    return warn(
        task.at().of(key),
        "“"
            + task.what()
            + "” "
            + says
            + ", and the log of "
            + Days.named(log.last())
            + " says "
            + ProgressImpossible.percent(log.share())
            + ".",
        follows,
        mend,
        List.of(task.named(), "log day " + log.last()));
  }
}
