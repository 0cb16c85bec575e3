package kitwright.cli;

import java.time.LocalDate;
import java.util.List;
import kitwright.ledger.Facts;
import kitwright.openmatter.OpenMatter;
import kitwright.openmatter.OpenMatters;
import kitwright.report.ahead.OpenTold;

/** Lists what is open, most pressing first. */
final class OpenCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private final Telling telling = new Telling();
  private int within = -1;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Lists every open matter, most pressing first: by when it is needed so that the end of the"
            + " work does not move, how many working days of float the work has, whom it waits for"
            + " and what to do next.",
        "For example: kitwright open");
    options.declare(to);
    telling.declare(to);
    to.option(
        "--within",
        "WEEKS",
        int.class,
        given -> within = given,
        "Only what one must act on within so many weeks: to order, to ask, or to have at hand.");
  }

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
