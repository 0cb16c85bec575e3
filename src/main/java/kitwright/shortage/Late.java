package kitwright.shortage;

import java.util.Map;

/**
 * Goods supposed to come later than said.
 *
 * @param days calendar days by id of the delivery, claim, shortage or order; never negative
 */
public record Late(Map<String, Integer> days) {
  /** Everything comes as said. */
  public static final Late NOTHING = new Late(Map.of());

  public Late {
    days = Map.copyOf(days);
  }

  int of(String id) {
    return days.getOrDefault(id, 0);
  }
}
