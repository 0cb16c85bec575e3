package kitwright.cli;

import java.util.List;
import kitwright.daybook.Week;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.report.WeekReport;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells a week. */
@picocli.CommandLine.Command(
    name = "week",
    description = {
      "Prints what happened in a week and what comes next. Weeks run from Monday to Sunday (ISO 8601).",
      "The public reads no money, no names of parties, no claims, and nothing marked for the crew."
    })
final class WeekCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Mixin private OutOptions out = new OutOptions();

  @Option(
      names = "--ending",
      paramLabel = "DATE",
      description = "The week as far as this day; else as far as today.")
  private String ending = "";

  @Option(
      names = "--audience",
      paramLabel = "WHO",
      description = "crew (everything) or public; crew where not said.")
  private LogDay.Audience audience = LogDay.Audience.CREW;

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    Week week = Week.ending(ending.isEmpty() ? opened.today() : LedgerOptions.day(ending));
    return out.tell(
        List.of(WeekReport.of(ledger, week, audience)), OutOptions.PRINTED, opened, session);
  }
}
