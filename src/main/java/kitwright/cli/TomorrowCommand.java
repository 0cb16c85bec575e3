package kitwright.cli;

import java.time.LocalDate;
import kitwright.document.Document;
import kitwright.ledger.Facts;
import kitwright.openmatter.WorkDay;
import kitwright.report.TomorrowPage;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** One page for the next working day. */
@picocli.CommandLine.Command(
    name = "tomorrow",
    description = {
      "Prints one page for the next working day: what to do first and why, what can go on, what"
          + " must be rung, ordered or given back by its evening, what must wait and for what."
    })
final class TomorrowCommand implements Command {
  /** How it is told. */
  enum Format {
    TEXT,
    MARKDOWN
  }

  @Mixin private LedgerOptions options = new LedgerOptions();

  @Option(
      names = "--on",
      paramLabel = "DATE",
      description = "The page of this day; else of the first working day after today.")
  private String on = "";

  @Option(
      names = "--format",
      paramLabel = "HOW",
      description = "text or markdown; text where not said.")
  private Format format = Format.TEXT;

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Facts now = Facts.of(opened.ledger(session), opened.today());
    LocalDate day = on.isEmpty() ? WorkDay.after(now) : LedgerOptions.day(on);
    Document page = TomorrowPage.of(WorkDay.of(day, now));
    session.print(
        format == Format.MARKDOWN ? page.markdown() : page.text(session.screen().width()));
    return CLEAN;
  }
}
