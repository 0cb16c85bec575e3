package kitwright.cutting.solve;

import java.util.Optional;

/**
 * Lengths wanted, alike.
 *
 * @param mark the caller's name for them
 * @param length of each, tenths of a millimetre
 * @param qty how many
 * @param priority 1 is made first where not everything can be made
 * @param joint how it may be made from shorter pieces; empty where it must be whole
 */
public record BarPart(String mark, long length, int qty, int priority, Optional<Joint> joint) {
  public BarPart {
    if (length <= 0 || qty < 0 || priority < 1) {
      throw new IllegalArgumentException("impossible part: " + mark);
    }
  }
}
