package kitwright.shortage;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
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
   * The day that the option says; today, where a substitution uses what is at hand; empty where
   * nobody knows, or nothing has to come.
   */
  public static Optional<LocalDate> of(Shortage.Option option, Ledger ledger, LocalDate today) {
    if (option.way() == Shortage.Way.DO_WITHOUT) {
      return Optional.empty();
    }
    boolean atHand =
        option
            .substitution()
            .flatMap(ledger::substitution)
            .filter(each -> each.use().stream().allMatch(take -> take.spend().isEmpty()))
            .isPresent();
    return option.arrives().or(() -> atHand ? Optional.of(today) : Optional.empty());
  }
}
