package kitwright.network;

import java.time.DayOfWeek;
import java.util.Set;

/**
 * The weekly pattern of working days, as arithmetic on epoch days. Working days are numbered on
 * end; number 0 is the first of the week that holds 1970-01-01.
 */
final class Week {
  /** 1970-01-01 was a Thursday, the fourth day of its week. */
  private static final int MONDAY_SHIFT = 3;

  private final int size;
  private final int[] before = new int[DayOfWeek.values().length];
  private final int[] offset;

  Week(Set<DayOfWeek> days) {
    size = days.size();
    offset = new int[size];
    int counted = 0;
    for (DayOfWeek day : DayOfWeek.values()) {
      before[day.getValue() - 1] = counted;
      if (days.contains(day)) {
        offset[counted++] = day.getValue() - 1;
      }
    }
  }

  /** The number of the first working day on or after {@code epochDay}. */
  long numberAt(long epochDay) {
    long fromMonday = epochDay + MONDAY_SHIFT;
    return Math.floorDiv(fromMonday, 7) * size + before[Math.floorMod(fromMonday, 7)];
  }

  /** The epoch day of the working day with this number. */
  long dayOf(long number) {
    return Math.floorDiv(number, size) * 7L + offset[Math.floorMod(number, size)] - MONDAY_SHIFT;
  }
}
