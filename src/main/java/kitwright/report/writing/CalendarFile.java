package kitwright.report.writing;

import com.github.mangstadt.vinnie.SyntaxStyle;
import com.github.mangstadt.vinnie.VObjectParameters;
import com.github.mangstadt.vinnie.io.VObjectPropertyValues;
import com.github.mangstadt.vinnie.io.VObjectWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.List;
import kitwright.ledger.Build;
import kitwright.ledger.Facts;
import kitwright.openmatter.Reminder;

/**
 * Days to act as an iCalendar file: whole days, each with a reminder the evening before. The
 * identity of each is made from its record, so that a calendar that has read an older file moves
 * what has moved.
 *
 * @see "RFC 5545, Internet Calendaring and Scheduling Core Object Specification (2009): 3.6.1
 *     events, 3.6.6 alarms, 3.8.4.7 UID, 3.8.7.4 SEQUENCE; RFC 7986, section 5.3: UIDs that tell
 *     nothing"
 */
public final class CalendarFile {
  /** The line by which a file is known as ours. */
  static final String PRODUCT = "-//Kitwright//Days to act//EN";

  /** The evening before, at six. */
  private static final String EVENING_BEFORE = "-PT6H";

  /** The same hour of the day itself, where that day has begun. */
  private static final String THAT_EVENING = "PT18H";

  /** Octets of a line, the space that begins it not counted; at most 75 in all. */
  private static final int LINE = 74;

  private static final DateTimeFormatter DAY = DateTimeFormatter.BASIC_ISO_DATE;

  private final StringWriter text = new StringWriter();
  private final VObjectWriter out = new VObjectWriter(text, SyntaxStyle.NEW);

  private CalendarFile() {
    out.getFoldedLineWriter().setLineLength(null); // it counts signs, the standard counts octets
  }

  /** The file as seen from the day. */
  public static String of(Facts now) {
    return of(now.ledger().build(), now.day(), Reminder.all(now));
  }

  /** A file of these days, as of a day. */
  public static String of(Build build, LocalDate today, List<Reminder> reminders) {
    CalendarFile file = new CalendarFile();
    try {
      file.calendar(build, today, reminders);
    } catch (IOException impossible) { // a writer into memory
      throw new UncheckedIOException(impossible);
    }
    return folded(file.text.toString());
  }

  private void calendar(Build build, LocalDate today, List<Reminder> reminders) throws IOException {
    out.writeBeginComponent("VCALENDAR");
    out.writeProperty("VERSION", "2.0");
    out.writeProperty("PRODID", PRODUCT);
    for (Reminder each : reminders) {
      event(build, today, each);
    }
    out.writeEndComponent("VCALENDAR");
    out.flush();
  }

  private void event(Build build, LocalDate today, Reminder each) throws IOException {
    out.writeBeginComponent("VEVENT");
    out.writeProperty("UID", uid(build, each));
    out.writeProperty("DTSTAMP", today.format(DAY) + "T000000Z");
    out.writeProperty("SEQUENCE", Long.toString(sequence(build, today)));
    day("DTSTART", each.first());
    day("DTEND", each.last().plusDays(1));
    text("SUMMARY", each.title());
    text("DESCRIPTION", each.says());
    out.writeProperty("TRANSP", "TRANSPARENT");
    out.writeBeginComponent("VALARM");
    out.writeProperty("ACTION", "DISPLAY");
    text("DESCRIPTION", each.title());
    out.writeProperty("TRIGGER", each.first().isAfter(today) ? EVENING_BEFORE : THAT_EVENING);
    out.writeEndComponent("VALARM");
    out.writeEndComponent("VEVENT");
  }

  private void text(String name, String value) throws IOException {
    String clean = value.replaceAll("[\\p{Cntrl}&&[^\\n]]", " ");
    out.writeProperty(name, VObjectPropertyValues.escape(clean).replace("\n", "\\n"));
  }

  private void day(String name, LocalDate day) throws IOException {
    VObjectParameters date = new VObjectParameters();
    date.put("VALUE", "DATE");
    out.writeProperty(null, name, date, day.format(DAY));
  }

  /** Later files count higher, so that they win; the day is the only clock there is. */
  private static long sequence(Build build, LocalDate today) {
    return Math.max(0, ChronoUnit.DAYS.between(build.started(), today));
  }

  /** The same for the same matter of the same build, and nothing but that. */
  static String uid(Build build, Reminder each) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(
                  (build.name() + "\n" + build.started() + "\n" + each.key())
                      .getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest, 0, 16) + "@kitwright";
    } catch (NoSuchAlgorithmException impossible) { // every Java has it
      throw new IllegalStateException(impossible);
    }
  }

  /** Lines of at most 75 octets, no sign cut in two, as the standard's section 3.1 asks. */
  private static String folded(String text) {
    StringBuilder folded = new StringBuilder();
    for (String line : text.split("\r\n")) {
      int used = 0;
      for (int i = 0; i < line.length(); ) {
        int sign = line.codePointAt(i);
        int octets = Character.toString(sign).getBytes(StandardCharsets.UTF_8).length;
        if (used + octets > LINE) {
          folded.append("\r\n ");
          used = 0;
        }
        folded.appendCodePoint(sign);
        used += octets;
        i += Character.charCount(sign);
      }
      folded.append("\r\n");
    }
    return folded.toString();
  }
}
