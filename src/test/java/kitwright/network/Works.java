package kitwright.network;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Tasks and links for tests. */
final class Works {
  private Works() {}

  /** A task not begun, without cure wait, free to begin at once. */
  static Activity of(String id, Estimate takes) {
    return new Activity(id, id, takes, Duration.ZERO, Headway.WAITING, Optional.empty(), List.of());
  }

  static Activity curing(Activity task, Duration wait) {
    return new Activity(
        task.id(), task.what(), task.takes(), wait, task.headway(), task.notBefore(), task.away());
  }

  static Activity at(Activity task, Headway now) {
    return new Activity(
        task.id(), task.what(), task.takes(), task.cure(), now, task.notBefore(), task.away());
  }

  /** A link without lag. */
  static Link link(String before, String after) {
    return new Link(before, after, 0);
  }

  static Duration length(Schedule schedule) {
    return Duration.ofMinutes(schedule.length());
  }
}
