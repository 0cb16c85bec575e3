package kitwright.report.budget;

import java.util.List;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.ledger.Facts;
import kitwright.money.Account;
import kitwright.money.Lacks;
import kitwright.money.LineState;
import kitwright.money.RateUsed;
import kitwright.report.words.Cells;
import kitwright.report.words.Names;
import kitwright.report.words.Sheet;
import kitwright.spending.Quote;
import kitwright.spending.Valued;
import kitwright.value.Word;

/** One line of the budget with its spends, and why it ends where it does. */
public final class BudgetLineTold {
  private BudgetLineTold() {}

  /** The document. */
  public static Sheet sheet(String id, Facts now) {
    LineState line = Account.on(now).line(id).orElseThrow();
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .value("today", Cells.spoken(now.day()))
            .sentence("line", id)
            .sentence("title", line.title())
            .value("budget", Cells.money(line.budget()))
            .value("paid", Cells.money(line.paid()))
            .value("ordered", Cells.money(line.ordered()))
            .value("refunded", Cells.money(line.refunded()))
            .value("to-come", Cells.money(line.toCome()))
            .value("forecast", Cells.money(line.forecast()))
            .value("over", Cells.over(line.over()))
            .value("tax", Cells.money(line.tax()))
            .value("duty", Cells.money(line.duty()))
            .table("spends", spends(Account.on(now).spendsOn(id), new Names(now.ledger())))
            .value("lacking", BudgetReport.lacking(Lacks.ofForecast(id, now)))
            .table("rates", RatesTold.table(RateUsed.of(Account.on(now).spendsOn(id))))
            .block("causes", Overruns.of(line, now).toArray(Block[]::new));
    return new Sheet("budget-" + id + ".md", "budget-line", slots);
  }

  /** What one unit of its currency was worth; nothing where that is the build's own. */
  private static Cell rate(Quote quote) {
    return quote.how() == Quote.How.SAME
        ? Cell.none()
        : Cell.number(RatesTold.one(quote).toPlainString(), RatesTold.one(quote));
  }

  private static Table spends(List<Valued> spends, Names names) {
    return new Table(
        "Spends",
        Column.columns(
            Column.left("Day"),
            Column.head("What"),
            Column.left("To"),
            Column.left("State"),
            Column.right("Amount"),
            Column.data("one-is"),
            Column.right("Counts")),
        spends.stream()
            .map(
                each ->
                    Row.row(
                        Cell.day(each.spend().on()),
                        Cell.text(each.spend().what()),
                        Cell.text(each.spend().to().map(names::of)),
                        Cell.text(Word.spoken(each.spend().state())),
                        Cells.money(each.spend().amount()),
                        rate(each.quote()),
                        Cells.amount(each.counted())))
            .toList());
  }
}
