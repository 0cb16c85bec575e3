package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** A task in numbers: types of part, kinds of panel, and who ordered what. */
final class PanelModel {
  /**
   * With more types than this the linear programs would outgrow memory: first fit alone answers.
   */
  private static final int MOST_TYPES = 300;

  private static final int MOST_TO_PLACE_SINGLY = 20_000;

  private final PanelTask task;
  private final PanelSaw saw;
  private final List<PanelKind> kinds;
  private final List<PanelType> types;
  private final List<List<PanelOrder>> orders = new ArrayList<>();
  private final int[] demand;

  /** The parts of a task, cut in so many stages. */
  PanelModel(PanelTask task, List<PanelKind> kinds, Stages stages) {
    this.task = task;
    this.saw = task.saw().in(stages);
    this.kinds = kinds;
    Map<PanelType, List<PanelOrder>> byType = new LinkedHashMap<>();
    for (int p = 0; p < task.parts().size(); p++) {
      PanelPart part = task.parts().get(p);
      PanelType type = type(p);
      if (fits(type)) {
        byType.computeIfAbsent(type, t -> new ArrayList<>()).add(new PanelOrder(p, part.qty()));
      }
    }
    this.types =
        byType.keySet().stream()
            .sorted(
                Comparator.comparingLong((PanelType t) -> -t.taking(task.saw(), kinds))
                    .thenComparing(t -> -t.length())
                    .thenComparing(t -> t.ways().toString())
                    .thenComparing(PanelType::priority))
            .toList();
    types.forEach(type -> orders.add(byType.getOrDefault(type, List.of())));
    this.demand =
        orders.stream().mapToInt(l -> l.stream().mapToInt(PanelOrder::qty).sum()).toArray();
  }

  private PanelType type(int p) {
    PanelPart part = task.parts().get(p);
    List<Optional<Grain>> ways = kinds.stream().map(kind -> kind.ways().get(p)).toList();
    boolean free = ways.stream().allMatch(way -> way.equals(Optional.of(Grain.FREE)));
    boolean swap = free && part.width() > part.length();
    long length = swap ? part.width() : part.length();
    long width = swap ? part.length() : part.width();
    return new PanelType(length, width, part.priority(), ways);
  }

  private boolean fits(PanelType type) {
    return IntStream.range(0, kinds.size())
        .anyMatch(k -> lies(type, 0, Run.ALONG, k).stream().anyMatch(lie -> fits(lie, k)));
  }

  private List<PanelType.Lie> lies(PanelType type, int index, Run run, int kind) {
    return type.lies(index, run, kind, kinds.get(kind).fullWidth());
  }

  private boolean fits(PanelType.Lie lie, int kind) {
    return kinds.get(kind).areas().stream()
        .anyMatch(a -> lie.down() <= a.down(lie.run()) && lie.over() <= a.over(lie.run()));
  }

  boolean isSearched() {
    return types.size() <= MOST_TYPES;
  }

  int[] demand() {
    return demand.clone();
  }

  List<PanelOrder> orders(int type) {
    return orders.get(type);
  }

  int[] counts() {
    long all = pieces(demand);
    return kinds.stream().mapToInt(k -> (int) Math.min(k.count(), all)).toArray();
  }

  long[] values() {
    return kinds.stream().mapToLong(PanelKind::value).toArray();
  }

  PanelPricing pricing(Set<Setting> barred) {
    return new PanelPricing(types, kinds, saw, barred);
  }

