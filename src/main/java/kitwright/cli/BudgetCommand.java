package kitwright.cli;

import java.util.List;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.money.Account;
import kitwright.money.CostRange;
import kitwright.money.EarnedBook;
import kitwright.network.Baseline;
import kitwright.network.Plan;
import kitwright.report.BudgetPicture;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells where the money stands and where it will end. */
@picocli.CommandLine.Command(
    name = "budget",
    description = {
      "Tells per line and in all what is budgeted, paid, ordered, still to come and forecast; why"
          + " lines end over;",
      "and between which sums the build will likely end. What claims ask is never counted before it"
          + " has come."
    })
final class BudgetCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

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
    Account account = Account.on(now);
    BudgetText text = new BudgetText(now, session.screen().width());
    if (!line.isEmpty()) {
      session.out().print(text.line(line));
      return CLEAN;
    }
    CostRange range = CostRange.of(ledger, account);
    Optional<EarnedBook> book = earned ? Optional.of(book(now, account)) : Optional.empty();
    session.out().print(text.whole(book, range));
    picture.draw(() -> BudgetPicture.of(ledger, account, range), session);
    return CLEAN;
  }

  private static EarnedBook book(Facts now, Account account) {
    Baseline baseline = Baseline.of(Plan.on(now), now.ledger().build().started(), now.day());
    return EarnedBook.of(now.ledger(), account, baseline::share);
  }

  /** The shares of builds within which the end is told. */
  static final List<Double> SHARES = List.of(0.1, 0.5, 0.8, 0.9);
}
