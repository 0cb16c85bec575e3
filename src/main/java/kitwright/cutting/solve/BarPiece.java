package kitwright.cutting.solve;

/**
 * One length to be cut.
 *
 * @param mark the part it is, or belongs to
 * @param copy which of the parts of that mark, from 1
 * @param piece which piece of that part, from 1; 1 where the part is whole
 * @param of how many pieces are joined to make the part
 * @param from where it begins, tenths of a millimetre from the end of the stock
 * @param length of the piece
 */
public record BarPiece(String mark, int copy, int piece, int of, long from, long length) {

  /** Where it ends. */
  public long to() {
    return from + length;
  }
}
