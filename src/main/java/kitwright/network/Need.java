package kitwright.network;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * What a task uses up of one item.
 *
 * @param task id of the task
 * @param item id of the kit item, stock or material
 * @param amount how much, in the item's unit; more than nothing
 * @param on the day on which it has to be there
 */
public record Need(String task, String item, BigDecimal amount, LocalDate on) {
  public Need {
    if (amount.signum() <= 0) {
      throw new IllegalArgumentException("a need is more than nothing: " + amount);
    }
  }
}
