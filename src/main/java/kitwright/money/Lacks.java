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
import kitwright.ledger.Spend;
import kitwright.ledger.Unread;
import kitwright.spending.Books;

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
