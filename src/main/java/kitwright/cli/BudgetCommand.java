package kitwright.cli;

import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.money.Account;
import kitwright.money.CostRange;
import kitwright.report.budget.BudgetLineTold;
import kitwright.report.budget.BudgetPicture;
import kitwright.report.budget.BudgetReport;

/** Tells where the money stands and where it will end. */
final class BudgetCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private final Telling telling = new Telling();
  private final PictureOptions picture = new PictureOptions();
  private String line = "";
  private String asOf = "";
  private boolean earned;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Tells per line and in all what is budgeted, paid, ordered, still to come and forecast; why"
            + " lines end over; and between which sums the build will likely end.",
        "What claims ask is never counted before it has come.",
        "For example: kitwright budget --picture budget.svg");
    options.declare(to);
    telling.declare(to);
    picture.declare(to);
    to.option("--line", "ID", given -> line = given, "Only this line, with its spends.");
    to.option(
        "--as-of",
        "DATE",
        given -> asOf = given,
        "As matters stood on the evening of that day; the same as --today.");
    to.flag(
        "--earned",
        () -> earned = true,
        "Money against work done as well: earned value, each figure with its formula.");
  }

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    var day = asOf.isEmpty() ? opened.today() : LedgerOptions.day(asOf);
    if (!line.isEmpty() && ledger.find(Kind.BUDGET, line).isEmpty()) {
      throw Refusal.unknown(
          ledger,
          Kind.BUDGET,
          line,
          "The lines are: " + String.join(", ", ledger.ids(Kind.BUDGET)) + ".");
    }
    Facts now = Facts.of(ledger, day);
    if (!line.isEmpty()) {
      return telling.tell(BudgetLineTold.sheet(line, now), opened, session);
    }
    CostRange range = CostRange.of(ledger, Account.on(now));
    int told = telling.tell(BudgetReport.sheet(now, range, earned), opened, session);
    picture.draw(() -> BudgetPicture.of(now, range), session);
    return told;
  }
}
