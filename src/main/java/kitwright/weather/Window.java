package kitwright.weather;

import java.time.LocalDate;
import java.util.List;

/**
 * A stretch of days for a task, and what stands against it.
 *
 * @param first first day
 * @param last last day
 * @param obstacles why it does not fit, by day; empty if it does
 */
public record Window(LocalDate first, LocalDate last, List<Obstacle> obstacles) {
  public Window {
    obstacles = List.copyOf(obstacles);
  }

  public boolean fits() {
    return obstacles.isEmpty();
  }

  /** Whether nothing stands against it but that nothing is foretold. */
  public boolean isUnknown() {
    return !fits() && obstacles.stream().allMatch(o -> o.kind() == Obstacle.Kind.NO_FORECAST);
  }

  /** How many of its days do not fit. */
  public int lacking() {
    return (int) obstacles.stream().map(Obstacle::day).distinct().count();
  }
}
