package kitwright.spending;

import java.util.Optional;
import kitwright.ledger.Spend;
import kitwright.value.Money;

/**
 * A refund beyond what was paid; only what was paid counts as come back.
 *
 * @param purchase the order, or the payment that names none; empty where the refund names nothing,
 *     and takes from what was paid on its line; where it names another refund, that one
 * @param asked the refund, in the purchase's currency
 * @param left of what was paid by then, when this refund came
 * @param isOfUnpaid whether it names something for which nobody had paid anything by then
 */
public record Refused(
    Spend refund, Optional<Spend> purchase, Money asked, Money left, boolean isOfUnpaid) {}
