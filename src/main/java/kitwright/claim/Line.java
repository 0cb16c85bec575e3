package kitwright.claim;

import java.util.List;
import java.util.Optional;
import kitwright.ledger.Claim;
import kitwright.ledger.KitItem;
import kitwright.shortage.Balance;
import kitwright.shortage.Standing;
import kitwright.value.Money;
import kitwright.value.Quantity;

/**
 * A line of a claim: a shortage, or so much of it, and what is asked for that.
 *
 * @param shortage as it stands on the day
 * @param balance the account of its item; empty where the kit does not know it
 * @param sent what came from the supplier for this line since
 * @param asked the money that is asked for what is still owed, a sum a currency
 * @param granted the money that was granted for it, a sum a currency
 */
public record Line(
    Standing shortage,
    Optional<Balance> balance,
    Asking asking,
    Quantity sent,
    List<Money> asked,
    List<Money> granted) {
  public Line {
    asked = List.copyOf(asked);
    granted = List.copyOf(granted);
  }

  public Claim.Remedy remedy() {
    return asking.remedy();
  }

  /** How much it is about. */
  public Quantity qty() {
    return asking.qty();
  }

  /** What the supplier still owes of it. */
  public Quantity owed() {
    return qty().less(sent);
  }

  /** What that is worth at the kit's price, in the price's currency. */
  public Optional<Money> value() {
    return shortage
        .item()
        .flatMap(KitItem::price)
        .filter(price -> price.prices(owed()))
        .map(price -> price.of(owed()));
  }

  /** Whether it has an end of its own, or nothing is owed any more. */
  public boolean isOver() {
    return asking.isSettled() || owed().isNone();
  }
}
