package kitwright.cutting.solve;

import java.util.List;

/**
 * Parts to be cut from panels.
 *
 * @param parts what is wanted
 * @param stock what there is
 * @param saw how it is cut
 * @param remnantLong a left-over is worth keeping if its longer side is at least this
 * @param remnantShort and its shorter side at least this
 */
public record PanelTask(
    List<PanelPart> parts, List<Panel> stock, PanelSaw saw, long remnantLong, long remnantShort) {
  public PanelTask {
    parts = List.copyOf(parts);
    stock = List.copyOf(stock);
    if (remnantLong < remnantShort || remnantShort < 0) {
      throw new IllegalArgumentException("a left-over’s longer side comes first");
    }
    if (parts.stream().map(PanelPart::mark).distinct().count() < parts.size()
        || stock.stream().map(Panel::id).distinct().count() < stock.size()) {
      throw new IllegalArgumentException("marks and names of stock must differ");
    }
  }
}
