package kitwright.kit;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.ledger.Delivery;
import kitwright.value.Place;
import kitwright.value.Quantity;

/**
 * A line of a count, in the unit in which the item was promised.
 *
 * @param on the day the delivery came
 * @param found in all, good or not
 * @param damaged of these, damaged
 * @param wrong of these, not what was ordered
 * @param undersize of these, too small to be built with
 * @param at where the line stands
 */
public record Count(
    Delivery delivery,
    LocalDate on,
    Quantity found,
    Quantity damaged,
    Quantity wrong,
    Quantity undersize,
    Optional<String> remark,
    Place at) {

  /** What cannot be built with, for whatever cause. */
  public Quantity noGood() {
    return damaged.plus(wrong).plus(undersize);
  }

  /** What can be built with. */
  public Quantity good() {
    return found.less(noGood());
  }
}
