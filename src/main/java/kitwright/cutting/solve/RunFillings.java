package kitwright.cutting.solve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The best ways to cut rectangles into strips that all run one way. */
final class RunFillings {
  private final Run run;
  private final PanelSaw saw;
  private final Work work;
  private final StripFillings strips;
  private final long widest;
  private final Map<Long, AreaFillings> byLength = new HashMap<>();

  RunFillings(
      Run run,
      List<PanelType.Lie> lies,
      PanelSaw saw,
      List<Area> rectangles,
      long[] worth,
      int[] left,
      Work work) {
    this.run = run;
    this.saw = saw;
    this.work = work;
    long longest = rectangles.stream().mapToLong(a -> a.down(run)).max().orElse(0);
    this.widest = rectangles.stream().mapToLong(a -> a.over(run)).max().orElse(0);
    this.strips =
        new StripFillings(lies, worth, left, saw.stages(), saw.within(run), longest, work);
  }

  boolean isComplete() {
    return strips.isComplete() && byLength.values().stream().allMatch(AreaFillings::isComplete);
  }

  long worth(Area area) {
    return of(area).worth(area.over(run));
  }

  List<StripCut> cuts(int place, Area area) {
    return of(area).cuts(place, area.over(run));
  }

  private AreaFillings of(Area area) {
    return byLength.computeIfAbsent(
        area.down(run),
        down -> new AreaFillings(run, strips, down, widest, saw.between(run), work));
  }
}
