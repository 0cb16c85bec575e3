package kitwright.network;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Task;

/**
 * Something in the order of work that a task still waits for.
 *
 * @param before id of the task that comes before; its own where it waits for itself
 * @param until the first working day after the wait; empty where nobody can say
 */
public record Wait(Kind kind, String before, Optional<LocalDate> until) {
  /** Why it waits. */
  public enum Kind {
    /** The task before is not finished. */
    UNFINISHED,
    /** The task before is finished, but its cure or the lag after it is not over. */
    CURING,
    /** The task waits, by way of others, for itself. */
    RING,
    /** No task has the id that it waits for. */
    UNKNOWN
  }

  /** What a task waits for on the next working day, in the order in which it names it. */
  static List<Wait> of(Task task, Plan plan) {
    List<Wait> waits = new ArrayList<>();
    if (plan.isInRing(task.id())) {
      waits.add(new Wait(Kind.RING, task.id(), Optional.empty()));
    }
    for (Task.Link link : task.after()) {
      if (!link.task().id().equals(task.id())) { // that it waits for itself is said already
        of(link, plan).ifPresent(waits::add);
      }
    }
    return waits;
  }

  private static Optional<Wait> of(Task.Link link, Plan plan) {
    String id = link.task().id();
    Optional<Planned> before = plan.planned(id);
    if (before.isEmpty()) {
      return plan.isGivenUp(link.task())
          ? Optional.empty()
          : Optional.of(new Wait(Kind.UNKNOWN, id, Optional.empty()));
    }
    if (plan.isInRing(id)) {
      return Optional.of(new Wait(Kind.UNFINISHED, id, Optional.empty()));
    }
    LocalDate free = free(link, before.get(), plan);
    if (plan.isOpen(id)) {
      return Optional.of(new Wait(Kind.UNFINISHED, id, Optional.of(free)));
    }
    return Optional.of(new Wait(Kind.CURING, id, Optional.of(free)))
        .filter(wait -> free.isAfter(plan.nextWorkingDay()));
  }

  /** The first day on which work can go on after a task and what is to be waited after it. */
  private static LocalDate free(Task.Link link, Planned before, Plan plan) {
    WorkCalendar calendar = plan.calendar();
    long lag = link.lag().map(plan.time()::minutes).orElse(0L);
    LocalDateTime over = calendar.add(before.ready(), Duration.ofMinutes(lag));
    return calendar.nextWorking(over).toLocalDate();
  }
}
