package kitwright.weather;

import java.time.LocalDate;
import java.util.List;

/**
 * The days over which a task would go if it began on the first of them.
 *
 * @param work the days on which work goes on, at least one, in order; days off between are not in
 *     it
 * @param cured the last day on which it cures, nights and days off included; the last day of work
 *     where nothing cures
 */
public record Spell(List<LocalDate> work, LocalDate cured) {
  public Spell {
    work = List.copyOf(work);
    if (work.isEmpty() || cured.isBefore(work.get(work.size() - 1))) {
      throw new IllegalArgumentException("work on " + work + " is not cured on " + cured);
    }
  }

  public LocalDate first() {
    return work.get(0);
  }

  public LocalDate lastOfWork() {
    return work.get(work.size() - 1);
  }

  /** Whether something cures when the work is done, and so between its days as well. */
  private boolean cures() {
    return cured.isAfter(lastOfWork());
  }

  /** Whether cold would do harm on a day: while work goes on, and through every night of a cure. */
  boolean isWarmthAsked(LocalDate day) {
    return work.contains(day) || (cures() && !day.isBefore(first()) && !day.isAfter(cured));
  }
}
