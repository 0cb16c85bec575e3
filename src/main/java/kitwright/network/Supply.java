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

  /** Counted and at hand for every task. */
  public static Supply atHand(String id, String item, BigDecimal amount) {
    return new Supply(id, item, amount, Optional.empty(), Set.of(), Sureness.COUNTED);
  }

  /** Expected on a day, for every task. */
  public static Supply due(String id, String item, BigDecimal amount, LocalDate day) {
    return new Supply(id, item, amount, Optional.of(day), Set.of(), Sureness.EXPECTED);
  }

  public Supply keptFor(Set<String> tasks) {
    return new Supply(id, item, amount, arrives, tasks, sureness);
  }

  public Supply known(Sureness how) {
    return new Supply(id, item, amount, arrives, keptFor, how);
  }

  boolean isThereOn(LocalDate day) {
    return arrives.filter(day::isBefore).isEmpty();
  }
}
