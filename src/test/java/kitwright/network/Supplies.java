package kitwright.network;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/** Supplies for tests. */
final class Supplies {
  private Supplies() {}

  /** Counted and at hand for every task. */
  static Supply atHand(String id, String item, BigDecimal amount) {
    return new Supply(id, item, amount, Optional.empty(), Set.of(), Supply.Sureness.COUNTED);
  }

  /** Expected on a day, for every task. */
  static Supply due(String id, String item, BigDecimal amount, LocalDate day) {
    return new Supply(id, item, amount, Optional.of(day), Set.of(), Supply.Sureness.EXPECTED);
  }

  static Supply keptFor(Supply supply, Set<String> tasks) {
    return new Supply(
        supply.id(), supply.item(), supply.amount(), supply.arrives(), tasks, supply.sureness());
  }
}
