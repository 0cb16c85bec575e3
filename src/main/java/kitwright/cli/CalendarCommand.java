package kitwright.cli;

import java.nio.file.Path;
import kitwright.ledger.Facts;
import kitwright.report.writing.CalendarFile;
import kitwright.report.writing.Existing;
import kitwright.report.writing.Writing;

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
    to.mayPlace(
        0,
        "FILE",
        String.class,
        given -> file = given,
        "The file to write; kitwright.ics where not said.");
    to.flag("--force", () -> force = true, "Replace a file that Kitwright did not write.");
  }

  @Override
  public int run(Session session) {
    if (!file.endsWith(".ics")) {
      throw new Refusal(
          "“" + file + "” is no name for a calendar.", "Name a file that ends in .ics.");
    }
    Opened opened = Opened.of(options, session);
    Facts now = Facts.of(opened.ledger(session), opened.today());
    Path path = LedgerOptions.path(session, file).toAbsolutePath().normalize();
    Path folder = path.getParent();
    if (folder == null) {
      throw new Refusal(
          "“" + file + "” is no name for a calendar.", "Name a file that ends in .ics.");
    }
    Writing.into(folder)
        .write(
            path.getFileName().toString(),
            CalendarFile.of(now),
            force ? Existing.REPLACE : Existing.KEEP_FOREIGN)
        .<Runnable>match(
            done -> () -> session.say("written  " + done.file()),
            same -> () -> session.say("as it was " + same.file()),
            refused ->
                () -> {
                  throw new Refusal(refused.why().what(), refused.why().mend());
                })
        .run();
    return CLEAN;
  }
}
