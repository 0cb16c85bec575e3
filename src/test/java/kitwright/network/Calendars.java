package kitwright.network;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;

/** Calendars of the tests: the textbook's, on which a day is a day, and a weekend builder's. */
final class Calendars {
  static final LocalDate MONDAY = LocalDate.of(2026, 1, 5);
  static final WorkCalendar THE_CLOCK =
      WorkCalendar.of(EnumSet.allOf(DayOfWeek.class), Duration.ofHours(24), List.of());

  private Calendars() {}

  /** Six hours on Monday, Tuesday, Thursday and Saturday; Easter off. */
  static WorkCalendar barn() {
    return WorkCalendar.of(
        EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.THURSDAY, DayOfWeek.SATURDAY),
        Duration.ofHours(6),
        List.of(new DaysOff(LocalDate.of(2026, 4, 3), LocalDate.of(2026, 4, 6))));
  }

  /** Minutes of so many days on {@link #THE_CLOCK}. */
  static long days(double days) {
    return Math.round(days * WorkCalendar.CLOCK_DAY);
  }
}
