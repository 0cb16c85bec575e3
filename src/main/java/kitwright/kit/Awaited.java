package kitwright.kit;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.ledger.Delivery;
import kitwright.value.Quantity;

/** So much of an item in a delivery that is still on its way, as its delivery note says. */
public record Awaited(Delivery delivery, Quantity qty) {
  /** The day for which it is said; a day that has passed without anything coming is none. */
  public Optional<LocalDate> on(LocalDate today) {
    return delivery.expected().filter(day -> !day.isBefore(today));
  }
}
