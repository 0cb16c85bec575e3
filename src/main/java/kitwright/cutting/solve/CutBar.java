package kitwright.cutting.solve;

import java.util.List;

/**
 * One piece of stock and what is cut from it.
 *
 * @param stock its name
 * @param number which of the pieces of that name, from 1
 * @param pieces in cutting order, from the end that is measured from
 * @param remnants left-overs worth keeping
 */
public record CutBar(String stock, int number, List<BarPiece> pieces, List<Span> remnants) {
  public CutBar {
    pieces = List.copyOf(pieces);
    remnants = List.copyOf(remnants);
  }
}
