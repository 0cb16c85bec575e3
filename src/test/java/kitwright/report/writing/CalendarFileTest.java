package kitwright.report.writing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.openmatter.Reminder;
import kitwright.report.Told;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.CalendarComponent;
import org.junit.jupiter.api.Test;

/**
 * Days to act as an iCalendar file. Referee: ical4j 4.0.8, which reads and validates by RFC 5545;
 * and the standard's own examples.
 */
class CalendarFileTest {
  private static final LocalDate TODAY = Sample.TODAY;
  private static final Facts NOW =
      Facts.of(Sample.ledger("tasks: [{id: a, what: A, takes: 1 d}]"), TODAY);

  private static String file(Reminder... reminders) {
    return CalendarFile.of(NOW.ledger().build(), TODAY, List.of(reminders));
  }

  private static Reminder says(String title, String text) {
    return new Reminder("key", TODAY.plusDays(1), TODAY.plusDays(1), title, text);
  }

  private static Calendar read(String file) throws Exception {
    Calendar calendar = new CalendarBuilder().build(new StringReader(file));
    assertThat(calendar.validate(true).hasErrors()).as(file).isFalse();
    return calendar;
  }

  private static String property(CalendarComponent event, String name) {
    return event.getRequiredProperty(name).getValue();
  }

  private static Map<String, String> daysByUid(LocalDate day) throws Exception {
    Map<String, String> days = new HashMap<>();
    Calendar read = read(CalendarFile.of(Facts.of(Told.demonstration(), day)));
    for (CalendarComponent event : read.<CalendarComponent>getComponents(Component.VEVENT)) {
      assertThat(days.put(property(event, "UID"), property(event, "DTSTART"))).isNull();
    }
    return days;
  }

  @Test
  void theDemonstrationIsReadAndEachMatterHasOneIdentityThatStays() throws Exception {
    Map<String, String> sunday = daysByUid(LocalDate.of(2026, 3, 29));
    Map<String, String> tuesday = daysByUid(LocalDate.of(2026, 3, 31));
    assertThat(sunday).hasSizeGreaterThan(15);
    assertThat(tuesday.keySet().stream().filter(sunday::containsKey).count())
        .isGreaterThan(sunday.size() - 3L);
    assertThat(sunday).containsValue("20260926"); // the launch
    assertThat(sunday).containsValue("20260416"); // a crate
  }

  @Test
  void aLaterFileCountsHigher() throws Exception {
    List<String> numbers =
        List.of(TODAY, TODAY.plusDays(1)).stream()
            .map(day -> CalendarFile.of(NOW.ledger().build(), day, List.of(says("a", "b"))))
            .map(text -> text.replaceAll("(?s).*SEQUENCE:(\\d+).*", "$1"))
            .toList();
    assertThat(Integer.parseInt(numbers.get(1))).isEqualTo(Integer.parseInt(numbers.get(0)) + 1);
  }

  /** RFC 5545, section 3.8.1.5: the DESCRIPTION with line breaks, from memory. */
  @Test
  void textIsEscapedAsInTheStandardsExample() throws Exception {
    String says =
        """
        Meeting to provide technical review for "Phoenix" design.
        Happy Face Conference Room. Phoenix design team MUST attend this meeting.
        RSVP to team leader.\
        """;
    String file = file(says("a", says));
    assertThat(file.replace("\r\n ", ""))
        .contains(
            "DESCRIPTION:Meeting to provide technical review for \"Phoenix\" design.\\nHappy Face"
                + " Conference Room. Phoenix design team MUST attend this meeting.\\nRSVP to team"
                + " leader.\r\n");
    assertThat(property(event(file), "DESCRIPTION")).isEqualTo(says);
  }

  /** RFC 5545, section 3.3.11: comma, semicolon and backslash, from memory. */
  @Test
  void commasSemicolonsAndBackslashesComeBackAsTheyWere() throws Exception {
    String text = "a, b; c \\ d: “e” – 1 × 2 µm 🛶";
    assertThat(property(event(file(says(text, "x"))), "SUMMARY")).isEqualTo(text);
    assertThat(property(event(file(says("bell\u0007 and\ttab", "x"))), "SUMMARY"))
        .isEqualTo("bell  and tab");
  }

  /** RFC 5545, section 3.6.1: an all-day event ends on the day after its last, from memory. */
  @Test
  void aStretchOfDaysEndsOnTheDayAfter() throws Exception {
    Reminder days =
        new Reminder("w", LocalDate.of(2007, 6, 28), LocalDate.of(2007, 7, 8), "Festival", "x");
    CalendarComponent event = event(file(days));
    assertThat(property(event, "DTSTART")).isEqualTo("20070628");
    assertThat(property(event, "DTEND")).isEqualTo("20070709");
    assertThat(event.getRequiredProperty("DTSTART").getParameter("VALUE")).isPresent();
    assertThat(property(event, "TRANSP")).isEqualTo("TRANSPARENT");
  }

  private static CalendarComponent event(String file) throws Exception {
    return read(file).<CalendarComponent>getComponents(Component.VEVENT).get(0);
  }

  /** RFC 5545, section 3.1: at most 75 octets a line, none of them half a sign. */
  @Test
  void linesAreFoldedByOctetsAndEndAsTheStandardAsks() {
    String file = file(says("ü".repeat(200), "“” 🛶".repeat(60)));
    assertThat(file).endsWith("END:VCALENDAR\r\n");
    for (String line : file.split("\r\n")) {
      assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
      assertThat(line).doesNotContain("\n").doesNotContain("\uFFFD");
    }
    assertThat(file.replace("\r\n ", "")).contains("SUMMARY:" + "ü".repeat(200) + "\r\n");
  }

  @Test
  void whatIsDueTodayRemindsTodayAndWhatLiesAheadTheEveningBefore() {
    assertThat(file(new Reminder("k", TODAY, TODAY, "t", "s"))).contains("TRIGGER:PT18H\r\n");
    assertThat(file(says("t", "s"))).contains("TRIGGER:-PT6H\r\n");
  }

  @Test
  void theFileIsKnownAsOurs() {
    byte[] ours = file(says("a", "b")).getBytes(StandardCharsets.UTF_8);
    assertThat(Mark.isOn("x.ics", ours)).isTrue();
    assertThat(Mark.isOn("x.ics", "BEGIN:VCALENDAR\r\n".getBytes(StandardCharsets.UTF_8)))
        .isFalse();
  }

  @Test
  void aLooseDayWithoutMattersIsAnEmptyCalendarWithTheLaunch() throws Exception {
    Calendar read = read(CalendarFile.of(NOW));
    assertThat(read.getComponents(Component.VEVENT)).hasSize(1);
    assertThat(property(event(CalendarFile.of(NOW)), "SUMMARY")).isEqualTo("Launch: Sample");
  }

  @Test
  void daysOffThatBearANameAreInItUntilTheyAreOver() {
    String build =
        "build: {name: S, currency: EUR, started: 2026-01-05, off: [{days: 2026-02-27..2026-03-03,"
            + " name: Fair}, {days: 2026-02-20, name: Past}, 2026-04-01]}\n";
    String file = CalendarFile.of(Facts.of(Sample.ledger(build), TODAY));
    assertThat(file).contains("SUMMARY:No work: Fair").doesNotContain("Past");
    assertThat(file.split("BEGIN:VEVENT")).hasSize(2);
  }
}
