package kitwright.money;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kitwright.ledger.BudgetLine;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Loan;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.ledger.Unread;
import kitwright.shortage.ShortageStanding;
import kitwright.shortage.ShortageStandings;
import kitwright.spending.Books;
import kitwright.value.Ref;

/**
 * Why sums of money cannot be told whole: what could not be read and is, or may hold, a part of
 * them, and what has no rate. Whoever tells a sum asks here, and says so.
 */
public final class Lacks {
  private static final Facts.Fact<List<String>> FACT = Lacks::all;

  /** What sums and forecasts are made of. */
  private static final Set<Kind> OF_MONEY =
      EnumSet.of(
          Kind.BUILD,
          Kind.RATES,
          Kind.BUDGET,
          Kind.KIT,
          Kind.TASKS,
          Kind.SHORTAGES,
          Kind.CLAIMS,
          Kind.SPENDING,
          Kind.BORROWED);

  private Lacks() {}

  /** Clauses; none where all sums are whole. */
  public static List<String> on(Facts day) {
    return FACT.on(day);
  }

  /** The same of what is forecast: what nobody knows a price of beside it. */
  public static List<String> ofForecast(Facts day) {
    return Stream.concat(on(day).stream(), unpriced(day, any -> true)).toList();
  }

  /** The same of one line. */
  public static List<String> ofForecast(String line, Facts day) {
    return Stream.concat(
            ofLine(line, day).stream(),
            unpriced(day, each -> each.equals(line) || each.equals(Books.NO_LINE)))
        .toList();
  }

  /** What counts as nothing, for want of a price, on such lines. */
  private static Stream<String> unpriced(Facts day, Predicate<String> onLine) {
    Account account = Account.on(day);
    Stream<String> shortages =
        account.unpriced().stream()
            .filter(each -> onLine.test(each.line()))
            .map(each -> ofShortage(each.shortage(), day));
    Stream<String> needs =
        account.all().stream()
            .filter(line -> onLine.test(line.line()))
            .flatMap(line -> line.remaining().unpriced().stream())
            .distinct()
            .map(what -> "nobody knows a price of " + what);
    Stream<String> repairs =
        account.unpricedRepairs().stream()
            .filter(each -> onLine.test(each.line()))
            .map(OpenRepair::loan)
            .filter(loan -> loan.repair().flatMap(Loan.Repair::cost).isEmpty())
            .map(loan -> "nobody knows what it costs to make good " + loan.tool());
    return Stream.of(shortages, needs, repairs).flatMap(all -> all);
  }

  private static String ofShortage(Shortage shortage, Facts day) {
    return "nobody has said what it costs to get round the "
        + shortage.named()
        + ShortageStandings.on(day)
            .of(new Ref(shortage.id(), shortage.at().record()))
            .flatMap(ShortageStanding::openValue)
            .map(worth -> " (at the kit’s price " + worth + ")")
            .orElse("");
  }

  private static List<String> all(Facts day) {
    return Stream.of(
            unread(day, each -> OF_MONEY.stream().anyMatch(each::mayBe)),
            Books.on(day).belowZero().stream().map(Lacks::isBelowZero),
            WithoutRate.of(day).stream().map(Lacks::noRate))
        .flatMap(all -> all)
        .toList();
  }

  /** What of one line, or of no line that is named, is lacking. */
  public static List<String> ofLine(String line, Facts day) {
    List<String> lines = day.ledger().budget().stream().map(BudgetLine::line).toList();
    Predicate<Unread> isOfNone =
        each ->
            lines.stream().noneMatch(each::names) && !each.kind().equals(Optional.of(Kind.BUDGET));
    Predicate<Unread> isOfIt =
        each ->
            OF_MONEY.stream().anyMatch(each::mayBe) && (each.names(line) || isOfNone.test(each));
    return Stream.of(
            unread(day, isOfIt),
            Books.on(day).belowZero().stream()
                .filter(each -> each.line().id().equals(line))
                .map(Lacks::isBelowZero),
            WithoutRate.of(day).stream()
                .filter(each -> each.line().filter(other -> !other.equals(line)).isEmpty())
                .map(Lacks::noRate))
        .flatMap(all -> all)
        .toList();
  }

  /** Spending that cannot be read, or may stand in what cannot. */
  public static List<String> ofSpending(Facts day) {
    return unread(day, each -> each.mayBe(Kind.SPENDING)).toList();
  }

  /** {@code As far as it can be told, } before a sum that lacks something. */
  static String asFar(List<String> lacks) {
    return lacks.isEmpty() ? "" : "As far as it can be told, ";
  }

  /** The sentence after it, which says why. */
  static String why(List<String> lacks) {
    return lacks.isEmpty() ? "" : " It cannot be told whole: " + String.join("; ", lacks) + ".";
  }

  private static Stream<String> unread(Facts day, Predicate<Unread> which) {
    return day.ledger().unread().stream()
        .filter(which)
        .map(
            each ->
                each.named()
                    + " cannot be read"
                    + (each.kind().isPresent() ? "" : ", and may hold some of it"));
  }

  private static String isBelowZero(Spend each) {
    return each.named() + " is below zero, and in no sum";
  }

  private static String noRate(WithoutRate each) {
    return "there is no rate for " + each.words();
  }
}
