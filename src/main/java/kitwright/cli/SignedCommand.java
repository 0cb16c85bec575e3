package kitwright.cli;

import kitwright.history.Arrival;
import kitwright.history.History;
import kitwright.history.NoHistory;
import kitwright.ledger.Facts;
import kitwright.report.strength.SignedTold;

/** When each sign-off came into Git. */
final class SignedCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private final Telling telling = new Telling();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Tells by which commit each sign-off first came into Git, whether that commit is signed,"
            + " and whether its day fits: dated long before it came, or come after the work had"
            + " begun.",
        "Ends with 1 where something does not fit.",
        "For example: kitwright signed");
    options.declare(to);
    telling.declare(to);
  }

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Facts now = Facts.of(opened.ledger(session), opened.today());
    try {
      var arrivals = Arrival.of(History.of(opened.folder().root()), now);
      telling.tell(SignedTold.sheet(now, arrivals), opened, session);
      return arrivals.stream().anyMatch(each -> !each.doubts().isEmpty()) ? FOUND : CLEAN;
    } catch (NoHistory none) {
      throw new Refusal(none.what(), none.mend());
    }
  }
}
