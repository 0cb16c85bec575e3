package kitwright.cutting.solve;

import java.util.List;

/**
 * Lengths to be cut from stock.
 *
 * @param parts what is wanted
 * @param stock what there is
 * @param kerf width of the saw cut, tenths of a millimetre
 * @param trim cut off each end of every piece first, its kerf included
 * @param remnant the shortest left-over worth keeping
 */
public record BarTask(List<BarPart> parts, List<Bar> stock, long kerf, long trim, long remnant) {
  public BarTask {
    parts = List.copyOf(parts);
    stock = List.copyOf(stock);
    if (parts.stream().map(BarPart::mark).distinct().count() < parts.size()
        || stock.stream().map(Bar::id).distinct().count() < stock.size()) {
      throw new IllegalArgumentException("marks and names of stock must differ");
    }
    if (kerf < 0 || trim < 0 || remnant < 0) {
      throw new IllegalArgumentException("kerf, trim and remnant are never negative");
    }
  }
}
