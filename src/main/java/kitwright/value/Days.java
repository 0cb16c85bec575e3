package kitwright.value;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;

/** Days of the calendar from the first to the last, both included. */
public record Days(LocalDate first, LocalDate last) {
  public Days {
    if (last.isBefore(first)) {
      throw new IllegalArgumentException(last + " is before " + first);
    }
  }

  /** So many days, as a person says it: “1 day”, “4 days”. */
  public static String told(long days) {
    return days + (days == 1 ? " day" : " days");
  }

  /** How long ago so many days are: “today”, “1 day ago”. */
  public static String ago(long days) {
    return days == 0 ? "today" : told(days) + " ago";
  }

  /** A day as a person says it, which no line breaks in two: “31 March 2026”. */
  public static String named(LocalDate day) {
    return dayAndMonth(day) + "\u00a0" + day.getYear();
  }

  /** The same where the year is plain: “31 March”. */
  public static String dayAndMonth(LocalDate day) {
    return day.getDayOfMonth() + "\u00a0" + month(day);
  }

  /**
   * “March”: English by its constant's name, for which Java need not read its names of all tongues.
   */
  public static String month(LocalDate day) {
    return capitalised(day.getMonth());
  }

  /** “Mar”. */
  public static String monthInShort(LocalDate day) {
    return month(day).substring(0, 3);
  }

  /** “Sun”. */
  public static String weekday(LocalDate day) {
    return capitalised(day.getDayOfWeek()).substring(0, 3);
  }

  private static String capitalised(Enum<?> constant) {
    return constant.name().charAt(0) + constant.name().substring(1).toLowerCase(Locale.ROOT);
  }

  /** As a person says them: “3 April 2026”, “3 April 2026 to 6 April 2026”. */
  public String named() {
    return first.equals(last) ? named(first) : named(first) + " to " + named(last);
  }

  public boolean contains(LocalDate day) {
    return !day.isBefore(first) && !day.isAfter(last);
  }

  public boolean overlaps(Days other) {
    return !last.isBefore(other.first) && !other.last.isBefore(first);
  }

  /**
   * Reads a day or {@code 2026-04-03..2026-04-06}.
   *
   * @throws Misread for a day that is none, or a range that ends before it starts
   */
  public static Days parse(String text) throws Misread {
    String[] ends = text.strip().split("\\s*\\.\\.\\s*", 2);
    LocalDate first = day(ends[0]);
    LocalDate last = ends.length == 2 ? day(ends[1]) : first;
    if (last.isBefore(first)) {
      throw new Misread(
          Decimal.quoted(text) + " ends before it starts", "write the earlier day first");
    }
    return new Days(first, last);
  }

  /**
   * Reads a day of ISO 8601, from 1900 to 2199; its hyphens may be those that no line breaks at.
   *
   * @throws Misread for any other text
   */
  public static LocalDate day(String text) throws Misread {
    String iso = text.strip().replace('\u2011', '-'); // as tables for people write it
    boolean hyphens = iso.length() == 10 && iso.charAt(4) == '-' && iso.charAt(7) == '-';
    int year = hyphens ? number(iso, 0, 4) : -1;
    int month = hyphens ? number(iso, 5, 7) : -1;
    int day = hyphens ? number(iso, 8, 10) : -1;
    if (year < 0 || month < 0 || day < 0) {
      throw new Misread(
          Decimal.quoted(text) + " is not a date",
          "write year, month and day as 2026-01-31 (ISO 8601)");
    }
    if (year < 1900 || year > 2199) {
      throw new Misread("the year " + year + " cannot be right", "write the true year");
    }
    try {
      return LocalDate.of(year, month, day);
    } catch (DateTimeException impossible) {
      throw new Misread(
          Decimal.quoted(text) + " is not a day of the calendar",
          "look the date up and correct it");
    }
  }

  /** What the digits from one place to another say; below zero where not all are digits. */
  private static int number(String text, int from, int to) {
    int value = 0;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (c < '0' || c > '9') {
        return -1;
      }
      value = value * 10 + (c - '0');
    }
    return value;
  }

  @Override
  public String toString() {
    return first.equals(last) ? first.toString() : first + ".." + last;
  }
}
