package kitwright.report.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.document.Value;
import kitwright.ledger.BudgetLine;
import kitwright.ledger.Facts;
import kitwright.ledger.Spend;
import kitwright.money.Account;
import kitwright.money.Lacks;
import kitwright.money.LineState;
import kitwright.report.words.Amounts;
import kitwright.report.words.Say;
import kitwright.spending.Books;
import kitwright.spending.Returned;
import kitwright.value.Money;
import kitwright.value.Word;

/** The money of a week and in all, for the crew. */
public record WeekMoney(List<Spend> spends, Facts now) {

  /** What was paid, ordered and got back this week; empty where nothing was. */
  Cell told() {
    return Cell.text(thisWeek())
        .with("paid", sums(amounts(Spend.State.PAID)))
        .with("ordered", sums(amounts(Spend.State.ORDERED)))
        .with("got-back", sums(cameBack()));
  }

  private static Value sums(List<Money> amounts) {
    return Value.of(Amounts.of(amounts).sums());
  }

  private List<Money> cameBack() {
    return returned().map(Returned::came).filter(came -> came.signum() > 0).toList();
  }

  /** The same in words. */
  String thisWeek() {
    List<String> parts = new ArrayList<>();
    add(parts, "paid", amounts(Spend.State.PAID));
    add(parts, "ordered", amounts(Spend.State.ORDERED));
    add(parts, "got back", cameBack());
    String unread = unread();
    String none = unread.isEmpty() ? "" : "Nothing that can be read.";
    return (parts.isEmpty() ? none : Word.capital(Say.list(parts)) + ".") + refused() + unread;
  }

  /** Of the refunds of the week what gives back money that nobody had paid. */
  private String refused() {
    List<String> refused =
        returned().filter(each -> !each.isWhole()).map(each -> each.refund().id()).toList();
    return refused.isEmpty()
        ? ""
        : " Refunds, or parts of them, of what nobody had paid are left out: "
            + Say.list(refused)
            + ".";
  }

  private String unread() {
    List<String> unread = Lacks.ofSpending(now);
    return unread.isEmpty()
        ? ""
        : " Whether that is all of the week’s money nobody can tell: "
            + String.join("; ", unread)
            + ".";
  }

  private Stream<Returned> returned() {
    Set<String> ids = spends.stream().map(Spend::id).collect(Collectors.toSet());
    return Books.on(now).returned().stream().filter(each -> ids.contains(each.refund().id()));
  }

  private static void add(List<String> parts, String word, List<Money> amounts) {
    List<Money> sums = Amounts.of(amounts).sums();
    if (!sums.isEmpty()) {
      parts.add(word + " " + Say.monies(sums));
    }
  }

  private List<Money> amounts(Spend.State state) {
    return spends.stream()
        .filter(each -> each.state() == state && each.amount().signum() >= 0)
        .map(Spend::amount)
        .toList();
  }

  /** Spent, ordered and forecast since the start. */
  Cell toldInAll() {
    LineState all = Account.on(now).whole();
    return Cell.text(inAll())
        .with("spent", new Value.Cash(all.spent()))
        .with("ordered", new Value.Cash(all.ordered()))
        .with("forecast", new Value.Cash(all.forecast()))
        .with("budget", new Value.Cash(all.budget()))
        .with("over", new Value.Cash(all.over()));
  }

  private String inAll() {
    LineState all = Account.on(now).whole();
    Money over = all.over();
    return "In all: spent "
        + Say.money(all.spent())
        + ", ordered "
        + Say.money(all.ordered())
        + "; forecast "
        + Say.money(all.forecast())
        + " against a budget of "
        + Say.money(all.budget())
        + (over.signum() > 0
            ? ", " + Say.money(over) + " over."
            : over.signum() < 0 ? ", " + Say.money(over.negated()) + " under." : ".")
        + lacking();
  }

  private String lacking() {
    List<String> all = Lacks.ofForecast(now);
    return all.isEmpty() ? "" : " These sums cannot be told whole: " + String.join("; ", all) + ".";
  }

  /** Each spend of the week; none where there is none. */
  public List<Block> table() {
    if (spends.isEmpty()) {
      return List.of();
    }
    Amounts amounts = Amounts.of(spends.stream().map(Spend::amount).toList());
    return List.of(
        Block.table(
            Column.columns(
                Column.left("On"),
                Column.left("What"),
                Column.left("Line"),
                Column.left(""),
                amounts.column("Amount")),
            spends.stream().map(each -> row(each, amounts)).toList()));
  }

  private Row row(Spend spend, Amounts amounts) {
    return Row.row(
        Cell.day(spend.on()),
        Cell.text(spend.what()),
        Cell.text(
            now.ledger().budgetLine(spend.line()).map(BudgetLine::title).orElse(spend.line().id())),
        Cell.text(Word.spoken(spend.state())),
        amounts.cell(spend.amount()));
  }
}
