package kitwright.value;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days of the calendar from the first to the last, both included. */
public record Days(LocalDate first, LocalDate last) {
  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");

  public Days {
    if (last.isBefore(first)) {
      throw new IllegalArgumentException(last + " is before " + first);
    }
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
   * Reads a day of ISO 8601, from 1900 to 2199.
   *
   * @throws Misread for any other text
   */
  public static LocalDate day(String text) throws Misread {
    Matcher iso = ISO.matcher(text.strip());
    if (!iso.matches()) {
      throw new Misread(
          Decimal.quoted(text) + " is not a date",
          "write year, month and day as 2026-01-31 (ISO 8601)");
    }
    int year = Integer.parseInt(iso.group(1));
    if (year < 1900 || year > 2199) {
      throw new Misread("the year " + year + " cannot be right", "write the true year");
    }
    try {
      return LocalDate.of(year, Integer.parseInt(iso.group(2)), Integer.parseInt(iso.group(3)));
    } catch (DateTimeException impossible) {
      throw new Misread(
          Decimal.quoted(text) + " is not a day of the calendar",
          "look the date up and correct it");
    }
  }

  @Override
  public String toString() {
    return first.equals(last) ? first.toString() : first + ".." + last;
  }
}
