package kitwright.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.ledger.BudgetLine;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.network.Headway;
import kitwright.network.Headways;
import kitwright.shortage.Coming;
import kitwright.shortage.ShortageStanding;
import kitwright.shortage.ShortageStandings;
import kitwright.spending.Books;
import kitwright.spending.Exchange;
import kitwright.spending.Share;
import kitwright.spending.Tally;
import kitwright.spending.Valued;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;
import kitwright.substitution.TakenWays;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.ThreePoint;

/**
 * Works out where the money stands on a day and where it will end.
 *
 * <p>What remains of a line is, in this order: what the line says in {@code remaining}; what its
 * tasks need, by name or by a section laid over an area or length, and nobody has bought, where
 * something of that has a price; once its work is under way, the share of the budget that it has
 * not earned, less what is ordered; else what is left of the budget. Material is bought ahead of
 * the work, so that the third is a cautious guess, which {@code remaining} betters.
 */
public final class Spent {
  private final LocalDate asOf;
  private final Exchange exchange;
  private final Books books;
  private final List<Valued> valued;
  private final List<OpenShortage> open;
  private final List<UnpricedShortage> unpriced;
  private final List<OpenRepair> repairs;
  private final Needs needs;
  private final Earned earned;
  private final Map<String, List<Task>> tasks = new HashMap<>();

  private Spent(Facts day, Exchange exchange, Books books, Set<String> over, Set<String> known) {
    Ledger ledger = day.ledger();
    asOf = day.day();
    this.exchange = exchange;
    this.books = books;
    valued = books.valued();
    WaysOut ways = new WaysOut(day, exchange, valued);
    open = ways.priced(over);
    unpriced = ways.unpriced(known);
    repairs = Repairs.of(ledger, exchange, asOf, valued);
    Headways headways = Headways.of(ledger, asOf);
    earned = new Earned(ledger.build().week(), headways);
    needs = Needs.of(ledger, exchange, asOf, headways, Demand.of(ledger));
    ledger.tasks().stream()
        .filter(task -> task.withdrawn().isEmpty())
        .forEach(
            task ->
                task.budget()
                    .ifPresent(
                        line ->
                            tasks.computeIfAbsent(line.id(), id -> new ArrayList<>()).add(task)));
  }

  /** The account of a day: covered shortages cost no more. */
  static Account on(Facts day) {
    Headways headways = Headways.of(day.ledger(), day.day());
    TakenWays taken = SubstitutionStandings.on(day).taken();
    Set<String> covered =
        ShortageStandings.on(day).all().stream()
            .filter(standing -> !standing.isOpen() || isOrdered(standing))
            .filter(standing -> !isStillBuilt(standing, taken, day.ledger(), headways))
            .map(standing -> standing.shortage().id())
            .collect(Collectors.toSet());
    Set<String> known =
        ShortageStandings.on(day).all().stream()
            .filter(standing -> !standing.isOpen() || isUnderWay(standing))
            .map(standing -> standing.shortage().id())
            .collect(Collectors.toSet());
    return account(day, covered, known);
  }

  /**
   * Whether a way out that builds otherwise, or does without, is taken and its work not known to be
   * finished: what it was said to cost and nobody has paid or ordered is still to come.
   */
  private static boolean isStillBuilt(
      ShortageStanding standing, TakenWays taken, Ledger ledger, Headways headways) {
    boolean without =
        standing.chosen().filter(each -> each.way() == Shortage.Way.DO_WITHOUT).isPresent();
    return without
        ? isUnfinished(standing, ledger, headways)
        : standing.substitutions().stream()
            .filter(each -> !each.isWithdrawn())
            .map(SubstitutionStanding::substitution)
            .filter(each -> taken.isTaken(each, standing.shortage().id()))
            .anyMatch(each -> isUnfinished(each, standing, ledger, headways));
  }

