package kitwright.shortage;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.ledger.Entry;
import kitwright.value.Quantity;

/**
 * So much that is on its way to a shortage, and no more than its own record brings.
 *
 * @param by the delivery, spend, claim or shortage that says so
 * @param on the day for which it is said; empty where nobody names one, or it has passed: then
 *     nobody knows when it comes, or whether it does
 * @param lapsed the day for which it was said, where that has passed
 */
public record Coming(
    How how, Quantity qty, Entry by, Optional<LocalDate> on, Optional<LocalDate> lapsed) {
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

  static Coming said(How how, Quantity qty, Entry by, Optional<LocalDate> said, LocalDate today) {
    return new Coming(
        how, qty, by, said.filter(day -> !day.isBefore(today)), said.filter(today::isAfter));
  }

  /**
   * The day from which work may count on it: what others said for today, and is not here, comes
   * tomorrow at the earliest.
   */
  public Optional<LocalDate> from(LocalDate today) {
    return how == How.DECIDED ? on : on.map(said -> said.isAfter(today) ? said : today.plusDays(1));
  }

  /** Whether it was sent or ordered, or somebody's word for a day to come still stands. */
  public boolean isUnderWay() {
    return lapsed.isEmpty() || how == How.SENT || how == How.ORDERED;
  }

  /** Whether somebody other than the builder has named the day. */
  public boolean isPromised() {
    return how != How.DECIDED && on.isPresent();
  }
}