  /** Searches for the best plan; with very many types first fit has to do. */
  Solved<List<StripCut>> solve(Work work, List<Column<List<StripCut>>> known) {
    if (!isSearched()) {
      return firstFitAlone();
    }
    PanelPricing pricing = pricing(Set.of());
    Solved<List<StripCut>> searched =
        new Fulfilment<>(
                demand,
                types.stream().mapToInt(PanelType::priority).toArray(),
                counts(),
                values(),
                pricing,
                bound()::of,
                wanted -> known.isEmpty() ? firstColumns(wanted, pricing) : known,
                work)
            .solve();
    if (searched.missing() == 0 || pieces(demand) <= MOST_TO_PLACE_SINGLY) {
      return searched;
    }
    // With very many parts the search may have ended before it had placed all.
    Solved<List<StripCut>> fitted = firstFitAlone();
    return fitted.missing() < searched.missing() ? fitted : searched;
  }

  private static long pieces(int[] demand) {
    return Arrays.stream(demand).asLongStream().sum();
  }

  private List<Column<List<StripCut>>> firstColumns(int[] wanted, PanelPricing pricing) {
    if (pieces(wanted) > MOST_TO_PLACE_SINGLY) {
      return List.of();
    }
    return firstFit(wanted).stream().map(c -> pricing.column(c.kind(), c.strips())).toList();
  }

  Solved<List<StripCut>> firstFitAlone() {
    List<PanelCut> cuts = firstFit(demand);
    int[] left = demand.clone();
    cuts.forEach(c -> c.strips().forEach(s -> s.pieces().forEach(p -> left[p.type()]--)));
    boolean all = Arrays.stream(left).allMatch(n -> n == 0);
    long value = cuts.stream().mapToLong(c -> kinds.get(c.kind()).value()).sum();
    List<Column<List<StripCut>>> columns =
        cuts.stream()
            .map(c -> new Column<>(c.kind(), new int[0], List.copyOf(c.strips())))
            .toList();
    List<Integer> unmade = Arrays.stream(left).boxed().toList();
    return new Solved<>(columns, unmade, value, all ? bound().of(demand) : 0, all);
  }

  /**
   * For each way of running strips, widest first; the one that leaves least unmade, then cheapest.
   */
  private List<PanelCut> firstFit(int[] wanted) {
    return task.saw().firstCut().runs().stream()
        .map(run -> new PanelFirstFit(kinds, task.saw(), run, counts(), lies(run)).plan(wanted))
        .min(
            Comparator.<List<PanelCut>>comparingLong(cuts -> -made(cuts))
                .thenComparingLong(
                    cuts -> cuts.stream().mapToLong(c -> kinds.get(c.kind()).value()).sum()))
        .orElseThrow();
  }

  private static long made(List<PanelCut> cuts) {
    return cuts.stream().flatMap(c -> c.strips().stream()).mapToLong(s -> s.pieces().size()).sum();
  }

  /**
   * For each type and kind one way to lie, or none: the longer side down the strip where the grain
   * allows.
   */
  private List<List<Optional<PanelType.Lie>>> lies(Run run) {
    return IntStream.range(0, types.size())
        .mapToObj(
            i ->
                IntStream.range(0, kinds.size())
                    .mapToObj(
                        k ->
                            lies(types.get(i), i, run, k).stream()
                                .filter(lie -> fits(lie, k))
                                .min(Comparator.comparingLong(PanelType.Lie::over)))
                    .toList())
        .toList();
  }

  /** How many are not made of each priority, the first first. */
  int[] unmadeByLevel(Solved<List<StripCut>> solved) {
    TreeMap<Integer, Integer> unmade = new TreeMap<>();
    for (int t = 0; t < types.size(); t++) {
      unmade.merge(types.get(t).priority(), solved.unmade().get(t), Integer::sum);
    }
    return unmade.values().stream().mapToInt(n -> n).toArray();
  }

  /** No cutting of any kind uses stock of less value. */
  long leastValue() {
    return bound().of(demand);
  }

  private StockBound bound() {
    long[] taking = types.stream().mapToLong(t -> t.taking(task.saw(), kinds)).toArray();
    List<long[]> rooms = kinds.stream().map(k -> new long[] {k.room(task.saw())}).toList();
    return new StockBound(taking, rooms, 0, counts(), values());
  }
}
