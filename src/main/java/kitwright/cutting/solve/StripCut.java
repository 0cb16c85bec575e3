package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * A strip in one of the sound rectangles of a panel.
 *
 * @param area which rectangle
 * @param over the width of the strip
 * @param pieces what is cut from it
 */
record StripCut(int area, Run run, long over, List<PanelType.Lie> pieces) {

  /** The same strip with only the pieces still wanted, which are taken from {@code left}. */
  StripCut keeping(int[] left) {
    List<PanelType.Lie> kept = new ArrayList<>();
    for (PanelType.Lie piece : pieces) {
      if (left[piece.type()] > 0) {
        left[piece.type()]--;
        kept.add(piece);
      }
    }
    return new StripCut(area, run, over, kept);
  }
}
