package kitwright.kit;

import java.time.LocalDate;
import kitwright.ledger.Delivery;
import kitwright.value.Place;
import kitwright.value.Quantity;

/**
 * So much of an item that went back to whom it came from.
 *
 * @param at where the record says it
 */
public record SentBack(Delivery delivery, LocalDate on, Quantity qty, Place at) {}
