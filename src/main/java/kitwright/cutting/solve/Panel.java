package kitwright.cutting.solve;

import java.util.List;

/**
 * Panels, alike, from which parts are cut.
 *
 * @param id the caller's name for them
 * @param length with the grain, tenths of a millimetre
 * @param width across the grain
 * @param count how many there are
 * @param value of one, in any whole unit; the plan uses the least sum
 * @param spoilt strips to avoid
 */
public record Panel(
    String id, long length, long width, int count, long value, List<Spoilt> spoilt) {
  public Panel {
    if (length <= 0 || width <= 0 || count < 0 || value < 0) {
      throw new IllegalArgumentException("impossible panel: " + id);
    }
    spoilt = List.copyOf(spoilt);
  }
}
