package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Fills rectangles so that no more is made than is wanted: strip after strip, or block after block,
 * each the best of what is left.
 */
final class Modest {
  private final PanelSaw saw;
  private final Map<Run, List<PanelType.Lie>> lies;
  private final long[] worth;
  private final int[] left;
  private final Work work;
  private int blocks;

  /**
   * For these parts.
   *
   * @param left so many of each; lowered in place
   */
  Modest(PanelSaw saw, Map<Run, List<PanelType.Lie>> lies, long[] worth, int[] left, Work work) {
    this.saw = saw;
    this.lies = lies;
    this.worth = worth;
    this.left = left;
    this.work = work;
  }

  void fill(int place, Area area, List<StripCut> cuts) {
    List<StripCut> first = best(saw, lies, place, area);
    if (first.stream().anyMatch(cut -> cut.block() > 0)) {
      byBlocks(place, area, first, cuts);
    } else {
      byStrips(saw, lies, place, area, 0, cuts);
    }
  }

  private List<StripCut> best(
      PanelSaw how, Map<Run, List<PanelType.Lie>> ways, int place, Area area) {
    return new PanelFillings(ways, how, List.of(area), worth, left, work).cuts(place, area);
  }

  private void byStrips(
      PanelSaw how,
      Map<Run, List<PanelType.Lie>> start,
      int place,
      Area area,
      int block,
      List<StripCut> cuts) {
    Area rest = area;
    Map<Run, List<PanelType.Lie>> ways = start;
    while (!work.isOver()) {
      List<StripCut> next =
          best(
              how.in(how.stages() == Stages.TWO ? Stages.TWO : Stages.TWO_AND_TRIM),
              ways,
              place,
              rest);
      if (next.isEmpty()) {
        return;
      }
      StripCut strip = dearest(next).keeping(left);
      cuts.add(strip.inBlock(block));
      Run run = strip.run();
      ways = only(run);
      long used = strip.over() + how.between(run);
      if (used >= rest.over(run)) {
        return;
      }
      rest = rest.part(run, 0, used, rest.down(run), rest.over(run) - used);
    }
  }

  /** One block after the other, the one worth most for its length first. */
  private void byBlocks(int place, Area area, List<StripCut> first, List<StripCut> cuts) {
    Run run = first.get(0).run();
    PanelSaw within =
        new PanelSaw(
            saw.ripKerf(),
            saw.crossKerf(),
            saw.trim(),
            run == Run.ALONG ? FirstCut.ALONG : FirstCut.ACROSS,
            Stages.TWO_AND_TRIM);
    Area rest = area;
    List<StripCut> next = first;
    while (!work.isOver() && next.stream().anyMatch(cut -> cut.block() > 0)) {
      long down = dearestBlock(next);
      int block = ++blocks;
      int before = cuts.size();
      byStrips(within, only(run), place, rest.part(run, 0, 0, down, rest.over(run)), block, cuts);
      long used = down + saw.within(run);
      if (cuts.size() == before || used >= rest.down(run)) {
        return;
      }
      rest = rest.part(run, used, 0, rest.down(run) - used, rest.over(run));
      next = best(saw, only(run), place, rest);
    }
    byStrips(within, only(run), place, rest, ++blocks, cuts);
  }

  /** The length of the block that is worth most for it. */
  private long dearestBlock(List<StripCut> cuts) {
    double most = -1;
    long length = 0;
    for (int block : cuts.stream().map(StripCut::block).distinct().toList()) {
      List<StripCut> of = cuts.stream().filter(cut -> cut.block() == block).toList();
      long down = of.stream().mapToLong(cut -> cut.down(saw.within(cut.run()))).max().orElse(1);
      double each = of.stream().mapToDouble(this::worth).sum() / down;
      if (each > most) {
        most = each;
        length = down;
      }
    }
    return length;
  }

  private Map<Run, List<PanelType.Lie>> only(Run run) {
    return new EnumMap<>(Map.of(run, lies.getOrDefault(run, new ArrayList<>())));
  }

  private StripCut dearest(List<StripCut> cuts) {
    return cuts.stream()
        .max(Comparator.comparingDouble(cut -> worth(cut) / cut.over()))
        .orElseThrow();
  }

  private double worth(StripCut cut) {
    return cut.pieces().stream().mapToDouble(p -> worth[p.type()]).sum();
  }
}
