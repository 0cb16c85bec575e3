package kitwright.report.week;

import java.util.ArrayList;
import java.util.List;
import kitwright.document.Block;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.ledger.BudgetLine;
import kitwright.ledger.Facts;
import kitwright.ledger.Spend;
import kitwright.money.Account;
import kitwright.money.LineState;
import kitwright.money.WithoutRate;
import kitwright.report.words.Amounts;
import kitwright.report.words.Say;
import kitwright.value.Money;

/** The money of a week and in all, for the crew. */
public record WeekMoney(List<Spend> spends, Facts now) {

  /** What was paid, ordered and got back this week; empty where nothing was. */
  String thisWeek() {
    List<String> parts = new ArrayList<>();
    add(parts, "paid", Spend.State.PAID);
    add(parts, "ordered", Spend.State.ORDERED);
    add(parts, "got back", Spend.State.REFUNDED);
    return parts.isEmpty() ? "" : Say.capital(Say.list(parts)) + ".";
  }

  private void add(List<String> parts, String word, Spend.State state) {
    List<Money> sums = Amounts.of(amounts(state)).sums();
    if (!sums.isEmpty()) {
      parts.add(word + " " + Say.monies(sums));
    }
  }

  private List<Money> amounts(Spend.State state) {
    return spends.stream().filter(each -> each.state() == state).map(Spend::amount).toList();
  }

  /** Spent, ordered and forecast since the start. */
  String inAll() {
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
    List<String> all = WithoutRate.of(now).stream().map(WithoutRate::words).toList();
    return all.isEmpty()
        ? ""
        : " These sums are “at least”: there is no rate for " + Say.list(all) + ".";
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
        spend.on().toString(),
        spend.what(),
        now.ledger().budgetLine(spend.line()).map(BudgetLine::title).orElse(spend.line().id()),
        Say.word(spend.state()),
        amounts.cell(java.util.Optional.of(spend.amount())));
  }
}
