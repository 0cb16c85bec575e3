package kitwright.cli;

import java.time.LocalDate;
import kitwright.ledger.Facts;
import kitwright.openmatter.WorkDay;
import kitwright.report.ahead.TomorrowPage;

/** One page for the next working day. */
final class TomorrowCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private final Telling telling = new Telling();
  private String on = "";

  @Override
  public void declare(Declaring to) {
    to.says(
        "Prints one page for the next working day: what to do first and why, what can go on, what"
            + " must be rung, ordered or given back by its evening, what must wait and for what.",
        "For example: kitwright tomorrow");
    options.declare(to);
    telling.declare(to);
    to.option(
        "--on",
        "DATE",
        given -> on = given,
        "The page of this day; else of the first working day after today.");
  }

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Facts now = Facts.of(opened.ledger(session), opened.today());
    LocalDate day = on.isEmpty() ? WorkDay.after(now) : LedgerOptions.day(on);
    return telling.tell(TomorrowPage.of(WorkDay.of(day, now)), opened, session);
  }
}
