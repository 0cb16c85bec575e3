package kitwright.report.budget;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.ledger.Facts;
import kitwright.money.Account;
import kitwright.money.CostItem;
import kitwright.money.CostRange;
import kitwright.money.EarnedBook;
import kitwright.money.Figure;
import kitwright.money.Figures;
import kitwright.money.Lacks;
import kitwright.money.LineState;
import kitwright.money.OverTime;
import kitwright.network.Baseline;
import kitwright.network.Plan;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.value.Money;

/** Money over time, where it may end, and money against work done: blocks of the budget report. */
public final class BudgetAhead {
  private static final double[] SHARES = {0.1, 0.5, 0.8, 0.9};
  private static final int TOLD = 5;

  private final Facts now;
  private final Account account;
  private final CostRange range;
  private final List<String> notEstimated;

  BudgetAhead(Facts now, CostRange range) {
    this.now = now;
    this.account = Account.on(now);
    this.range = range;
    this.notEstimated = NotEstimated.on(now);
  }

  /** The slots, behind others. */
  public Slots in(Slots slots, boolean earned) {
    boolean certain = range.contributions().isEmpty();
    Slots more =
        certain
            ? slots.block("ends").table("leanings", leanings(List.of()), List.of())
            : slots
                .table("ends", shares(), ends())
                .table("leanings", leanings(List.of()), List.of());
    Slots spread =
        more.table("spread", spread(), List.of())
            .list("not-estimated", Inline.texts(notEstimated), List.of());
    return work(spread, earned);
  }

  /** The last reading of each month: the figures of the drawing. */
  Table overTime() {
    Map<YearMonth, OverTime> months = new LinkedHashMap<>();
    OverTime.of(now.ledger(), account)
        .forEach(each -> months.put(YearMonth.from(each.day()), each));
    return new Table(
        "Money over time",
        Column.columns(
            Column.left("By"),
            Column.right("Paid"),
            Column.right("Ordered"),
            Column.right("Together")),
        months.values().stream()
            .map(
                each ->
                    Row.row(
                        Cell.day(each.day()),
                        Cells.amount(each.paid()),
                        Cells.amount(each.ordered()),
                        Cells.amount(each.committed())))
            .toList());
  }

  private List<Block> ends() {
    List<Block> blocks = new ArrayList<>();
    List<String> lacks = Lacks.on(now);
    blocks.add(Block.paragraph(lacks.isEmpty() ? chances() : unknown(lacks)));
    if (!notEstimated.isEmpty()) {
      blocks.add(
          Block.paragraph(
              "The true chances are worse or wider, since nobody has estimated all: "
                  + String.join("; ", notEstimated)
                  + "."));
    }
    blocks.addAll(rest());
    return blocks;
  }

  private List<Block> rest() {
    return List.of(
        shares(),
        Block.paragraph(average()),
        leanings(
            List.of(
                Cells.total(
                    "The end",
                    Say.amount(account.whole().forecast()),
                    Say.amount(account.whole().forecast().plus(leaning())),
                    Say.signed(leaning())))),
        Block.paragraph("What makes it uncertain:"),
        spread());
  }

  private static String unknown(List<String> lacks) {
    return "What the chances are nobody can tell, since "
        + String.join("; ", lacks)
        + ". The figures below hold for the rest alone.";
  }

  private String chances() {
    Money budget = account.whole().budget();
    return "Of "
        + String.format(Locale.ROOT, "%,d", range.runs()).replace(',', '\u00a0')
        + " ends drawn from the ranges, "
        + chance(budget)
        + " stay within the budget"
        + account
            .contingency()
            .map(kept -> " and " + chance(budget.plus(kept)) + " within what was kept back too")
            .orElse("")
        + ". The forecast adds up what is likely of each line; "
        + chance(account.whole().forecast())
        + " stay within that, since costs run over more easily than under and of an open shortage"
        + " it takes the cheapest way out.";
  }

  private Money leaning() {
    return range.contributions().stream()
        .map(each -> each.item().leaning())
        .reduce(Money.zero(now.ledger().build().currency()), Money::plus);
  }

  private String average() {
    Money more = leaning();
    return "On average they end at "
        + Say.money(account.whole().forecast().plus(more))
        + ", "
        + Say.money(more.max(more.negated()))
        + (more.signum() < 0 ? " below" : " above")
        + " the forecast: a range that reaches further up than down costs more on average than is"
        + " likely, and each way out of an open shortage may come true. Reckon with the average for"
        + " the whole, with the likely for each line.";
  }

