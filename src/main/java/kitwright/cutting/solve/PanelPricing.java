package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Prices panels cut in stages. A layout lists the strips of each sound rectangle. */
final class PanelPricing implements Pricing<List<StripCut>> {
  private final List<PanelType> types;
  private final List<PanelKind> kinds;
  private final PanelSaw saw;
  private final long[] taking;

  /** For each kind which lies its parts have; kinds with the same lies share one map. */
  private final List<Map<Run, List<PanelType.Lie>>> lies = new ArrayList<>();

  /** Kinds on which the same parts may lie in the same ways, priced together. */
  private final List<List<Integer>> alike;

  /**
   * For these types and kinds.
   *
   * @param barred widths to which the fence shall not be set
   */
  PanelPricing(List<PanelType> types, List<PanelKind> kinds, PanelSaw saw, Set<Setting> barred) {
    this.types = types;
    this.kinds = kinds;
    this.saw = saw;
    this.taking = types.stream().mapToLong(t -> t.taking(saw, kinds)).toArray();
    Map<Map<Run, List<PanelType.Lie>>, List<Integer>> groups = new LinkedHashMap<>();
    for (int k = 0; k < kinds.size(); k++) {
      groups.computeIfAbsent(lies(k, barred), map -> new ArrayList<>()).add(k);
    }
    kinds.forEach(kind -> lies.add(Map.of()));
    groups.forEach((map, members) -> members.forEach(k -> lies.set(k, map)));
    this.alike = List.copyOf(groups.values());
  }

  private Map<Run, List<PanelType.Lie>> lies(int kind, Set<Setting> barred) {
    Map<Run, List<PanelType.Lie>> all = new EnumMap<>(Run.class);
    long wide = kinds.get(kind).fullWidth();
    for (Run run : saw.runs()) {
      all.put(
          run,
          IntStream.range(0, types.size())
              .boxed()
              .flatMap(i -> types.get(i).lies(i, run, kind, wide).stream())
              .filter(lie -> !barred.contains(new Setting(run, lie.over())))
              .sorted(
                  Comparator.comparingLong(PanelType.Lie::over)
                      .thenComparingLong(lie -> -lie.down()))
              .toList());
    }
    return all;
  }

  @Override
  public long[] size() {
    return taking.clone();
  }

  @Override
  public Offers<List<StripCut>> offers(
      long[] worth, long[] floor, Node<List<StripCut>> node, Work work) {
    Long[] most = new Long[kinds.size()];
    List<Column<List<StripCut>>> best = new ArrayList<>();
    boolean complete = true;
    for (List<Integer> group : alike) {
      List<Area> areas =
          group.stream()
              .filter(s -> node.stock[s] > 0)
              .flatMap(s -> kinds.get(s).areas().stream())
              .toList();
      PanelFillings fillings = fillings(group.get(0), areas, worth, node.left, work);
      for (int s : group) {
        most[s] =
            node.stock[s] == 0 ? floor[s] : offer(s, fillings, worth, floor[s], node, work, best);
      }
      complete &= fillings.isComplete();
    }
    return new Offers<>(complete, List.of(most), best);
  }

  /**
   * Adds the best way to cut one kind, where it is worth more than the floor; the most it can be.
   */
  private long offer(
      int s,
      PanelFillings fillings,
      long[] worth,
      long floor,
      Node<List<StripCut>> node,
      Work work,
      List<Column<List<StripCut>>> best) {
    long sum = kinds.get(s).areas().stream().mapToLong(fillings::worth).sum();
    long limit = Math.min(sum, byMaterial(s, worth, node.left));
    if (sum > floor) {
      Column<List<StripCut>> column = column(s, fillings);
      if (column.exceeds(node.left)) {
        JointLimit joint = new JointLimit(this, s, worth, node, work);
        joint.lower(column, limit, floor);
        column = joint.column();
        limit = joint.most();
      }
      best.add(column);
    }
    return Math.max(limit, floor);
  }

  /** With blocks not every way is tried, so any way of parting panels is let in for the limit. */
  @Override
  public Optional<List<Long>> limits(long[] worth, Node<List<StripCut>> node, Work work) {
    if (saw.stages() != Stages.THREE_AND_TRIM) {
      return Optional.empty();
    }
    Long[] most = new Long[kinds.size()];
    Arrays.fill(most, 0L);
    for (List<Integer> group : alike) {
      AnyParting any = new AnyParting(lies.get(group.get(0)), worth, node.left, saw, work);
      for (int s : group) {
        if (node.stock[s] > 0) {
          long sum = kinds.get(s).areas().stream().mapToLong(any::most).sum();
          most[s] = Math.min(sum, byMaterial(s, worth, node.left));
        }
      }
    }
    return work.isOver() ? Optional.empty() : Optional.of(List.of(most));
  }

  /** Whether a type has a way to lie that is not barred. */
  boolean canLie(int type) {
    return lies.stream()
        .flatMap(map -> map.values().stream())
        .flatMap(List::stream)
        .anyMatch(lie -> lie.type() == type);
  }

  /** A column from strips. */
  Column<List<StripCut>> column(int kind, List<StripCut> cuts) {
    int[] made = new int[types.size()];
    cuts.forEach(cut -> cut.pieces().forEach(piece -> made[piece.type()]++));
    return new Column<>(kind, made, List.copyOf(cuts));
  }

  PanelFillings fillings(int kind, List<Area> areas, long[] worth, int[] left, Work work) {
    return new PanelFillings(lies.get(kind), saw, areas, worth, left, work);
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
      new Modest(saw, lies.get(kind), worth, left, work).fill(a, areas.get(a), cuts);
    }
    return column(kind, cuts);
  }

  /** As if the parts were liquid: no panel of a kind is worth more. */
  private long byMaterial(int kind, long[] worth, int[] left) {
    double most = 0;
    double rest = kinds.get(kind).room(saw);
    List<Integer> order =
        IntStream.range(0, worth.length)
            .boxed()
            .filter(i -> worth[i] > 0 && left[i] > 0 && types.get(i).ways().get(kind).isPresent())
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
