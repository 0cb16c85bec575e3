package kitwright.cutting.saw;

/**
 * A rectangle on a piece of stock, tenths of a millimetre; it may be empty where a blade took all.
 *
 * @param along where it begins, from the marked end
 * @param across where it begins, from the marked edge
 */
public record Rect(long along, long across, long length, long width) {
  /** Where it begins in the direction that a cut of that way moves in. */
  public long from(Way way) {
    return way == Way.CROSS ? along : across;
  }

  /** Where it ends so. */
  public long to(Way way) {
    return way == Way.CROSS ? along + length : across + width;
  }

  /** What lies between two places. */
  public Rect between(Way way, long from, long to) {
    return way == Way.CROSS
        ? new Rect(from, across, to - from, width)
        : new Rect(along, from, length, to - from);
  }

  public long area() {
    return length * width;
  }

  public boolean isEmpty() {
    return length <= 0 || width <= 0;
  }

  /** How much of it lies between two places along the piece. */
  public long areaWithin(long from, long to) {
    return Math.max(0, Math.min(to, along + length) - Math.max(from, along)) * width;
  }
}
