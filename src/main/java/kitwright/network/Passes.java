package kitwright.network;

import java.time.LocalDate;
import java.util.List;

/**
 * Forward and backward pass over a network in worked minutes, for any set of durations.
 *
 * <p>A finished task keeps its days and does not move. A begun one goes on today; what is left of
 * it waits for its predecessors all the same. A cure runs on the clock, so that a night or a Sunday
 * can swallow it. Where somebody whom a task needs is away its work stands still. Both passes take
 * time in proportion to tasks and links.
 *
 * @see "Kelley and Walker, Critical-path planning and scheduling, Proceedings of the Eastern Joint
 *     Computer Conference 1959, 160-173 (from memory)"
 */
final class Passes {
  final Network network;
  final WorkCalendar calendar;
  final long today;
  final boolean[] done;

  /** When each task's work goes on: when work goes on, and all whom it needs can come. */
  private final WorkCalendar[] own;

  private final long[] cure;
  private final long[] release;
  private final long[] doneFinish;
  private final long[] doneReadyClock;

  Passes(Network network, WorkCalendar calendar, LocalDate today) {
    this.network = network;
    this.calendar = calendar;
    this.today = calendar.worked(calendar.opening(today));
    List<Activity> activities = network.activities();
    int tasks = activities.size();
    done = new boolean[tasks];
    own = new WorkCalendar[tasks];
    cure = new long[tasks];
    release = new long[tasks];
    doneFinish = new long[tasks];
    doneReadyClock = new long[tasks];
    for (int i = 0; i < tasks; i++) {
      Activity each = activities.get(i);
      own[i] = each.calendar(calendar);
      cure[i] = each.cure().toMinutes();
      release[i] = each.notBefore().map(this::opening).orElse(this.today);
      if (each.headway() instanceof Headway.Done finished) {
        done[i] = true;
        long closed = calendar.closing(finished.to());
        doneFinish[i] = calendar.worked(closed);
        doneReadyClock[i] = closed + cure[i];
      }
    }
  }

  private long opening(LocalDate day) {
    return Math.max(today, calendar.worked(calendar.opening(day)));
  }

  int tasks() {
    return done.length;
  }

  /** What one forward pass found, in worked minutes; reused from run to run. */
  static final class Early {
    /** When the work, or what is left of it, can begin. */
    final long[] go;

    final long[] finish;

    /** When followers may begin: after the cure. */
    final long[] ready;

    /** When the last of all is ready. */
    long end;

    Early(int tasks) {
      go = new long[tasks];
      finish = new long[tasks];
      ready = new long[tasks];
    }
  }

  /**
   * Earliest times.
   *
   * @param work working minutes left of each task
   */
  void forward(long[] work, Early early) {
    long end = today;
    for (int i : network.order) {
      step(i, work, early);
      end = Math.max(end, early.ready[i]);
    }
    early.end = end;
  }

  /** Earliest times of one task, those of all before it being known. */
  void step(int task, long[] work, Early early) {
    early.go[task] = done[task] ? doneFinish[task] : begins(task, work[task], early);
    early.finish[task] = done[task] ? doneFinish[task] : ends(task, early.go[task], work[task]);
    early.ready[task] = ready(task, early.finish[task], work[task]);
  }

  /** When all is over that a task waits for, whoever is away then. */
  long freed(int task, Early early) {
    Arrows before = network.before;
    long freed = release[task];
    for (int k = before.from[task]; k < before.from[task + 1]; k++) {
      freed = Math.max(freed, early.ready[before.to[k]] + before.lag[k]);
    }
    return freed;
  }

  /** The first moment from then on at which everybody can come. */
  private long begins(int task, long work, Early early) {
    long freed = freed(task, early);
    return work == 0 && freed > release[task] && isLeaving(task, freed) ? freed : here(task, freed);
  }

  private long here(int task, long from) {
    return own[task] == calendar
        ? from
        : calendar.worked(own[task].startAt(own[task].worked(calendar.startAt(from))));
  }

  /** Whether all whom a task needs are still here up to a moment: what takes no time can happen. */
  private boolean isLeaving(int task, long moment) {
    long clock = calendar.endAt(moment);
    return own[task].worked(clock) > own[task].worked(clock - 1);
  }

  private long ends(int task, long go, long work) {
    return work == 0 || own[task] == calendar
        ? go + work
        : calendar.worked(own[task].endAt(own[task].worked(calendar.startAt(go)) + work));
  }

