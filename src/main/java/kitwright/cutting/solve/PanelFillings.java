package kitwright.cutting.solve;

import java.util.List;
import java.util.Map;

/**
 * The best two-stage cuts of rectangles for given worths (Gilmore and Gomory, Operations Research
 * 13 (1965) 94-120). What is wanted limits each strip by itself, so several strips together may
 * make more than is wanted.
 */
final class PanelFillings {
  private final List<RunFillings> runs;

  PanelFillings(
      Map<Run, List<PanelType.Lie>> lies,
      PanelSaw saw,
      List<Area> rectangles,
      long[] worth,
      int[] left,
      Work work) {
    this.runs =
        lies.entrySet().stream()
            .map(e -> new RunFillings(e.getKey(), e.getValue(), saw, rectangles, worth, left, work))
            .toList();
  }

  /** Whether every answer so far is surely the best. */
  boolean isComplete() {
    return runs.stream().allMatch(RunFillings::isComplete);
  }

  /** The most a rectangle can hold. */
  long worth(Area area) {
    return runs.stream().mapToLong(run -> run.worth(area)).max().orElse(0);
  }

  /** How it is cut to hold that. */
  List<StripCut> cuts(int place, Area area) {
    for (RunFillings run : runs) {
      if (run.worth(area) == worth(area)) {
        return run.cuts(place, area);
      }
    }
    return List.of();
  }
}
