package kitwright.cutting.solve;

import java.util.Optional;
import java.util.Set;

/**
 * Lengths wanted, alike.
 *
 * @param mark the caller's name for them
 * @param length of each, tenths of a millimetre
 * @param qty how many
 * @param priority 1 is made first where not everything can be made
 * @param joint how it may be made from shorter pieces; empty where it must be whole
 * @param from names of the stock it may come from; empty where any will do
 */
public record BarPart(
    String mark, long length, int qty, int priority, Optional<Joint> joint, Set<String> from) {
  /** A part that may come from any stock. */
  public BarPart(String mark, long length, int qty, int priority, Optional<Joint> joint) {
    this(mark, length, qty, priority, joint, Set.of());
  }

  public BarPart {
    from = Set.copyOf(from);
    if (length <= 0 || qty < 0 || priority < 1) {
      throw new IllegalArgumentException("impossible part: " + mark);
    }
  }

  boolean mayComeFrom(String stock) {
    return from.isEmpty() || from.contains(stock);
  }
}
