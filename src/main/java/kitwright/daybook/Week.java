package kitwright.daybook;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Locale;
import kitwright.value.Days;

/**
 * A week from Monday to Sunday, or its part from Monday to a day in it.
 *
 * @param days the first is a Monday, the last not later than the Sunday after it
 * @see "ISO 8601-1:2019, 4.3.5 and 5.2.3: calendar weeks and week dates"
 */
public record Week(Days days) {
  public Week {
    boolean oneWeek = !days.last().isAfter(days.first().plusDays(6));
    if (days.first().getDayOfWeek() != DayOfWeek.MONDAY || !oneWeek) {
      throw new IllegalArgumentException(days + " is not of one week from Monday on");
    }
  }

  /** The whole week in which a day lies. */
  public static Week of(LocalDate day) {
    LocalDate monday = monday(day);
    return new Week(new Days(monday, monday.plusDays(6)));
  }

  /** The week in which a day lies, as far as that day. */
  public static Week ending(LocalDate day) {
    return new Week(new Days(monday(day), day));
  }

  private static LocalDate monday(LocalDate day) {
    return day.minusDays(day.getDayOfWeek().getValue() - 1L);
  }

  /** Its first day, a Monday. */
  public LocalDate first() {
    return days.first();
  }

  /** The last day that counts. */
  public LocalDate last() {
    return days.last();
  }

  public boolean contains(LocalDate day) {
    return days.contains(day);
  }

  /** The whole week that follows. */
  public Week next() {
    return of(first().plusDays(7));
  }

  /** The year that the week belongs to: the one that holds its Thursday. */
  public int year() {
    return thursday().getYear();
  }

  /** Its number in that year, from 1 to 53. */
  public int number() {
    return (thursday().getDayOfYear() - 1) / 7 + 1;
  }

  private LocalDate thursday() {
    return first().plusDays(3);
  }

  /** As ISO 8601 writes it: {@code 2026-W13}. */
  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%04d-W%02d", year(), number());
  }
}
