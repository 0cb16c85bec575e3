package kitwright.kit;

import kitwright.ledger.Delivery;
import kitwright.value.Quantity;

/** So much of an item in a delivery that is still on its way, as its delivery note says. */
public record Awaited(Delivery delivery, Quantity qty) {}
