package kitwright.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.openmatter.OpenMatter;

/** The open matters as text. */
final class OpenText {
  private static final int INDENT = 18;

  private OpenText() {}

  static String of(Facts now, List<OpenMatter> matters, int width) {
    LocalDate today = now.day();
    Pages page = new Pages(width);
    long pressing = matters.stream().filter(m -> m.lastDay().isBefore(today.plusDays(7))).count();
    page.line(
        now.ledger().build().name()
            + ", "
            + Pages.inText(today, today.minusYears(1))
            + ": "
            + Pages.count(matters.size(), "open matter", "open matters")
            + (pressing == 0 ? "" : ", " + pressing + " to settle within a week"));
    matters.stream().filter(OpenMatter::isDated).forEach(m -> matter(m, today, page));
    List<OpenMatter> idle = matters.stream().filter(m -> !m.isDated()).toList();
    if (!idle.isEmpty()) {
      page.heading("No work waits for these, as far as the tasks say:");
      idle.forEach(m -> matter(m, today, page));
    }
    if (!matters.isEmpty()) {
      page.line("");
      page.hanging(
          "",
          0,
          "“by” is the last day to act: to order, to ask, or to have it at hand, so that the end of"
              + " the plan does not move. Float is the working days that the work itself can"
              + " lose.");
    }
    return page.text();
  }

  private static void matter(OpenMatter matter, LocalDate today, Pages page) {
    page.line("");
    Optional<OpenMatter.Stop> stop = matter.stop();
    String id = matter.record().replaceFirst("^.* ", "");
    page.hanging(
        matter.isDated() ? last(matter, today) : "",
        INDENT,
        capital(matter.sort().word()) + ": " + matter.what() + " (" + id + ")");
    stop.ifPresent(
        s -> page.hanging("float " + Pages.days(s.floatDays()), INDENT, stops(s, today)));
    page.hanging("", INDENT, "waits for " + matter.waitsFor() + expected(matter, today));
    page.hanging("", INDENT, "next: " + matter.next());
  }

  private static String last(OpenMatter matter, LocalDate today) {
    LocalDate last = matter.lastDay();
    return (last.isBefore(today) ? "since " : "by ") + Pages.day(last, today);
  }

  private static String stops(OpenMatter.Stop stop, LocalDate today) {
    String from = Pages.inText(stop.from(), today);
    String by = Pages.inText(stop.neededBy(), today);
    return "stops “"
        + stop.what()
        + (from.equals(by) ? "” on " + by : "” from " + from + ", and the whole plan from " + by);
  }

  private static String expected(OpenMatter matter, LocalDate today) {
    return matter
        .expected()
        .map(
            day ->
                ", expected "
                    + Pages.inText(day, today)
                    + (matter.comesTooLate() ? ", TOO LATE for the work" : ""))
        .orElse("");
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
