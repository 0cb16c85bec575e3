package kitwright.choice;

import java.math.BigDecimal;
import java.util.Optional;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/**
 * What a way out costs, in the build's currency.
 *
 * @param cost low, likely, high; nothing where the option names no cost and nothing need be bought
 *     for it; empty where something must and nobody has said for how much, or a rate is missing
 * @param now of the likely cost, what is neither paid nor ordered yet
 * @param forecast where the whole build ends if this way is taken
 * @param claimable at most so much could be asked from the supplier if this way is taken
 * @param hours of own work; none where the option names none
 * @param hoursWorth what they are worth; empty where the build gives no value to an hour
 */
public record Outlay(
    Optional<ThreePoint<Money>> cost,
    Optional<Money> now,
    Optional<Money> forecast,
    Money claimable,
    BigDecimal hours,
    Optional<Money> hoursWorth) {

  /** Likely cost and the value of the hours, where both are known. */
  public Optional<Money> withHours() {
    return cost.map(ThreePoint::likely)
        .flatMap(
            likely -> hours.signum() == 0 ? Optional.of(likely) : hoursWorth.map(likely::plus));
  }
}
