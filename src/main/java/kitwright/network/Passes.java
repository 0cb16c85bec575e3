package kitwright.network;

import java.time.LocalDate;
import java.util.List;

/**
 * Forward and backward pass over a network in worked minutes, for any set of durations.
 *
 * <p>A finished task keeps its days and does not move. A begun one goes on today; what is left of
 * it waits for its predecessors all the same. A cure runs on the clock, so that a night or a Sunday
 * can swallow it. Both passes take time in proportion to tasks and links.
 *
 * @see "Kelley and Walker, Critical-path planning and scheduling, Proceedings of the Eastern Joint
 *     Computer Conference 1959, 160-173 (from memory)"
 */
final class Passes {
  final Network network;
  final WorkCalendar calendar;
  final long today;
  final boolean[] done;
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
    cure = new long[tasks];
    release = new long[tasks];
    doneFinish = new long[tasks];
    doneReadyClock = new long[tasks];
    for (int i = 0; i < tasks; i++) {
      Activity each = activities.get(i);
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
    Arrows before = network.before;
    long go = release[task];
    for (int k = before.from[task]; k < before.from[task + 1]; k++) {
      go = Math.max(go, early.ready[before.to[k]] + before.lag[k]);
    }
    early.go[task] = done[task] ? doneFinish[task] : go;
    early.finish[task] = done[task] ? doneFinish[task] : go + work[task];
    early.ready[task] = ready(task, early.finish[task], work[task]);
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
          limit = Math.min(limit, late[follower] - work[follower] - after.lag[k]);
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
    return latestFinish(task, limit, work[task]) - early.finish[task];
  }

  /** The latest finish after which the task is still ready by {@code limit}. */
  private long latestFinish(int task, long limit, long work) {
    if (cure[task] == 0) {
      return limit;
    }
    long clock = calendar.startAt(limit) - cure[task];
    long finish = calendar.worked(clock);
    return work == 0 && calendar.startAt(finish) > clock ? finish - 1 : finish;
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
