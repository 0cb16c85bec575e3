package kitwright.openmatter;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import kitwright.network.Plan;
import kitwright.network.Planned;

/** Which of some tasks has to start first. */
final class Stops {
  private final Plan plan;

  Stops(Plan plan) {
    this.plan = plan;
  }

  /** The open task that has to start first; empty where all are finished or unknown. */
  Optional<OpenMatter.Stop> of(Collection<String> tasks) {
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
    Planned planned = plan.schedule().of(task);
    LocalDate from = plan.workableOn(task);
    LocalDate latest =
        plan.isBegun(task)
            ? plan.calendar().plusWorkingDays(from, planned.total().wholeDays())
            : planned.latestStart().toLocalDate();
    return new OpenMatter.Stop(
        task, plan.name(task), from, latest.isBefore(from) ? from : latest, planned.total());
  }
}
