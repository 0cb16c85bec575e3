package kitwright.cli;

import kitwright.ledger.Facts;
import kitwright.report.writing.CalendarFile;

/** Writes the days to act for a phone. */
final class CalendarCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private String file = "kitwright.ics";
  private boolean force;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Writes an iCalendar file (RFC 5545) with the last days to act, replies due, tools to"
            + " return, deliveries, weather windows and the launch, each with a reminder the"
            + " evening before.",
        "Keep it in a calendar of its own: a later file moves what has moved, and what is settled"
            + " is no longer in it.",
        "For example: kitwright calendar dates.ics");
    options.declare(to);
    to.mayPlace("FILE", given -> file = given, "The file to write; kitwright.ics where not said.");
    to.flag("--force", () -> force = true, "Replace a file that Kitwright did not write.");
  }

  @Override
  public int run(Session session) {
    OneFile calendar = OneFile.named(file, ".ics", "calendar", session);
    Opened opened = Opened.of(options, session);
    Facts now = Facts.of(opened.ledger(session), opened.today());
    calendar.write(CalendarFile.of(now), force, session::say);
    return CLEAN;
  }
}
