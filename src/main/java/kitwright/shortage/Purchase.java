package kitwright.shortage;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.ledger.Spend;
import kitwright.value.Quantity;

/**
 * So much of an item of the kit that was bought: an order with its payment, or either alone.
 *
 * @param spend the payment, or else the order
 * @param item id of the item
 * @param because id of the shortage that it was bought for, if there was one
 * @param on the day of the order or payment
 * @param expected the day it shall come
 * @param here since when it is here; empty while it is not
 */
record Purchase(
    Spend spend,
    String item,
    Quantity qty,
    Optional<String> because,
    LocalDate on,
    Optional<LocalDate> expected,
    Optional<LocalDate> here) {
  Purchase of(Quantity other) {
    return new Purchase(spend, item, other, because, on, expected, here);
  }

  /** The same, where nothing shows that it is here. */
  Purchase notHere() {
    return new Purchase(spend, item, qty, because, on, expected, Optional.empty());
  }
}
