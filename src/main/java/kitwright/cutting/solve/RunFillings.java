package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * The best ways to cut rectangles into strips that all run one way: at once, or after parting the
 * rectangle crosswise into blocks. The lengths of blocks tried are those of one part, of several
 * alike and of two; so with blocks there may be better.
 */
final class RunFillings {
  private static final int MOST_BLOCK_LENGTHS = 48;

  private final Run run;
  private final PanelSaw saw;
  private final Work work;
  private final StripFillings strips;
  private final long widest;
  private final boolean whole;
  private final List<Long> blocks;
  private final Map<Long, AreaFillings> byLength = new HashMap<>();
  private final Map<Area, Knapsack> inBlocks = new HashMap<>();

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
    this.whole = saw.mayRun(run);
    long longest = rectangles.stream().mapToLong(a -> a.down(run)).max().orElse(0);
    this.widest = rectangles.stream().mapToLong(a -> a.over(run)).max().orElse(0);
    this.blocks =
        saw.mayBlock(run) ? lengths(lies, worth, left, saw.within(run), longest) : List.of();
    this.strips =
        new StripFillings(lies, worth, left, saw.stages(), saw.within(run), longest, work);
  }

  private static List<Long> lengths(
      List<PanelType.Lie> lies, long[] worth, int[] left, long kerf, long longest) {
    List<Long> singles =
        lies.stream()
            .filter(lie -> worth[lie.type()] > 0 && left[lie.type()] > 0)
            .map(PanelType.Lie::down)
            .distinct()
            .toList();
    TreeSet<Long> all = new TreeSet<>(singles);
    for (int n = 2; n < 6 && all.size() < MOST_BLOCK_LENGTHS; n++) {
      for (long one : singles) {
        all.add(n * (one + kerf) - kerf);
      }
    }
    for (long one : singles) {
      for (long other : singles) {
        if (all.size() < MOST_BLOCK_LENGTHS) {
          all.add(one + kerf + other);
        }
      }
    }
    return all.stream().filter(length -> length <= longest).limit(MOST_BLOCK_LENGTHS).toList();
  }

  /** False where there may be better than what is answered. */
  boolean isComplete() {
    return blocks.isEmpty()
        && strips.isComplete()
        && byLength.values().stream().allMatch(AreaFillings::isComplete);
  }

  long worth(Area area) {
    return Math.max(wholeWorth(area), blockWorth(area));
  }

  private long wholeWorth(Area area) {
    return whole ? of(area.down(run)).worth(area.over(run)) : 0;
  }

  private long blockWorth(Area area) {
    if (blocks.isEmpty()) {
      return 0;
    }
    Knapsack.Front front = inBlocks(area).soFar();
    return front.worth(front.best(area.down(run) + saw.within(run)));
  }

  List<StripCut> cuts(int place, Area area) {
    if (wholeWorth(area) >= blockWorth(area)) {
      return whole ? of(area.down(run)).cuts(place, area.over(run)) : List.of();
    }
    List<StripCut> cuts = new ArrayList<>();
    Knapsack sack = inBlocks(area);
    int[] block = {0};
    sack.unpack(
        sack.soFar().state(sack.soFar().best(area.down(run) + saw.within(run))),
        (b, copies) ->
            IntStream.range(0, copies)
                .forEach(
                    n -> {
                      block[0]++;
                      of(blocks.get(b)).cuts(place, area.over(run)).stream()
                          .map(cut -> cut.inBlock(block[0]))
                          .forEach(cuts::add);
                    }));
    return cuts;
  }

  private Knapsack inBlocks(Area area) {
    return inBlocks.computeIfAbsent(
        new Area(0, 0, area.length(), area.width()),
        shape -> {
          long kerf = saw.within(run);
          Knapsack sack = new Knapsack(area.down(run) + kerf, work);
          for (int b = 0; b < blocks.size(); b++) {
            long taking = blocks.get(b) + kerf;
            int most = (int) ((area.down(run) + kerf) / taking);
            sack.offer(b, taking, of(blocks.get(b)).worth(area.over(run)), most);
          }
          return sack;
        });
  }

  private AreaFillings of(long down) {
    return byLength.computeIfAbsent(
        down, d -> new AreaFillings(run, strips, d, widest, saw.between(run), work));
  }
}
