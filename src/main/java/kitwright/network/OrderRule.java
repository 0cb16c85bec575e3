package kitwright.network;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;

/**
 * How an item is bought.
 *
 * @param leadDays calendar days from order to arrival, not negative
 * @param minimum least amount of an order; zero if there is none
 * @param pack orders come in whole multiples of it; zero if any amount can be had
 */
public record OrderRule(int leadDays, BigDecimal minimum, BigDecimal pack) {
  public OrderRule {
    if (leadDays < 0 || minimum.signum() < 0 || pack.signum() < 0) {
      throw new IllegalArgumentException(
          "lead time, minimum and pack are never negative: "
              + (leadDays + ", " + minimum + ", " + pack));
    }
  }

  /** Exactly what is short, after so many days. */
  public static OrderRule lotForLot(int leadDays) {
    return new OrderRule(leadDays, BigDecimal.ZERO, BigDecimal.ZERO);
  }

  /** How much to order where {@code net} is short: max(net, minimum), in whole packs. */
  BigDecimal lot(BigDecimal net) {
    BigDecimal least = net.max(minimum);
    return pack.signum() == 0 ? least : least.divide(pack, 0, RoundingMode.CEILING).multiply(pack);
  }

  LocalDate orderBy(LocalDate needed) {
    return needed.minusDays(leadDays);
  }

  /** When it is there if ordered in time for {@code needed}, or today if that day has passed. */
  LocalDate arrives(LocalDate needed, LocalDate today) {
    LocalDate soonest = today.plusDays(leadDays);
    return needed.isBefore(soonest) ? soonest : needed;
  }
}
