package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.List;

/** The best ways to part rectangles of one strip length into strips that run one way. */
final class AreaFillings {
  private final Run run;
  private final StripFillings strips;
  private final long down;
  private final long kerf;
  private final Knapsack sack;

  /**
   * For rectangles of one length.
   *
   * @param down length of the strips
   * @param over the widest such rectangle
   * @param kerf between strips
   */
  AreaFillings(Run run, StripFillings strips, long down, long over, long kerf, Work work) {
    this.run = run;
    this.strips = strips;
    this.down = down;
    this.kerf = kerf;
    this.sack = new Knapsack(over + kerf, work);
    for (int k = 0; k < strips.widths(); k++) {
      sack.offer(k, strips.over(k) + kerf, strips.worth(k, down), strips.mostStrips(k));
    }
  }

  boolean isComplete() {
    return sack.isComplete() && strips.isComplete();
  }

  long worth(long over) {
    Knapsack.Front front = sack.soFar();
    return front.worth(front.best(over + kerf));
  }

  List<StripCut> cuts(int area, long over) {
    Knapsack.Front front = sack.soFar();
    List<StripCut> cuts = new ArrayList<>();
    sack.unpack(
        front.state(front.best(over + kerf)),
        (k, copies) -> {
          StripCut cut = new StripCut(area, 0, run, strips.over(k), strips.pieces(k, down));
          for (int n = 0; n < copies; n++) {
            cuts.add(cut);
          }
        });
    return cuts;
  }
}
