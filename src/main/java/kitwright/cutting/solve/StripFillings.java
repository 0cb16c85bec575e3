package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * The best fillings of strips that run one way: for each width a strip may have, what it can hold.
 * With trimming a strip also holds narrower parts, so each width builds on the one before.
 */
final class StripFillings {
  private record Filling(long over, int mostStrips, Knapsack sack, Knapsack.Front front) {}

  private final List<PanelType.Lie> lies;
  private final long kerf;
  private final List<Filling> fillings = new ArrayList<>();
  private boolean complete = true;

  /**
   * For parts of these worths.
   *
   * @param lies ways to lie in such strips, narrowest first
   * @param kerf between pieces
   * @param room the longest strip there is
   */
  StripFillings(
      List<PanelType.Lie> lies,
      long[] worth,
      int[] left,
      Stages stages,
      long kerf,
      long room,
      Work work) {
    this.lies = lies;
    this.kerf = kerf;
    Knapsack sack = new Knapsack(room + kerf, work);
    int most = 0;
    for (int i = 0; i < lies.size(); i++) {
      PanelType.Lie lie = lies.get(i);
      if (left[lie.type()] > 0) {
        most += left[lie.type()];
        sack.offer(i, lie.down() + kerf, worth[lie.type()], left[lie.type()]);
      }
      if (i + 1 == lies.size() || lies.get(i + 1).over() > lie.over()) {
        complete &= sack.isComplete();
        if (most > 0) {
          fillings.add(new Filling(lie.over(), most, sack, sack.soFar()));
        }
        most = 0;
        sack = stages == Stages.TWO ? new Knapsack(room + kerf, work) : sack;
      }
    }
  }

  boolean isComplete() {
    return complete;
  }

  int widths() {
    return fillings.size();
  }

  long over(int width) {
    return fillings.get(width).over();
  }

  /** No more strips of this width can be of use. */
  int mostStrips(int width) {
    return fillings.get(width).mostStrips();
  }

  long worth(int width, long down) {
    Knapsack.Front front = fillings.get(width).front();
    return front.worth(front.best(down + kerf));
  }

  List<PanelType.Lie> pieces(int width, long down) {
    Filling filling = fillings.get(width);
    List<PanelType.Lie> pieces = new ArrayList<>();
    int state = filling.front().state(filling.front().best(down + kerf));
    filling
        .sack()
        .unpack(
            state,
            (i, copies) -> {
              for (int n = 0; n < copies; n++) {
                pieces.add(lies.get(i));
              }
            });
    return pieces;
  }
}
