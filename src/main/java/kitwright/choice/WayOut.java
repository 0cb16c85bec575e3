package kitwright.choice;

import java.util.List;
import java.util.Optional;
import kitwright.ledger.Shortage;

/**
 * One way out of a shortage, with its whole price.
 *
 * @param strength empty where the part stays as drawn
 * @param signing empty where nobody has to sign
 * @param taken what it takes of what is at hand
 */
public record WayOut(
    Shortage.Option option,
    Outlay outlay,
    Timing timing,
    Optional<Strength> strength,
    Optional<Signing> signing,
    List<Taken> taken) {
  public WayOut {
    taken = List.copyOf(taken);
  }

  /** How the decision names it. */
  public String name() {
    return option.name();
  }

  /** Whether it is as drawn, or assessed and signed: nothing else is better than anything. */
  public boolean isReleased() {
    return (strength.isEmpty() && signing.isEmpty())
        || (signing.filter(Signing::isDone).isPresent() && !isTooWeak());
  }

  /** Whether its assessment says that it is too weak. */
  public boolean isTooWeak() {
    return strength
        .flatMap(Strength::verdict)
        .filter(kitwright.assessment.sheet.Verdict::fails)
        .isPresent();
  }
}
