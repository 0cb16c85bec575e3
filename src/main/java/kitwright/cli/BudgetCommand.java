package kitwright.cli;

import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.money.Account;
import kitwright.money.CostRange;
import kitwright.report.budget.BudgetLineTold;
import kitwright.report.budget.BudgetPicture;
import kitwright.report.budget.BudgetReport;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells where the money stands and where it will end. */
@picocli.CommandLine.Command(
    name = "budget",
    description = {
      "Tells per line and in all what is budgeted, paid, ordered, still to come and forecast; why"
          + " lines end over;",
      "and between which sums the build will likely end. What claims ask is never counted before it"
          + " has come.",
      "For example: kitwright budget --picture budget.svg"
    })
final class BudgetCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Mixin private Telling telling = new Telling();

  @Mixin private PictureOptions picture = new PictureOptions();

  @Option(names = "--line", paramLabel = "ID", description = "Only this line, with its spends.")
  private String line = "";

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "As matters stood on the evening of that day; the same as --today.")
  private String asOf = "";

  @Option(
      names = "--earned",
      description = "Money against work done as well: earned value, each figure with its formula.")
  private boolean earned;

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    var day = asOf.isEmpty() ? opened.today() : LedgerOptions.day(asOf);
    if (!line.isEmpty() && ledger.find(Kind.BUDGET, line).isEmpty()) {
      throw Refusal.unknown(
          "There is no budget line “" + line + "”.",
          line,
          ledger.ids(Kind.BUDGET),
          "The lines are: " + String.join(", ", ledger.ids(Kind.BUDGET)) + ".");
    }
    Facts now = Facts.of(ledger, day);
    if (!line.isEmpty()) {
      return telling.tell(BudgetLineTold.sheet(line, now), opened, session);
    }
    CostRange range = CostRange.of(ledger, Account.on(now));
    int told = telling.tell(BudgetReport.sheet(now, range, earned), opened, session);
    picture.draw(() -> BudgetPicture.of(ledger, Account.on(now), range), session);
    return told;
  }
}
