package kitwright.network;

import java.time.LocalDate;

/**
 * A stretch of days on which nobody works.
 *
 * @param first first day off
 * @param last last day off, inclusive
 */
public record DaysOff(LocalDate first, LocalDate last) {
  public DaysOff {
    if (last.isBefore(first)) {
      throw new IllegalArgumentException("days off end on " + last + ", before " + first);
    }
  }
}