  /** By the task that it holds; one that holds none is built by the work that asks for the item. */
  private static boolean isUnfinished(
      Substitution substitution, ShortageStanding standing, Ledger ledger, Headways headways) {
    return substitution
        .hold()
        .map(ref -> ledger.task(ref).filter(task -> isOver(task, headways)).isEmpty())
        .orElseGet(() -> isUnfinished(standing, ledger, headways));
  }

  /** Whether some work that asks for the item is not over; so it is where no task is known to. */
  private static boolean isUnfinished(ShortageStanding standing, Ledger ledger, Headways headways) {
    List<Task> asking =
        ledger.tasks().stream()
            .filter(
                task ->
                    task.uses().stream()
                        .flatMap(use -> use.item().stream())
                        .anyMatch(item -> item.id().equals(standing.shortage().item().id())))
            .toList();
    return asking.isEmpty() || asking.stream().anyMatch(task -> !isOver(task, headways));
  }

  private static boolean isOver(Task task, Headways headways) {
    return task.withdrawn().isPresent() || headways.of(task) instanceof Headway.Done;
  }

  /** Whether all that is open of it is ordered: what it costs is known then, and in the orders. */
  private static boolean isOrdered(ShortageStanding standing) {
    return standing.coming().stream()
        .filter(each -> each.how() == Coming.How.ORDERED)
        .map(Coming::qty)
        .reduce(standing.open(), Quantity::less)
        .isNone();
  }

  /** Whether all that is open of it is sent, ordered, or promised for a day to come. */
  private static boolean isUnderWay(ShortageStanding standing) {
    return standing.coming().stream()
        .filter(each -> each.how() != Coming.How.DECIDED && each.isUnderWay())
        .map(Coming::qty)
        .reduce(standing.open(), Quantity::less)
        .isNone();
  }

  private static Account account(Facts day, Set<String> covered, Set<String> known) {
    Ledger ledger = day.ledger();
    LocalDate asOf = day.day();
    Exchange exchange = Exchange.on(day);
    Books books = Books.on(day);
    Spent spent = new Spent(day, exchange, books, covered, known);
    Set<String> seen = new HashSet<>();
    List<LineState> lines =
        ledger.budget().stream()
            .map(line -> seen.add(line.line()) ? spent.line(line) : spent.again(line))
            .toList();
    Optional<LineState> elsewhere = spent.elsewhere();
    return new Account(
        asOf,
        lines,
        elsewhere,
        spent.whole(Stream.concat(lines.stream(), elsewhere.stream()).toList()),
        ledger.build().contingency().flatMap(kept -> exchange.home(kept, asOf).money()),
        spent.valued,
        books.unvalued(),
        books.refused(),
        spent.open,
        spent.unpriced,
        spent.repairs,
        Back.of(day, exchange, spent.valued));
  }

  private Money zero() {
    return Money.zero(exchange.home());
  }

  /** An amount of the budget, at the rate that it was made with. */
  private Money planned(Money amount) {
    return exchange.planned(amount.currency()).map(quote -> quote.of(amount)).orElse(zero());
  }

  /** An amount still to come, at the rate of the day. */
  private Money now(Money amount) {
    return exchange.home(amount, asOf).money().orElse(zero());
  }

  private LineState line(BudgetLine line) {
    Money budget = planned(line.amount());
    LineState bare = state(line.line(), line.title(), budget);
    Remaining left =
        stated(line)
            .or(() -> unbought(line))
            .or(() -> unearned(line, bare))
            .orElseGet(
                () ->
                    Remaining.fixed(
                        budget.minus(foreseen(bare)).max(zero()), Remaining.Basis.BUDGET));
    return bare.leaving(left);
  }

  /**
   * What a line has used of its budget. What a shortage brought about comes on top: the goods that
   * the budget is for are still to be bought.
   */
  private Money foreseen(LineState bare) {
    return bare.committed().minus(books.tally(bare.line()).unforeseen());
  }

