package kitwright.report.stores;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Value;
import kitwright.ledger.Evidence;
import kitwright.ledger.Facts;
import kitwright.ledger.Loan;
import kitwright.ledger.Party;
import kitwright.loan.LoanStanding;
import kitwright.money.Account;
import kitwright.money.OpenRepair;
import kitwright.network.Headways;
import kitwright.report.words.Amounts;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.value.Money;
import kitwright.value.Price;
import kitwright.value.Ref;
import kitwright.value.Word;

/** Borrowed tools: what is due when, how it came, and what borrowing has saved against hire. */
public final class ToolsReport {
  private ToolsReport() {}

  public static List<Sheet> sheets(Facts now) {
    List<LoanStanding> here =
        LoanStanding.on(now).stream()
            .filter(each -> !each.isBack())
            .sorted(Comparator.comparing(each -> each.daysLeft().orElse(Long.MAX_VALUE)))
            .toList();
    List<LoanStanding> back = LoanStanding.on(now).stream().filter(LoanStanding::isBack).toList();
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .value("today", Cells.spoken(now.day()))
            .value(
                "summary",
                Cell.text(summary(LoanStanding.on(now), here) + owes(now))
                    .with("worth", Value.of(worth(here)))
                    .with("saved", Value.of(saved(LoanStanding.on(now)))))
            .block("here", tables(here.isEmpty(), here(here, now)))
            .block("back", tables(back.isEmpty(), back(back)))
            .block("owed", tables(owed(now).isEmpty(), repairs(owed(now), now)))
            .block("saved", tables(saved(now).isEmpty(), savings(saved(now))));
    return List.of(new Sheet("tools.md", "tools", slots));
  }

  private static Block[] tables(boolean none, Block table) {
    return none ? new Block[0] : new Block[] {table};
  }

  private static List<LoanStanding> saved(Facts now) {
    return LoanStanding.on(now).stream().filter(each -> each.saved().isPresent()).toList();
  }

  private static String summary(List<LoanStanding> all, List<LoanStanding> here) {
    if (all.isEmpty()) {
      return "Nothing is borrowed.";
    }
    List<LoanStanding> late =
        here.stream().filter(e -> e.state() == LoanStanding.State.OVERDUE).toList();
    String kept =
        here.isEmpty()
            ? "Every tool has gone back to its owner."
            : Word.capital(Say.count(here.size(), "tool is", "tools are")) + " with us.";
    String lateness =
        late.isEmpty()
            ? ""
            : " Overdue: "
                + Say.list(
                    late.stream()
                        .map(e -> e.loan().tool() + ", by " + Say.days(-e.daysLeft().orElse(0L)))
                        .toList())
                + ".";
    List<Money> saved = saved(all);
    List<Money> worth = worth(here);
    return kept
        + lateness
        + (worth.isEmpty() ? "" : " New, what is here would cost " + Say.monies(worth) + ".")
        + (saved.isEmpty() ? "" : " Hiring would have cost " + Say.monies(saved) + " so far.");
  }

  /** What hiring would have cost. */
  private static List<Money> saved(List<LoanStanding> all) {
    return Amounts.of(all.stream().flatMap(each -> each.saved().stream()).toList()).sums();
  }

  /** What is here would cost so much new. */
  private static List<Money> worth(List<LoanStanding> here) {
    return Amounts.of(here.stream().flatMap(each -> each.loan().worth().stream()).toList()).sums();
  }

  private static Block here(List<LoanStanding> here, Facts now) {
    return Block.table(
        Column.columns(
            Column.left("Tool"),
            Column.left("Lender"),
            Column.left("Due"),
            Column.right("Days left"),
            Column.left("Condition when it came"),
            Column.left("Still needed for")),
        here.stream()
            .map(
                each ->
                    Row.row(
                        Cell.text(each.loan().tool()),
                        Cell.text(lender(each)),
                        Cell.day(each.loan().due()),
                        left(each),
                        Cell.text(each.loan().condition()),
                        Cell.text(neededFor(each.loan(), now))))
            .toList());
  }

