package kitwright.cutting.solve;

/**
 * A stretch of a length or width.
 *
 * @param from tenths of a millimetre from the end the piece is measured from
 * @param to tenths of a millimetre, beyond {@code from}
 */
public record Span(long from, long to) {
  public Span {
    if (from < 0 || to <= from) {
      throw new IllegalArgumentException("no stretch runs from " + from + " to " + to);
    }
  }

  /** How long it is, in tenths of a millimetre. */
  public long length() {
    return to - from;
  }
}
