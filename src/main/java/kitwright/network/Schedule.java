package kitwright.network;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Earliest and latest dates of every task as seen from one day, float and critical chain. A
 * three-point duration counts with its mean.
 */
public final class Schedule {
  private final Passes passes;
  private final long[] work;
  private final Passes.Early early;
  private final long[] late;
  private final boolean[] critical;

  /** The clock minute at which each task without work happens; of others nothing. */
  private final long[] instant;

  private Schedule(Passes passes, long[] work) {
    this.passes = passes;
    this.work = work;
    early = new Passes.Early(passes.tasks());
    late = new long[passes.tasks()];
    critical = new boolean[passes.tasks()];
    passes.forward(work, early);
    passes.backward(work, early, late);
    passes.markCritical(early, critical);
    instant = instants();
  }

  /** A task without work happens when what it waits for ends or is cured, unless a day holds it. */
  private long[] instants() {
    long[] clocks = new long[passes.tasks()];
    Arrows before = passes.network.before;
    for (int i : passes.network.order) {
      if (work[i] != 0 || passes.done[i]) {
        continue;
      }
      long latest = Long.MIN_VALUE;
      for (int k = before.from[i]; k < before.from[i + 1]; k++) {
        if (passes.drives(before.to[k], i, before.lag[k], early)) {
          latest = Math.max(latest, ended(before.to[k], before.lag[k], early.go[i], clocks));
        }
      }
      clocks[i] =
          latest == Long.MIN_VALUE ? passes.calendar.startAt(early.go[i]) : ofItsDay(latest);
    }
    return clocks;
  }

  /** What happens as work ends at midnight happens on the day that ends. */
  private static long ofItsDay(long clock) {
    return Math.floorMod(clock, WorkCalendar.CLOCK_DAY) == 0 ? clock - 1 : clock;
  }

  /** When a predecessor lets go: by the clock, or after its lag at the end of some work. */
  private long ended(int predecessor, long lag, long worked, long[] clocks) {
    if (lag > 0) {
      return passes.calendar.endAt(worked);
    }
    if (!passes.network.activities().get(predecessor).cure().isZero()) {
      return passes.readyClock(predecessor, early.finish[predecessor], work[predecessor]);
    }
    return work[predecessor] == 0 ? clocks[predecessor] : passes.calendar.endAt(worked);
  }

  /**
   * The schedule from a day on.
   *
   * @param today work still ahead begins on this day at the earliest
   */
  public static Schedule of(Network network, WorkCalendar calendar, LocalDate today) {
    long[] work = network.activities().stream().mapToLong(each -> each.left().expected()).toArray();
    return new Schedule(new Passes(network, calendar, today), work);
  }

  public Network network() {
    return passes.network;
  }

  /** Every task with its dates, by id. */
  public List<Planned> all() {
    return IntStream.range(0, passes.tasks()).mapToObj(this::planned).toList();
  }

  /** One task with its dates; the id must be in the network. */
  public Planned of(String id) {
    return planned(passes.network.number(id));
  }

  /** The day on which all is over that a task waits for, whoever is away then. */
  LocalDate freedOn(String id) {
    long freed = passes.freed(passes.network.number(id), early);
    return WorkCalendar.moment(passes.calendar.startAt(freed)).toLocalDate();
  }

  /** When the last task is finished and cured; the opening of today if nothing is left to do. */
  public LocalDateTime end() {
    return WorkCalendar.moment(passes.endClock(work, early));
  }

  /** The day on which the last task is finished and cured. */
  public LocalDate lastDay() {
    return WorkCalendar.lastDay(end());
  }

  /** Working time between the end and the closing of a wanted day; negative if the end is later. */
  public Slack marginTo(LocalDate wanted) {
    return slack(passes.calendar.worked(passes.calendar.closing(wanted)) - early.end);
  }

  /** Working minutes from today to the end. */
  long length() {
    return early.end - passes.today;
  }

  /** The classical normal estimate of the end, along the critical chain. */
  public Pert pert() {
    return new Pert(passes.calendar, passes.today, length(), Chain.variance(passes, early));
  }

  private Slack slack(long minutes) {
    return new Slack(minutes, passes.calendar.minutesADay());
  }

  private Planned planned(int task) {
    Activity activity = passes.network.activities().get(task);
    long begun = passes.latestStart(task, late[task], work[task]);
    return new Planned(
        activity,
        started(activity, start(task, early.go[task])),
        goesOn(task),
        finished(activity, finish(task, early.finish[task])),
        ready(task),
        started(activity, start(task, begun)),
        finished(activity, finish(task, late[task])),
        slack(passes.between(task, early.finish[task], late[task])),
        slack(passes.free(task, work, early)),
        critical[task]);
  }

  private long start(int task, long worked) {
    if (work[task] != 0 || passes.done[task]) {
      return passes.calendar.startAt(worked);
    }
    return worked == early.go[task] ? instant[task] : ofItsDay(passes.calendar.endAt(worked));
  }

  private long finish(int task, long worked) {
    return work[task] == 0 ? start(task, worked) : passes.calendar.endAt(worked);
  }

  private LocalDateTime ready(int task) {
    if (passes.done[task] || !passes.network.activities().get(task).cure().isZero()) {
      return WorkCalendar.moment(passes.readyClock(task, early.finish[task], work[task]));
    }
    return WorkCalendar.moment(finish(task, early.finish[task]));
  }

  private LocalDateTime goesOn(int task) {
    return passes.network.activities().get(task).headway() instanceof Headway.Done done
        ? opening(done.from())
        : WorkCalendar.moment(start(task, early.go[task]));
  }

  private LocalDateTime started(Activity activity, long clock) {
    return activity
        .headway()
        .match(
            waiting -> WorkCalendar.moment(clock),
            begun -> opening(begun.on()),
            done -> opening(done.from()));
  }

  private LocalDateTime finished(Activity activity, long clock) {
    return activity.headway() instanceof Headway.Done done
        ? WorkCalendar.moment(passes.calendar.closing(done.to()))
        : WorkCalendar.moment(clock);
  }

  private LocalDateTime opening(LocalDate day) {
    return WorkCalendar.moment(passes.calendar.opening(day));
  }
}
