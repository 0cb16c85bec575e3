package kitwright.claim;

import java.util.Optional;
import kitwright.shortage.Balance;
import kitwright.shortage.Standing;
import kitwright.value.Money;
import kitwright.value.Quantity;

/**
 * A line of a claim: one shortage.
 *
 * @param shortage as it stands today
 * @param balance the account of its item; empty where the kit does not know it
 */
public record Line(Standing shortage, Optional<Balance> balance) {
  /** What the supplier owes: the shortage, less what was delivered since. */
  public Quantity owed() {
    return shortage.shortage().qty().less(shortage.sent());
  }

  /** What that is worth at the kit's price, in the price's currency. */
  public Optional<Money> value() {
    return shortage.value(owed());
  }
}
