package kitwright.shortage;

import java.time.LocalDate;
import kitwright.ledger.Entry;
import kitwright.value.Quantity;

/**
 * So much of a shortage that nobody waits for any more.
 *
 * @param by the delivery, substitution, spend or claim that covers it
 * @param on since when
 */
public record Cover(How how, Quantity qty, Entry by, LocalDate on) {
  /** The ways in which a shortage ends, the thing itself first. */
  public enum How {
    DELIVERED,
    SUBSTITUTED,
    BOUGHT,
    /** The money came back instead. */
    CREDITED
  }
}
