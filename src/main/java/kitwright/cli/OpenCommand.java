package kitwright.cli;

import java.time.LocalDate;
import java.util.List;
import kitwright.ledger.Facts;
import kitwright.openmatter.OpenMatter;
import kitwright.openmatter.OpenMatters;
import kitwright.report.ahead.OpenTold;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists what is open, most pressing first. */
@picocli.CommandLine.Command(
    name = "open",
    description = {
      "Lists every open matter, most pressing first: by when it is needed so that the end of the"
          + " work does not move, how many working days of float the work has, whom it waits for"
          + " and what to do next.",
      "For example: kitwright open"
    })
final class OpenCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Mixin private Telling telling = new Telling();

  @Option(
      names = "--within",
      paramLabel = "WEEKS",
      description =
          "Only what one must act on within so many weeks: to order, to ask, or to have at hand.")
  private int within = -1;

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Facts now = Facts.of(opened.ledger(session), opened.today());
    OpenMatters open = OpenMatters.on(now);
    List<OpenMatter> matters = within < 0 ? open.all() : open.actingBy(last(opened.today()));
    return telling.tell(OpenTold.sheet(now.ledger(), now.day(), matters), opened, session);
  }

  private LocalDate last(LocalDate today) {
    return today.plusWeeks(Math.min(within, AheadCommand.MOST_WEEKS));
  }
}
