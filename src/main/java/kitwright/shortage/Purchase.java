package kitwright.shortage;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.ledger.Spend;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Something bought because of a shortage: an order with its payment, or either alone.
 *
 * @param spend the payment, or else the order
 * @param item what was bought, where the records say so
 * @param qty how much, where the records say so
 * @param expected the day it shall come
 * @param here since when it is here; empty while it is not
 */
record Purchase(
    Spend spend,
    Optional<Ref> item,
    Optional<Quantity> qty,
    Optional<LocalDate> expected,
    Optional<LocalDate> here) {}
