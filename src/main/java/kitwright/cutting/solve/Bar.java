package kitwright.cutting.solve;

import java.util.List;

/**
 * Pieces of stock, alike, from which lengths are cut.
 *
 * @param id the caller's name for them
 * @param length of each, tenths of a millimetre
 * @param count how many there are
 * @param value of one, in any whole unit; the plan uses the least sum. Zero means free
 * @param defects stretches to avoid, measured from one end
 */
public record Bar(String id, long length, int count, long value, List<Span> defects) {
  public Bar {
    if (length <= 0 || count < 0 || value < 0) {
      throw new IllegalArgumentException("impossible stock: " + id);
    }
    defects = List.copyOf(defects);
  }
}