  /** When a task must begin so that so much work is done by then. */
  long latestStart(int task, long finish, long work) {
    return work == 0 || own[task] == calendar
        ? finish - work
        : calendar.worked(own[task].startAt(worked(task, finish) - work));
  }

  /** Time in which all whom a task needs can come. */
  private long worked(int task, long until) {
    return own[task].worked(calendar.endAt(until));
  }

  /** How much time for its work lies between two finishes of a task. */
  long between(int task, long early, long late) {
    return own[task] == calendar ? late - early : worked(task, late) - worked(task, early);
  }

  /** Holds a task until a day, in this pass and those that follow. */
  void hold(int task, LocalDate day) {
    release[task] = Math.max(release[task], opening(day));
  }

  private long ready(int task, long finish, long work) {
    if (cure[task] == 0) {
      return finish;
    }
    return calendar.worked(readyClock(task, finish, work));
  }

  /** The clock minute at which a task is finished and cured. */
  long readyClock(int task, long finish, long work) {
    if (done[task]) {
      return doneReadyClock[task];
    }
    return (work == 0 ? calendar.startAt(finish) : calendar.endAt(finish)) + cure[task];
  }

  /** The clock minute at which the last task is ready; the opening of today if nothing is left. */
  long endClock(long[] work, Early early) {
    long latest = calendar.startAt(today);
    for (int i = 0; i < done.length; i++) {
      if (early.ready[i] == early.end) {
        boolean momentary = work[i] == 0 && cure[i] == 0 && !done[i];
        long clock =
            momentary ? calendar.endAt(early.finish[i]) : readyClock(i, early.finish[i], work[i]);
        latest = Math.max(latest, clock);
      }
    }
    return latest;
  }

  /**
   * Latest finishes that do not move the end.
   *
   * @param late filled with the latest finish of each task
   */
  void backward(long[] work, Early early, long[] late) {
    Arrows after = network.after;
    for (int n = done.length - 1; n >= 0; n--) {
      int i = network.order[n];
      long limit = early.end;
      for (int k = after.from[i]; k < after.from[i + 1]; k++) {
        int follower = after.to[k];
        if (!done[follower]) {
          limit =
              Math.min(limit, latestStart(follower, late[follower], work[follower]) - after.lag[k]);
        }
      }
      late[i] = done[i] ? early.finish[i] : latestFinish(i, limit, work[i]);
    }
  }

  /**
   * How far a task's finish can slip before the earliest start of a follower, or the end, moves.
   */
  long free(int task, long[] work, Early early) {
    if (done[task]) {
      return 0;
    }
    Arrows after = network.after;
    long limit = early.end;
    for (int k = after.from[task]; k < after.from[task + 1]; k++) {
      if (!done[after.to[k]]) {
        limit = Math.min(limit, early.go[after.to[k]] - after.lag[k]);
      }
    }
    return between(task, early.finish[task], latestFinish(task, limit, work[task]));
  }

  /** The latest finish after which the task is still ready by {@code limit}. */
  private long latestFinish(int task, long limit, long work) {
    if (cure[task] == 0) {
      return atWork(task, limit, work);
    }
    long clock = calendar.startAt(limit) - cure[task];
    long finish = calendar.worked(clock);
    return atWork(task, work == 0 && calendar.startAt(finish) > clock ? finish - 1 : finish, work);
  }

  /** The last moment up to {@code limit} at which a task's work can end. */
  private long atWork(int task, long limit, long work) {
    boolean reaches =
        own[task] == calendar
            || (work == 0 && (here(task, limit) == limit || isLeaving(task, limit)));
    return reaches ? limit : calendar.worked(own[task].endAt(worked(task, limit)));
  }

  /** Whether the arrow from {@code earlier} decides when {@code later} can go on. */
  boolean drives(int earlier, int later, long lag, Early early) {
    return !done[earlier] && !done[later] && early.ready[earlier] + lag == early.go[later];
  }

  /**
   * Marks the tasks whose lateness would make the end late: those whose readiness is the end, and
   * whatever decides the start of a marked one.
   */
  void markCritical(Early early, boolean[] critical) {
    Arrows before = network.before;
    for (int n = done.length - 1; n >= 0; n--) {
      int i = network.order[n];
      critical[i] = !done[i] && (critical[i] || early.ready[i] == early.end);
      if (critical[i]) {
        for (int k = before.from[i]; k < before.from[i + 1]; k++) {
          if (drives(before.to[k], i, before.lag[k], early)) {
            critical[before.to[k]] = true;
          }
        }
      }
    }
  }
}
