package kitwright.report.budget;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Destination;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.ledger.Facts;
import kitwright.money.Account;
import kitwright.money.CostRange;
import kitwright.money.Lacks;
import kitwright.money.LineState;
import kitwright.money.RateUsed;
import kitwright.money.Remaining;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.value.Money;

/** Where the money went and where it will end, line by line, and why a line ends over. */
public final class BudgetReport {
  private static final String DRAWING = "budget.svg";

  private BudgetReport() {}

  public static List<Sheet> sheets(Facts now) {
    CostRange range = CostRange.of(now.ledger(), Account.on(now));
    Sheet sheet = sheet(now, range, true);
    Map<String, String> drawings = Map.of(DRAWING, BudgetPicture.of(now, range).text());
    return List.of(
        new Sheet(
            sheet.file(), sheet.template(), sheet.slots().block("drawing", drawing()), drawings));
  }

  /**
   * The document without its drawing.
   *
   * @param earned whether money is told against work done as well
   */
  public static Sheet sheet(Facts now, CostRange range, boolean earned) {
    Account account = Account.on(now);
    BudgetAhead ahead = new BudgetAhead(now, range);
    List<String> lacks = Lacks.ofForecast(now);
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .value("today", Cells.spoken(now.day()))
            .sentence("currency", now.ledger().build().currency().getCurrencyCode())
            .sentence("summary", summary(account, lacks))
            .value("lacking", lacking(lacks))
            .table("lines", lines(account, List.of()), List.of(lines(account, total(account))))
            .value("whole", whole(account.whole()))
            .table("to-come", toCome(account))
            .table("causes", Overruns.all(now), Overruns.blocks(now))
            .said("saved", Savings.of(now))
            .block("drawing")
            .table("over-time", ahead.overTime());
    slots = ahead.in(slots, earned);
    return new Sheet(
        "budget.md",
        "budget",
        slots
            .table("rates", RatesTold.table(RateUsed.on(now)))
            .block(
                "claims",
                new Value.Several(back(account).map(Cell::value).stream().toList()),
                back(account).map(cell -> Block.paragraph(cell.shown())).stream().toList())
            .block("cautions", cautions(account).toArray(Block[]::new)));
  }

  private static Block drawing() {
    return Block.paragraph(
        Inline.picture(
            Destination.file(DRAWING), "paid, ordered, forecast and budget over the months"));
  }

  /** Why the sums cannot be told whole: a sentence; for other programs its clauses. */
  static Cell lacking(List<String> lacks) {
    return lacks.isEmpty()
        ? Cell.text("")
        : Cell.several("These sums cannot be told whole: " + String.join("; ", lacks) + ".", lacks);
  }

  private static String summary(Account account, List<String> lacks) {
    LineState all = account.whole();
    List<String> over =
        account.all().stream()
            .filter(line -> line.over().signum() > 0)
            .map(LineState::title)
            .toList();
    String lines =
        over.isEmpty() ? " No line is forecast over." : " Forecast over: " + Say.list(over) + ".";
    return (lacks.isEmpty() ? "The build" : "As far as it can be told: the build")
        + " is forecast to end at "
        + Say.money(all.forecast())
        + ", "
        + against(all.over())
        + " its budget of "
        + Say.money(all.budget())
        + ". Spent so far: "
        + Say.money(all.spent())
        + "; ordered and not yet paid: "
        + Say.money(all.ordered())
        + "."
        + lines
        + contingency(account);
  }

  private static String against(Money over) {
    return over.signum() == 0
        ? "exactly on"
        : over.signum() > 0 ? Say.money(over) + " over" : Say.money(over.negated()) + " under";
  }

  private static String contingency(Account account) {
    Optional<Money> left = account.contingencyLeft();
    if (left.isEmpty()) {
      return " Nothing is kept back for what nobody foresaw.";
    }
    return left.get().signum() < 0
        ? " What was kept back does not cover it: "
            + Say.money(left.get().negated())
            + " are lacking."
        : " Of what was kept back, "
            + Say.money(left.get())
            + (account.whole().over().signum() > 0 ? " would be left." : " stay untouched.");
  }

  private static Table lines(Account account, List<Row> total) {
    Stream<Row> rows = account.all().stream().map(BudgetReport::row);
    return new Table(
        "The lines of the budget",
        Column.columns(
            Column.data("line"),
            Column.head("Line").named("title"),
            Column.right("Budget"),
            Column.right("Paid"),
            Column.right("Ordered"),
            Column.data("to-come"),
            Column.right("Forecast"),
            Column.right("Over")),
        Stream.concat(rows, total.stream()).toList());
  }

