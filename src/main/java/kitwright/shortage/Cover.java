package kitwright.shortage;

import java.time.LocalDate;
import kitwright.ledger.Entry;
import kitwright.value.Quantity;

/**
 * So much of a shortage that nobody waits for any more. Money that came back instead covers
 * nothing: the thing is still not here.
 *
 * @param by the delivery, substitution or spend that covers it, or the shortage that is done
 *     without
 * @param on since when
 */
public record Cover(How how, Quantity qty, Entry by, LocalDate on) {
  /** The ways in which a shortage ends. */
  public enum How {
    /** Sent by the kit's maker, and counted good. */
    DELIVERED,
    SUBSTITUTED,
    /** Bought elsewhere: paid and here, or counted good in another firm's delivery. */
    BOUGHT,
    /** Decided that the work goes on without it. */
    DONE_WITHOUT
  }
}
