package kitwright.cli;

import java.time.LocalDate;
import kitwright.ledger.Facts;
import kitwright.openmatter.WorkDay;
import kitwright.report.ahead.TomorrowPage;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** One page for the next working day. */
@picocli.CommandLine.Command(
    name = "tomorrow",
    description = {
      "Prints one page for the next working day: what to do first and why, what can go on, what"
          + " must be rung, ordered or given back by its evening, what must wait and for what.",
      "For example: kitwright tomorrow"
    })
final class TomorrowCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Mixin private Telling telling = new Telling();

  @Option(
      names = "--on",
      paramLabel = "DATE",
      description = "The page of this day; else of the first working day after today.")
  private String on = "";

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Facts now = Facts.of(opened.ledger(session), opened.today());
    LocalDate day = on.isEmpty() ? WorkDay.after(now) : LedgerOptions.day(on);
    return telling.tell(TomorrowPage.of(WorkDay.of(day, now)), opened, session);
  }
}
