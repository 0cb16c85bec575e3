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
public record SentBack(Delivery delivery, Delivery.SentBack line, Quantity qty, Place at) {
  public LocalDate on() {
    return line.on();
  }

  /** How it went, where the record says so. */
  public String how() {
    return line.by().map(way -> " by " + way).orElse("");
  }
}
