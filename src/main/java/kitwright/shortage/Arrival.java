package kitwright.shortage;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.kit.Positions;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.substitution.Lack;

/** When a way out brings the thing, by its own word. */
public final class Arrival {
  private Arrival() {}

  /** Whether a way out may be built by what is known today: a part that fails takes no place. */
  static boolean mayServe(Shortage.Option option, kitwright.substitution.Standings substitutions) {
    return option
        .substitution()
        .flatMap(substitutions::of)
        .filter(standing -> standing.isWithdrawn() || standing.lacks(Lack.ASSESSMENT_FAILS))
        .isEmpty();
  }

  /**
   * The day that the option says; today, where all that its substitution takes is at hand; empty
   * where nobody knows, or nothing has to come.
   */
  public static Optional<LocalDate> of(
      Shortage.Option option, Positions positions, Ledger ledger, LocalDate today) {
    if (option.way() == Shortage.Way.DO_WITHOUT) {
      return Optional.empty();
    }
    return option
        .arrives()
        .or(
            () ->
                option
                    .substitution()
                    .flatMap(ledger::substitution)
                    .filter(each -> isAtHand(each, positions, ledger))
                    .map(any -> today));
  }

  /** Whether all that a substitution takes is here, and enough for all that it replaces. */
  public static boolean isAtHand(Substitution substitution, Facts day) {
    return isAtHand(substitution, Positions.on(day), day.ledger());
  }

  private static boolean isAtHand(Substitution substitution, Positions positions, Ledger ledger) {
    return substitution.use().stream().allMatch(take -> take.spend().isEmpty())
        && Serves.of(substitution, positions, ledger).why().isEmpty();
  }
}
