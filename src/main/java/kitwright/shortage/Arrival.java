package kitwright.shortage;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.kit.Positions;
import kitwright.kit.Promise;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.ledger.Substitution;
import kitwright.substitution.Lack;
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Quantity;

/** When a way out brings the thing, by its own word. */
public final class Arrival {
  private Arrival() {}

  /** Whether a way out may be built by what is known today: a part that fails takes no place. */
  static boolean mayServe(Shortage.Option option, SubstitutionStandings substitutions) {
    return option
        .substitution()
        .flatMap(substitutions::of)
        .filter(standing -> standing.isWithdrawn() || standing.lacks(Lack.ASSESSMENT_FAILS))
        .isEmpty();
  }

  /**
   * The day that the option says, unless it has passed; today, where all that its substitution
   * takes is at hand; the day for which all of that is ordered; empty where nobody knows, or
   * nothing has to come.
   */
  public static Optional<LocalDate> of(
      Shortage.Option option, Positions positions, Ledger ledger, LocalDate today) {
    if (option.way() == Shortage.Way.DO_WITHOUT) {
      return Optional.empty();
    }
    return option
        .arrives()
        .filter(day -> !day.isBefore(today))
        .or(
            () ->
                option
                    .substitution()
                    .flatMap(ledger::substitution)
                    .filter(each -> isAtHand(each, positions, ledger))
                    .map(any -> today))
        .or(
            () ->
                option
                    .substitution()
                    .flatMap(ledger::substitution)
                    .flatMap(each -> ordered(each, ledger))
                    .filter(day -> !day.isBefore(today)));
  }

  /** The last day for which what a substitution takes is ordered; empty where not all of it is. */
  private static Optional<LocalDate> ordered(Substitution substitution, Ledger ledger) {
    List<Optional<LocalDate>> days =
        substitution.use().stream()
            .map(take -> take.spend().flatMap(ledger::spend).flatMap(each -> due(each, ledger)))
            .toList();
    return days.stream().allMatch(Optional::isPresent)
        ? days.stream().flatMap(Optional::stream).max(LocalDate::compareTo)
        : Optional.empty();
  }

  /** The day of a payment is also that of its order; what was withdrawn comes on none. */
  private static Optional<LocalDate> due(Spend spend, Ledger ledger) {
    Optional<Spend> order = spend.pays().flatMap(ledger::spend);
    return Stream.concat(Stream.of(spend), order.stream())
            .allMatch(each -> each.withdrawn().isEmpty())
        ? Receipts.expected(spend, order)
        : Optional.empty();
  }

  /** Whether all that a substitution takes is here, and enough for all that it replaces. */
  public static boolean isAtHand(Substitution substitution, Facts day) {
    return isAtHand(substitution, Positions.on(day), day.ledger());
  }

  private static boolean isAtHand(Substitution substitution, Positions positions, Ledger ledger) {
    return Serves.of(substitution, positions, ledger).why().isEmpty()
        && Serves.together(substitution.use()).stream()
            .allMatch(take -> isHere(take, substitution, positions));
  }

  /** Whether what is still to be taken has not gone into other work; false where nobody can say. */
  private static boolean isHere(
      Substitution.Take take, Substitution substitution, Positions positions) {
    boolean stock =
        take.stock()
            .flatMap(positions::ofStock)
            .filter(at -> at.doubts().isEmpty())
            .filter(at -> isLeft(take, substitution, at.ahead(), at.left()))
            .isPresent();
    return stock
        || take.spend().isPresent() // bought for it: that it came is asked before
        || take.item()
            .flatMap(positions::of)
            .filter(at -> at.doubts().isEmpty())
            .filter(at -> isLeft(take, substitution, at.promises(), at.left()))
            .isPresent();
  }

  /** Whether what is left suffices for what a substitution has not used of it already. */
  private static boolean isLeft(
      Substitution.Take take, Substitution substitution, List<Promise> ahead, Quantity left) {
    return take.qty().convertsTo(left)
        && ahead.stream()
                .filter(promise -> promise.to().equals(substitution))
                .flatMap(promise -> promise.qty().stream())
                .reduce(Quantity.none(left.unit()), Quantity::plus)
                .compareAmount(left)
            <= 0;
  }
}
