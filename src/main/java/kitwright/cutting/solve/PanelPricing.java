package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** Prices panels cut in two stages. A layout lists the strips of each sound rectangle. */
final class PanelPricing implements Pricing<List<StripCut>> {
  private final List<PanelType> types;
  private final List<PanelKind> kinds;
  private final PanelSaw saw;
  private final Map<Run, List<PanelType.Lie>> lies = new EnumMap<>(Run.class);
  private final long[] taking;

  /**
   * For these types and kinds.
   *
   * @param barred widths to which the fence shall not be set
   */
  PanelPricing(List<PanelType> types, List<PanelKind> kinds, PanelSaw saw, Set<Setting> barred) {
    this.types = types;
    this.kinds = kinds;
    this.saw = saw;
    this.taking = types.stream().mapToLong(t -> t.taking(saw)).toArray();
    for (Run run : saw.firstCut().runs()) {
      lies.put(
          run,
          IntStream.range(0, types.size())
              .boxed()
              .flatMap(i -> types.get(i).lies(i, run).stream())
              .filter(lie -> !barred.contains(new Setting(run, lie.over())))
              .sorted(
                  Comparator.comparingLong(PanelType.Lie::over)
                      .thenComparingLong(lie -> -lie.down()))
              .toList());
    }
  }

  @Override
  public long[] size() {
    return taking.clone();
  }

  @Override
  public Offers<List<StripCut>> offers(
      long[] worth, long[] floor, Node<List<StripCut>> node, Work work) {
    List<Area> areas =
        IntStream.range(0, kinds.size())
            .filter(s -> node.stock[s] > 0)
            .boxed()
            .flatMap(s -> kinds.get(s).areas().stream())
            .toList();
    PanelFillings fillings = fillings(areas, worth, node.left, work);
    List<Long> most = new ArrayList<>();
    List<Column<List<StripCut>>> best = new ArrayList<>();
    for (int s = 0; s < kinds.size(); s++) {
      if (node.stock[s] == 0) {
        most.add(floor[s]);
        continue;
      }
      long sum = kinds.get(s).areas().stream().mapToLong(fillings::worth).sum();
      long limit = Math.min(sum, byMaterial(worth, node.left, kinds.get(s).room(saw)));
      if (sum > floor[s]) {
        Column<List<StripCut>> column = column(s, fillings);
        if (column.exceeds(node.left)) {
          JointLimit joint = new JointLimit(this, s, worth, node, work);
          joint.lower(column, limit, floor[s]);
          column = joint.column();
          limit = joint.most();
        }
        best.add(column);
      }
      most.add(Math.max(limit, floor[s]));
    }
    return new Offers<>(fillings.isComplete(), most, best);
  }

  /** Whether a type has a way to lie that is not barred. */
  boolean canLie(int type) {
    return lies.values().stream().flatMap(List::stream).anyMatch(lie -> lie.type() == type);
  }

  /** A column from strips. */
  Column<List<StripCut>> column(int kind, List<StripCut> cuts) {
    int[] made = new int[types.size()];
    cuts.forEach(cut -> cut.pieces().forEach(piece -> made[piece.type()]++));
    return new Column<>(kind, made, List.copyOf(cuts));
  }

  PanelFillings fillings(List<Area> areas, long[] worth, int[] left, Work work) {
    return new PanelFillings(lies, saw, areas, worth, left, work);
  }

  List<Area> areas(int kind) {
    return kinds.get(kind).areas();
  }

  Column<List<StripCut>> column(int kind, PanelFillings fillings) {
    List<StripCut> cuts = new ArrayList<>();
    List<Area> areas = kinds.get(kind).areas();
    for (int a = 0; a < areas.size(); a++) {
      cuts.addAll(fillings.cuts(a, areas.get(a)));
    }
    return column(kind, cuts);
  }

  /** A way that makes no more than is wanted: strip after strip, each the best of what is left. */
  Column<List<StripCut>> modest(int kind, long[] worth, int[] wanted, Work work) {
    int[] left = wanted.clone();
    List<StripCut> cuts = new ArrayList<>();
    List<Area> areas = kinds.get(kind).areas();
    for (int a = 0; a < areas.size(); a++) {
      Area rest = areas.get(a);
      Map<Run, List<PanelType.Lie>> ways = lies;
      while (!work.isOver()) {
        PanelFillings fillings = new PanelFillings(ways, saw, List.of(rest), worth, left, work);
        List<StripCut> next = fillings.cuts(a, rest);
        if (next.isEmpty()) {
          break;
        }
        StripCut strip = dearest(next, worth).keeping(left);
        cuts.add(strip);
        Run run = strip.run();
        ways = new EnumMap<>(Map.of(run, lies.getOrDefault(run, List.of())));
        long used = strip.over() + saw.between(run);
        if (used >= rest.over(run)) {
          break;
        }
        rest = rest.part(run, 0, used, rest.down(run), rest.over(run) - used);
      }
    }
    return column(kind, cuts);
  }

  private StripCut dearest(List<StripCut> cuts, long[] worth) {
    return cuts.stream()
        .max(
            Comparator.comparingDouble(
                cut -> cut.pieces().stream().mapToDouble(p -> worth[p.type()]).sum() / cut.over()))
        .orElseThrow();
  }

  /** As if the parts were liquid: no panel with so much room is worth more. */
  private long byMaterial(long[] worth, int[] left, long room) {
    double most = 0;
    double rest = room;
    List<Integer> order =
        IntStream.range(0, worth.length)
            .boxed()
            .filter(i -> worth[i] > 0 && left[i] > 0)
            .sorted(Comparator.comparingDouble(i -> -(double) worth[i] / taking[i]))
            .toList();
    for (int i : order) {
      double part = Math.min(1, rest / ((double) taking[i] * left[i]));
      most += part * worth[i] * left[i];
      rest -= part * taking[i] * left[i];
      if (rest <= 0) {
        break;
      }
    }
    return (long) Math.ceil(most * (1 + 1e-12)) + 1;
  }
}
