package kitwright.cutting.solve;

import java.util.List;

/**
 * A strip parted from a panel, and what is cut from it.
 *
 * @param run which way it runs
 * @param area all of it
 * @param pieces in cutting order
 */
public record CutStrip(Run run, Area area, List<PanelPiece> pieces) {
  public CutStrip {
    pieces = List.copyOf(pieces);
  }
}
