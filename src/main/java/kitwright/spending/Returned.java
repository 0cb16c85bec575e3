package kitwright.spending;

import java.util.Optional;
import kitwright.ledger.Spend;
import kitwright.value.Money;

/**
 * What of a refund has come back: no more than was paid, by its day, for what it gives back.
 *
 * @param purchase the order, or the payment that names none; empty where the refund names nothing
 * @param came in the refund's currency; nothing where all of it is refused
 * @param ofPurchase the same in the purchase's currency; empty where it names nothing, or a rate is
 *     missing
 */
public record Returned(
    Spend refund, Optional<Spend> purchase, Money came, Optional<Money> ofPurchase) {

  /** Whether all of it counts. */
  public boolean isWhole() {
    return came.compareAmount(refund.amount()) >= 0;
  }

  /** So much of it, no more than came. */
  public Returned part(Money of) {
    Optional<Money> same = ofPurchase.map(sum -> Share.of(sum, of, came));
    return new Returned(refund, purchase, of, same);
  }

  /** Whether it says that it gives this back. */
  public boolean names(Spend bought) {
    return refund.refunds().filter(ref -> ref.id().equals(bought.id())).isPresent();
  }
}
