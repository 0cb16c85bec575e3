package kitwright.cli;

import java.nio.file.Path;
import kitwright.ledger.Facts;
import kitwright.report.writing.CalendarFile;
import kitwright.report.writing.Existing;
import kitwright.report.writing.Writing;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the days to act for a phone. */
@picocli.CommandLine.Command(
    name = "calendar",
    description = {
      "Writes an iCalendar file (RFC 5545) with the last days to act, replies due, tools to return,"
          + " deliveries, weather windows and the launch, each with a reminder the evening before.",
      "Keep it in a calendar of its own: a later file moves what has moved, and what is settled is"
          + " no longer in it.",
      "For example: kitwright calendar dates.ics"
    })
final class CalendarCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "The file to write; kitwright.ics where not said.")
  private String file = "kitwright.ics";

  @Option(names = "--force", description = "Replace a file that Kitwright did not write.")
  private boolean force;

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
