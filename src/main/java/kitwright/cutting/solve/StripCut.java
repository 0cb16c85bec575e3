package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * A strip in one of the sound rectangles of a panel.
 *
 * @param area which rectangle
 * @param block which of the blocks that the rectangle is parted into first, crosswise to the
 *     strips; all strips stand in one where it is parted into strips at once
 * @param over the width of the strip
 * @param pieces what is cut from it
 */
record StripCut(int area, int block, Run run, long over, List<PanelType.Lie> pieces) {

  /** The same strip with only the pieces still wanted, which are taken from {@code left}. */
  StripCut keeping(int[] left) {
    List<PanelType.Lie> kept = new ArrayList<>();
    for (PanelType.Lie piece : pieces) {
      if (left[piece.type()] > 0) {
        left[piece.type()]--;
        kept.add(piece);
      }
    }
    return new StripCut(area, block, run, over, kept);
  }

  StripCut inBlock(int other) {
    return new StripCut(area, other, run, over, pieces);
  }

  /** How long it is, to the last piece. */
  long down(long kerf) {
    return pieces.stream().mapToLong(piece -> piece.down() + kerf).sum() - kerf;
  }
}