  /** From the forecast to the average, cost by cost, to the cent. */
  private Table leanings(List<Row> total) {
    List<Row> rows = new ArrayList<>();
    range.contributions().stream()
        .map(CostRange.Contribution::item)
        .filter(item -> item.leaning().signum() != 0)
        .sorted(
            Comparator.comparing((CostItem item) -> item.leaning().amount())
                .reversed()
                .thenComparing(CostItem::what))
        .map(
            item ->
                Row.row(
                    Cell.text(item.what()),
                    Cells.amount(item.counted()),
                    Cells.amount(item.mean()),
                    Cells.signed(item.leaning())))
        .forEach(rows::add);
    rows.addAll(total);
    return new Table(
        "From the forecast to the average",
        Column.columns(
            Column.head("Cost"),
            Column.right("In the forecast"),
            Column.right("On average"),
            Column.right("Adds")),
        rows);
  }

  private String chance(Money amount) {
    double share = range.chanceWithin(amount);
    return Say.beyondRuns(share).orElse(percent(share));
  }

  private static String percent(double share) {
    return BigDecimal.valueOf(share * 100).setScale(1, RoundingMode.HALF_UP) + "\u00a0%";
  }

  private Table shares() {
    List<Row> rows = new ArrayList<>();
    for (double share : SHARES) {
      CostRange.Quantile each = range.within(share);
      rows.add(
          Row.row(
              Cell.number(chances(share), BigDecimal.valueOf(Math.round(share * 100))),
              Cells.amount(each.money(now.ledger().build().currency())),
              Cells.signed(
                  each.money(now.ledger().build().currency()).minus(account.whole().budget())),
              Cell.text(Say.amount(money(each.from())) + " to " + Say.amount(money(each.to())))
                  .with("low", new Value.Cash(money(each.from())))
                  .with("high", new Value.Cash(money(each.to())))));
    }
    return new Table(
        "Where it may end",
        Column.columns(
            Column.head("Chance").named("percent"),
            Column.right("To end below").named("end-within"),
            Column.right("Over"),
            Column.right("Give or take, 19 times in 20").named("give-or-take")),
        rows);
  }

  /** {@code 1 chance in 10}. */
  private static String chances(double share) {
    long tenths = Math.round(share * 10);
    return tenths == 5 ? "1 chance in 2" : Say.count(tenths, "chance", "chances") + " in 10";
  }

  private Money money(double amount) {
    return Money.rounded(BigDecimal.valueOf(amount), now.ledger().build().currency());
  }

  private Table spread() {
    return new Table(
        "What makes it uncertain",
        Column.columns(Column.head("Cost"), Column.right("Share of the spread")),
        range.contributions().stream()
            .limit(TOLD)
            .map(
                each ->
                    Row.row(
                        Cell.text(each.item().what()),
                        Cell.number(
                            percent(each.share()),
                            BigDecimal.valueOf(each.share()).setScale(4, RoundingMode.HALF_UP))))
            .toList());
  }

  /** Money against work done; nothing where no task earns a line. */
  private Slots work(Slots slots, boolean earned) {
    Plan plan = Plan.of(now.ledger(), now.day());
    Baseline baseline = Baseline.of(plan, now.ledger().build().started(), now.day());
    EarnedBook book = EarnedBook.of(now.ledger(), account, baseline::share);
    if (!earned || book.whole().isEmpty()) {
      return slots.table("work", figures(List.of())).sentence("unearned", "");
    }
    List<String> unearned = unearned(book);
    return slots
        .table("work", figures(Figures.of(book.whole().get(), forecastOf(book))))
        .value("unearned", Cell.several(Say.list(unearned), unearned));
  }

  private static Table figures(List<Figure> figures) {
    return new Table(
        "Money against work done",
        Column.columns(
            Column.data("abbreviation"),
            Column.head("Figure"),
            Column.right("Value"),
            Column.left("What it says").named("says")),
        figures.stream()
            .map(
                each ->
                    Row.row(
                        Cell.text(each.abbreviation()),
                        Cell.of(
                            each.name() + " (" + each.abbreviation() + ")",
                            new Value.Text(each.name())),
                        Cell.text(each.shown()).with(value(each)),
                        Cell.text(each.says())))
            .toList());
  }

  private static Map<String, Value> value(Figure figure) {
    return figure
        .sum()
        .map(sum -> new Value.Cash(sum).beside())
        .or(
            () ->
                figure
                    .index()
                    .map(index -> Map.<String, Value>of("number", new Value.Figure(index))))
        .orElse(Map.of());
  }

  private List<String> unearned(EarnedBook book) {
    return account.lines().stream()
        .filter(line -> book.unearned().contains(line.line()))
        .map(LineState::title)
        .toList();
  }

  /** The forecast of the lines that tasks earn, and of no others. */
  private Money forecastOf(EarnedBook book) {
    return account.lines().stream()
        .filter(line -> book.lines().containsKey(line.line()))
        .map(LineState::forecast)
        .reduce(Money.zero(now.ledger().build().currency()), Money::plus);
  }
}
