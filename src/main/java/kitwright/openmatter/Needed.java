package kitwright.openmatter;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.network.Plan;

/**
 * When a thing is needed: which of the tasks that wait for it has to start first, when it could go
 * on, and by when it must so that the end of the plan does not move. By the order of work alone:
 * that other things come late gives nobody more time. Letters, the choice of a way out and the open
 * matters all ask here.
 */
public final class Needed {
  private final Plan plan;

  private Needed(Plan plan) {
    this.plan = plan;
  }

  /** By the plan of the day. */
  public static Needed on(Facts day) {
    return new Needed(Plan.on(day));
  }

  /** The open task that has to start first; empty where all are finished or unknown. */
  public Optional<OpenMatter.Stop> of(Collection<String> tasks) {
    return tasks.stream()
        .distinct()
        .filter(plan::isOpen)
        .map(this::of)
        .min(
            Comparator.comparing(OpenMatter.Stop::neededBy)
                .thenComparing(OpenMatter.Stop::from)
                .thenComparing(OpenMatter.Stop::task));
  }

  private OpenMatter.Stop of(String task) {
    LocalDate from = plan.workableOn(task);
    LocalDate latest = plan.latestOn(task);
    return new OpenMatter.Stop(
        task,
        plan.name(task),
        from,
        latest.isBefore(from) ? from : latest,
        plan.schedule().of(task).total());
  }
}