  /** Tasks that need it and are not finished. */
  private static String neededFor(Loan loan, Facts now) {
    List<String> open =
        loan.neededFor().stream()
            .filter(ref -> !Headways.on(now).hasEnded(ref))
            .map(Ref::id)
            .toList();
    return open.isEmpty() ? "nothing planned" : String.join(", ", open);
  }

  private static Cell left(LoanStanding each) {
    return each.daysLeft()
        .map(
            days ->
                Cell.text(days < 0 ? "late by " + -days : Long.toString(days)).with("number", days))
        .orElseGet(Cell::none);
  }

  private static String lender(LoanStanding each) {
    return each.lender().map(Party::name).orElse(each.loan().from().id());
  }

  private static Block back(List<LoanStanding> back) {
    return Block.table(
        Column.columns(
            Column.left("Tool"),
            Column.left("Lender"),
            Column.left("Borrowed"),
            Column.left("Back"),
            Column.left("Condition when it came"),
            Column.left("When it went")),
        back.stream()
            .map(
                each ->
                    Row.row(
                        each.loan().tool(),
                        lender(each),
                        each.loan().on().toString(),
                        Cells.maybe(each.loan().returned()),
                        each.loan().condition(),
                        Cells.maybe(each.loan().back())))
            .toList());
  }

  private static List<OpenRepair> owed(Facts now) {
    return Account.on(now).repairs();
  }

  private static String owes(Facts now) {
    List<OpenRepair> owed = owed(now);
    List<Money> cost =
        Amounts.of(owed.stream().flatMap(each -> each.likely().stream()).toList()).sums();
    long unknown = owed.stream().filter(each -> each.cost().isEmpty()).count();
    return owed.isEmpty()
        ? ""
        : " "
            + Word.capital(
                Say.count(owed.size(), "repair is owed to a lender", "repairs are owed to lenders"))
            + (cost.isEmpty() ? "" : ", about " + Say.monies(cost))
            + (unknown == 0 ? "" : "; of " + unknown + " nobody wrote down what it costs")
            + ".";
  }

  private static Block repairs(List<OpenRepair> owed, Facts now) {
    Amounts amounts = Amounts.of(owed.stream().flatMap(each -> each.likely().stream()).toList());
    return Block.table(
        Column.columns(
            Column.left("Tool"),
            Column.left("Owed to"),
            Column.left("Damage"),
            Column.left("Seen"),
            Column.left("By"),
            amounts.column("Still to pay")),
        owed.stream()
            .flatMap(
                each ->
                    each.loan().repair().stream()
                        .map(
                            repair ->
                                Row.row(
                                    Cell.text(each.loan().tool()),
                                    Cell.text(now.ledger().nameOf(each.loan().from().id())),
                                    Cell.text(repair.what() + shown(repair) + worth(each.loan())),
                                    Cell.day(repair.found()),
                                    Cell.day(repair.by().or(each.loan()::due)),
                                    amounts.cell(each.likely()))))
            .toList());
  }

  private static String shown(Loan.Repair repair) {
    return repair.evidence().isEmpty()
        ? ""
        : ", shown by " + Say.list(repair.evidence().stream().map(Evidence::file).toList());
  }

  private static String worth(Loan loan) {
    return loan.worth().map(money -> "; a new one costs " + Say.money(money)).orElse("");
  }

  private static Cell rate(Price rate) {
    return Cell.text(rate.toString().replace(' ', '\u00a0')).with(Value.of(rate).beside());
  }

  private static Block savings(List<LoanStanding> saved) {
    Amounts amounts = Amounts.of(saved.stream().flatMap(e -> e.saved().stream()).toList());
    Stream<Row> rows =
        saved.stream()
            .map(
                each ->
                    Row.row(
                        Cell.text(each.loan().tool()),
                        Cell.number(each.daysKept()),
                        each.loan().hireRate().map(ToolsReport::rate).orElseGet(Cell::none),
                        amounts.cell(each.saved())));
    return Block.table(
        Column.columns(
            Column.left("Tool"),
            Column.right("Days"),
            Column.right("Hire would be"),
            amounts.column("Saved")),
        Stream.concat(
                rows,
                Stream.of(
                    Cells.total(Cell.text("All"), Cell.text(""), Cell.text(""), amounts.total())))
            .toList());
  }
}
