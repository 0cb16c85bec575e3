package kitwright.cli;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import kitwright.finding.Wrapping;
import kitwright.value.Visible;

/** Lines for a terminal: dates as people say them, text broken at spaces, hanging indents. */
final class Pages {
  private final int width;
  private final StringBuilder out = new StringBuilder();

  Pages(int width) {
    this.width = Math.max(50, width);
  }

  /** {@code Tue 31 Mar}, with the year where it is another than today's. */
  static String day(LocalDate day, LocalDate today) {
    String text =
        day.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH)
            + String.format(Locale.ROOT, " %2d ", day.getDayOfMonth())
            + day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    return day.getYear() == today.getYear() ? text : text + " " + day.getYear();
  }

  /** The same inside a sentence: {@code Fri 3 Apr}. */
  static String inText(LocalDate day, LocalDate today) {
    return day(day, today).replace("  ", " ");
  }

  /** {@code 1 day}, {@code 12 days}. */
  static String days(long days) {
    return count(days, "day", "days");
  }

  /** {@code 1 task}, {@code 12 tasks}. */
  static String count(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  /** A heading with an empty line before it, but for the first. */
  Pages heading(String text) {
    out.append(out.isEmpty() ? "" : "\n");
    return line(text);
  }

  Pages line(String text) {
    out.append(Visible.line(text).stripTrailing()).append('\n');
    return this;
  }

  /** Text behind a label of fixed width, broken so that it hangs under its start. */
  Pages hanging(String label, int indent, String text) {
    List<String> lines = Wrapping.at(width - indent, Visible.line(text));
    for (int i = 0; i < lines.size(); i++) {
      String start = i == 0 ? label : "";
      line(start + " ".repeat(Math.max(0, indent - length(start))) + lines.get(i));
    }
    return this;
  }

  private static int length(CharSequence text) {
    return (int) text.codePoints().count();
  }

  /** Lines laid out already. */
  Pages block(String lines) {
    out.append(lines);
    return this;
  }

  String text() {
    return out.toString();
  }
}