  /** A second line of the same name: what names it counts on the first. */
  private LineState again(BudgetLine line) {
    Money budget = planned(line.amount());
    return line(new Tally(zero()), line.line(), line.title(), budget, zero(), zero())
        .leaving(stated(line).orElseGet(() -> Remaining.fixed(budget, Remaining.Basis.BUDGET)));
  }

  private Optional<Remaining> stated(BudgetLine line) {
    return line.remaining()
        .map(
            range ->
                new Remaining(
                    new ThreePoint<>(now(range.low()), now(range.likely()), now(range.high()))
                        .rising(Money::compareAmount),
                    Remaining.Basis.STATED,
                    List.of()));
  }

  private Optional<Remaining> unbought(BudgetLine line) {
    return needs
        .of(line.line())
        .map(
            lacks ->
                new Remaining(
                    ThreePoint.fixed(lacks.cost()), Remaining.Basis.NEEDS, lacks.unpriced()));
  }

  private Optional<Remaining> unearned(BudgetLine line, LineState bare) {
    List<Task> own = tasks.getOrDefault(line.line(), List.of());
    BigDecimal share = earned.share(own);
    if (own.isEmpty() || share.signum() == 0) {
      return Optional.empty();
    }
    Money left = Share.of(bare.budget(), BigDecimal.ONE.subtract(share), BigDecimal.ONE);
    return Optional.of(
        Remaining.fixed(left.minus(ordered(line.line())).max(zero()), Remaining.Basis.EARNED));
  }

  /** What is ordered of what the budget foresaw. */
  private Money ordered(String line) {
    return valued.stream()
        .filter(each -> each.line().equals(line) && !each.isUnforeseen())
        .filter(each -> Books.is(each.spend(), Spend.State.ORDERED))
        .map(Valued::counted)
        .reduce(zero(), Money::plus);
  }

  private Optional<LineState> elsewhere() {
    LineState state = state(Books.NO_LINE, "On no line of the budget", zero());
    boolean none = !books.holds(Books.NO_LINE) && state.forecast().signum() == 0;
    return none ? Optional.empty() : Optional.of(state);
  }

  /** A line before anything is known of what remains. */
  private LineState state(String id, String title, Money budget) {
    Money waysOut =
        open.stream()
            .filter(each -> each.line().equals(id))
            .map(OpenShortage::likely)
            .reduce(zero(), Money::plus);
    Money owed =
        repairs.stream()
            .filter(each -> each.line().equals(id))
            .flatMap(each -> each.likely().stream())
            .reduce(zero(), Money::plus);
    return line(books.tally(id), id, title, budget, waysOut, owed);
  }

  private static LineState line(
      Tally sums, String id, String title, Money budget, Money waysOut, Money repairs) {
    Remaining nothing = Remaining.fixed(Money.zero(budget.currency()), Remaining.Basis.BUDGET);
    return new LineState(
        id,
        title,
        budget,
        sums.paid(),
        sums.ordered(),
        sums.refunded(),
        nothing,
        waysOut,
        repairs,
        sums.tax(),
        sums.duty(),
        sums.byRate());
  }

  private LineState whole(List<LineState> lines) {
    Remaining remaining =
        new Remaining(
            new ThreePoint<>(
                all(lines, line -> line.remaining().range().low()),
                all(lines, line -> line.remaining().range().likely()),
                all(lines, line -> line.remaining().range().high())),
            Remaining.Basis.SUM,
            lines.stream().flatMap(line -> line.remaining().unpriced().stream()).toList());
    return new LineState(
        Books.NO_LINE,
        "All",
        all(lines, LineState::budget),
        all(lines, LineState::paid),
        all(lines, LineState::ordered),
        all(lines, LineState::refunded),
        remaining,
        all(lines, LineState::waysOut),
        all(lines, LineState::repairs),
        all(lines, LineState::tax),
        all(lines, LineState::duty),
        all(lines, LineState::byRate));
  }

  private Money all(List<LineState> lines, Function<LineState, Money> part) {
    return lines.stream().map(part).reduce(zero(), Money::plus);
  }
}
