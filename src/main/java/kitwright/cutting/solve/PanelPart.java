package kitwright.cutting.solve;

/**
 * Rectangular parts wanted, alike.
 *
 * @param mark the caller's name for them
 * @param length tenths of a millimetre
 * @param width tenths of a millimetre
 * @param qty how many
 * @param priority 1 is made first where not everything can be made
 * @param grain how it must lie
 */
public record PanelPart(String mark, long length, long width, int qty, int priority, Grain grain) {
  public PanelPart {
    if (length <= 0 || width <= 0 || qty < 0 || priority < 1) {
      throw new IllegalArgumentException("impossible part: " + mark);
    }
  }
}