  private static List<Row> total(Account account) {
    LineState all = account.whole();
    return List.of(
        Cells.total(
            "",
            "All",
            Say.amount(all.budget()),
            Say.amount(all.spent()),
            Say.amount(all.ordered()),
            Say.amount(all.toCome()),
            Say.amount(all.forecast()),
            Say.signed(all.over())));
  }

  private static Cell whole(LineState all) {
    Map<String, Value> parts = new LinkedHashMap<>();
    parts.put("budget", new Value.Cash(all.budget()));
    parts.put("paid", new Value.Cash(all.spent()));
    parts.put("ordered", new Value.Cash(all.ordered()));
    parts.put("to-come", new Value.Cash(all.toCome()));
    parts.put("forecast", new Value.Cash(all.forecast()));
    parts.put("over", new Value.Cash(all.over()));
    return Cell.of(Say.money(all.forecast()), new Value.Parts(parts));
  }

  private static Row row(LineState line) {
    return Row.row(
        Cell.text(line.line()),
        Cell.text(line.title()),
        Cells.amount(line.budget()),
        Cells.amount(line.spent()),
        Cells.amount(line.ordered()),
        Cells.amount(line.toCome()),
        Cells.amount(line.forecast()),
        Cells.signed(line.over()));
  }

  /** How what is still to come is known, line by line. */
  private static Table toCome(Account account) {
    return new Table(
        "What is still to come",
        Column.columns(
            Column.data("line"),
            Column.head("Line").named("title"),
            Column.right("Low"),
            Column.right("Likely"),
            Column.right("High"),
            Column.left("Known from")),
        account.all().stream()
            .filter(line -> line.toCome().signum() != 0)
            .map(line -> toCome(line, account))
            .toList());
  }

  private static Row toCome(LineState line, Account account) {
    Remaining remaining = line.remaining();
    return Row.row(
        Cell.text(line.line()),
        Cell.text(line.title()),
        Cells.amount(remaining.range().low().plus(besides(line, account, false))),
        Cells.amount(line.toCome()),
        Cells.amount(remaining.range().high().plus(besides(line, account, true))),
        Cell.text(
                basis(remaining)
                    + more(line.waysOut(), "to get round open shortages")
                    + more(line.repairs(), "to make borrowed tools good")
                    + (remaining.unpriced().isEmpty()
                        ? ""
                        : "; at least, since nobody knows a price of "
                            + Say.list(remaining.unpriced())))
            .with("ways-out", new Value.Cash(line.waysOut()))
            .with("repairs", new Value.Cash(line.repairs())));
  }

  private static String more(Money amount, String what) {
    return amount.signum() == 0 ? "" : "; " + Say.money(amount) + " " + what;
  }

  /** What shortages and repairs of a line cost at least, or at most. */
  private static Money besides(LineState line, Account account, boolean most) {
    Stream<Money> ways =
        account.ways().stream()
            .filter(way -> way.line().equals(line.line()))
            .map(way -> most ? way.most() : way.least());
    Stream<Money> repairs =
        account.repairs().stream()
            .filter(repair -> repair.line().equals(line.line()))
            .flatMap(repair -> repair.cost().stream())
            .map(cost -> most ? cost.high() : cost.low());
    return Stream.concat(ways, repairs).reduce(Money.zero(line.budget().currency()), Money::plus);
  }

  private static String basis(Remaining remaining) {
    return switch (remaining.basis()) {
      case STATED -> "the budget line";
      case NEEDS -> "what its tasks need and nobody has bought";
      case EARNED -> "the share of its work that is not done";
      case BUDGET -> "what is left of its budget, for want of better";
      case SUM -> "the lines";
    };
  }

  private static Optional<Cell> back(Account account) {
    Money maybe = account.ifGranted();
    return maybe.signum() == 0
        ? Optional.empty()
        : Optional.of(
            Cell.text(
                    "If everything were granted that claims ask, "
                        + Say.money(maybe)
                        + " would still come back. It is in no figure above.")
                .with(new Value.Cash(maybe).beside()));
  }

  private static List<Block> cautions(Account account) {
    List<Block> cautions = new ArrayList<>();
    if (!account.refused().isEmpty()) {
      cautions.add(
          Block.paragraph(
              "Refunds of what nobody paid are left out: "
                  + Say.list(account.refused().stream().map(each -> each.refund().id()).toList())
                  + "."));
    }
    return cautions;
  }
}
