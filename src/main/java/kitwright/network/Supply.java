package kitwright.network;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * So much of an item, at hand or under way.
 *
 * @param id id of the stock, delivery or order
 * @param item the item that it can serve as, the original or an approved substitute
 * @param amount how much, in the item's unit; not negative
 * @param arrives the day from which it is there; empty if at hand
 * @param keptFor ids of the only tasks that may take from it; empty if it is for all
 * @param sureness how well it is known
 */
public record Supply(
    String id,
    String item,
    BigDecimal amount,
    Optional<LocalDate> arrives,
    Set<String> keptFor,
    Sureness sureness) {
  /** How well a supply is known; the surer one is taken first. */
  public enum Sureness {
    /** Somebody has counted it. */
    COUNTED,
    /** Said to be there, and nobody has counted it. */
    UNCOUNTED,
    /** Said to come. */
    EXPECTED,
    /** Not there: decided that the work goes on without it. Taken when all that is there is. */
    WAIVED
  }

  public Supply {
    if (amount.signum() < 0) {
      throw new IllegalArgumentException("a supply is never negative: " + amount);
    }
    keptFor = Set.copyOf(keptFor);
  }

  boolean isThereOn(LocalDate day) {
    return arrives.filter(day::isBefore).isEmpty();
  }
}
