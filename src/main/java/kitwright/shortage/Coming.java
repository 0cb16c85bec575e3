package kitwright.shortage;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.ledger.Entry;
import kitwright.value.Quantity;

/**
 * So much that is on its way to a shortage, and no more than its own record brings.
 *
 * @param by the delivery, spend, claim or shortage that says so
 * @param on the day for which it is said; empty where nobody names one
 */
public record Coming(How how, Quantity qty, Entry by, Optional<LocalDate> on) {
  /** Who says so. */
  public enum How {
    /** A delivery note. */
    SENT,
    /** An order that is not here yet. */
    ORDERED,
    /** The kit's maker, in answer to a claim. */
    PROMISED,
    /** The builder: the way out that is decided, and not ordered or promised yet. */
    DECIDED
  }

  /** Whether somebody other than the builder has named the day. */
  public boolean isPromised() {
    return how != How.DECIDED && on.isPresent();
  }
}
