package kitwright.network;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;

/**
 * When work goes on: days of the week, hours a day, days off.
 *
 * <p>Inside the room, time is counted in minutes on two scales: <em>clock</em> minutes since
 * 1970-01-01T00:00 and <em>worked</em> minutes, which stand still outside working hours. Turning
 * one into the other takes a binary search over the days off, whatever the distance.
 */
public final class WorkCalendar {
  static final int CLOCK_DAY = 24 * 60;
  private static final LocalTime USUAL_OPENING = LocalTime.of(8, 0); // common practice, no source
  private static final LocalTime USUAL_BEDTIME = LocalTime.of(22, 0); // common practice, no source

  private final WorkingDays days;
  private final int opens;
  private final int length;

  private WorkCalendar(WorkingDays days, int opens, int length) {
    this.days = days;
    this.opens = opens;
    this.length = length;
  }

  /**
   * A calendar whose day begins at eight, or so early that it ends by ten at night, or at midnight.
   *
   * @param week working days, at least one
   * @param aDay working time of a day, more than nothing and at most 24 h
   * @param off days off; may overlap
   */
  public static WorkCalendar of(Set<DayOfWeek> week, Duration aDay, List<DaysOff> off) {
    long spare = Math.max(0, USUAL_BEDTIME.toSecondOfDay() / 60 - aDay.toMinutes());
    LocalTime early = LocalTime.ofSecondOfDay(spare * 60);
    return of(week, early.isBefore(USUAL_OPENING) ? early : USUAL_OPENING, aDay, off);
  }

  /** A calendar whose working day begins at {@code opens} and ends by midnight. */
  public static WorkCalendar of(
      Set<DayOfWeek> week, LocalTime opens, Duration aDay, List<DaysOff> off) {
    if (week.isEmpty()) {
      throw new IllegalArgumentException("a working week needs at least one working day");
    }
    int opening = opens.toSecondOfDay() / 60;
    long minutes = aDay.toMinutes();
    if (minutes < 1 || opening + minutes > CLOCK_DAY) {
      throw new IllegalArgumentException(
          "a working day of " + aDay + " from " + opens + " does not fit between two midnights");
    }
    return new WorkCalendar(new WorkingDays(new Week(week), off), opening, (int) minutes);
  }

  /** The same calendar less some days more. */
  public WorkCalendar without(List<DaysOff> more) {
    return more.isEmpty() ? this : new WorkCalendar(days.without(more), opens, length);
  }

  /** Whether work goes on that day. */
  public boolean isWorkingDay(LocalDate day) {
    return days.isWorking(day.toEpochDay());
  }

  /** The moment itself if work goes on then, else the next opening. */
  public LocalDateTime nextWorking(LocalDateTime moment) {
    return moment(startAt(worked(clock(moment))));
  }

  /**
   * The moment at which so much work is done. Work that ends with the day ends that evening, not
   * the next morning.
   *
   * @param work not negative; none at all leaves the moment as it is
   */
  public LocalDateTime add(LocalDateTime from, Duration work) {
    long minutes = work.toMinutes();
    if (minutes < 0) {
      throw new IllegalArgumentException("work is never negative: " + work);
    }
    return minutes == 0 ? from : moment(endAt(worked(clock(from)) + minutes));
  }

  /** The working day that lies {@code count} working days on from the first one at {@code day}. */
  public LocalDate plusWorkingDays(LocalDate day, long count) {
    return LocalDate.ofEpochDay(days.dayOf(days.numberAt(day.toEpochDay()) + count));
  }

  /** Working time between two moments; negative if the second is earlier. */
  public Duration workBetween(LocalDateTime from, LocalDateTime to) {
    return Duration.ofMinutes(worked(clock(to)) - worked(clock(from)));
  }

  int minutesADay() {
    return length;
  }

  /** Worked minutes up to a clock minute. */
  long worked(long clock) {
    long day = Math.floorDiv(clock, CLOCK_DAY);
    long number = days.numberAt(day);
    if (!days.isWorking(day)) {
      return number * length;
    }
    int since = Math.floorMod(clock, CLOCK_DAY) - opens;
    return number * length + Math.max(0, Math.min(length, since));
  }

  /** The clock minute at which work goes on after {@code worked}: the latest with that count. */
  long startAt(long worked) {
    return days.dayOf(Math.floorDiv(worked, length)) * CLOCK_DAY
        + opens
        + Math.floorMod(worked, length);
  }

  /** The clock minute at which {@code worked} is reached: the earliest with that count. */
  long endAt(long worked) {
    return startAt(worked - 1) + 1;
  }

  /** The clock minute at which the working day closes, on working days and others alike. */
  long closing(LocalDate day) {
    return day.toEpochDay() * CLOCK_DAY + opens + length;
  }

  /** The moment at which the working day opens, on working days and others alike. */
  public LocalDateTime openingOf(LocalDate day) {
    return moment(opening(day));
  }

  /** The clock minute at which the working day opens, on working days and others alike. */
  long opening(LocalDate day) {
    return day.toEpochDay() * CLOCK_DAY + opens;
  }

  static long clock(LocalDateTime moment) {
    return moment.toLocalDate().toEpochDay() * CLOCK_DAY
        + moment.toLocalTime().toSecondOfDay() / 60;
  }

  /** The day on which something ends: midnight belongs to the day that it ends. */
  public static LocalDate lastDay(LocalDateTime end) {
    return end.minusMinutes(1).toLocalDate();
  }

  static LocalDateTime moment(long clock) {
    return LocalDate.ofEpochDay(Math.floorDiv(clock, CLOCK_DAY))
        .atTime(LocalTime.ofSecondOfDay(Math.floorMod(clock, CLOCK_DAY) * 60L));
  }
}
