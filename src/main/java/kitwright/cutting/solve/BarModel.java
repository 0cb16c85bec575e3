package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** A task in numbers: types of length, kinds of stock, and who ordered what. */
final class BarModel {
  /**
   * With more types than this the linear programs would outgrow memory: first fit alone answers.
   */
  private static final int MOST_TYPES = 600;

  private static final int MOST_TO_PLACE_SINGLY = 20_000;

  private record Type(long length, int priority, List<Integer> barred) {}

  private final long kerf;
  private final List<BarKind> kinds;
  private final List<Type> types;
  private final List<List<BarOrder>> orders;
  private final int[] demand;

  BarModel(BarTask task, List<BarKind> kinds, List<BarOrder> wanted) {
    this.kerf = task.kerf();
    this.kinds = kinds;
    Comparator<Type> longestFirst =
        Comparator.comparingLong((Type t) -> -t.length())
            .thenComparingInt(Type::priority)
            .thenComparing(t -> t.barred().toString());
    TreeMap<Type, List<BarOrder>> byType = new TreeMap<>(longestFirst);
    for (BarOrder order : wanted) {
      Type type = new Type(order.length(), order.priority(), barred(order.part()));
      byType.computeIfAbsent(type, t -> new ArrayList<>()).add(order);
    }
    this.types = List.copyOf(byType.keySet());
    this.orders = List.copyOf(byType.values());
    this.demand = orders.stream().mapToInt(l -> l.stream().mapToInt(BarOrder::qty).sum()).toArray();
  }

  /** Kinds of stock that a part may not come from. */
  private List<Integer> barred(int part) {
    return IntStream.range(0, kinds.size())
        .filter(k -> !kinds.get(k).allows(part))
        .boxed()
        .toList();
  }

  /** For each kind of stock, which types may come from it. */
  private boolean[][] allowed() {
    boolean[][] allowed = new boolean[kinds.size()][types.size()];
    for (boolean[] row : allowed) {
      Arrays.fill(row, true);
    }
    for (int t = 0; t < types.size(); t++) {
      for (int kind : types.get(t).barred()) {
        allowed[kind][t] = false;
      }
    }
    return allowed;
  }

  int[] demand() {
    return demand.clone();
  }

  List<BarOrder> orders(int type) {
    return orders.get(type);
  }

  /** Searches for the best plan; with very many types first fit has to do. */
  BarSolution solve(Work work) {
    if (types.size() > MOST_TYPES) {
      return firstFitAlone();
    }
    BarPricing pricing = new BarPricing(lengths(), kerf, clear(), allowed());
    Solved<int[][]> solved =
        new Fulfilment<>(
                demand,
                types.stream().mapToInt(Type::priority).toArray(),
                counts(),
                values(),
                pricing,
                bound()::of,
                wanted -> firstColumns(wanted, pricing),
                work)
            .solve();
    List<BarCut> cuts = solved.columns().stream().map(BarCut::of).toList();
    return orFirstFit(new BarSolution(cuts, solved.unmade(), solved.bound(), solved.mostParts()));
  }

  /** With very many parts the search may have ended before it had placed all. */
  private BarSolution orFirstFit(BarSolution searched) {
    if (searched.missing() == 0 || pieces(demand) <= MOST_TO_PLACE_SINGLY) {
      return searched;
    }
    BarSolution fitted = firstFitAlone();
    return fitted.missing() < searched.missing() ? fitted : searched;
  }

  private static long pieces(int[] demand) {
    return Arrays.stream(demand).asLongStream().sum();
  }

  private List<Column<int[][]>> firstColumns(int[] wanted, BarPricing pricing) {
    if (pieces(wanted) > MOST_TO_PLACE_SINGLY) {
      return List.of();
    }
    return firstFit(wanted).stream().map(c -> pricing.column(c.kind(), c.layout())).toList();
  }

  BarSolution firstFitAlone() {
    List<BarCut> cuts = firstFit(demand);
    int[] left = demand.clone();
    cuts.forEach(cut -> cut.stretches().forEach(s -> s.forEach(type -> left[type]--)));
    boolean all = Arrays.stream(left).allMatch(n -> n == 0);
    long bound = all ? bound().of(demand) : 0;
    return new BarSolution(cuts, Arrays.stream(left).boxed().toList(), bound, all);
  }

  /** Longest first; where that leaves parts over, by priority first. */
  private List<BarCut> firstFit(int[] wanted) {
    int[] longestFirst = IntStream.range(0, types.size()).toArray();
    List<BarCut> cuts = freshFirstFit().plan(wanted, longestFirst);
    long placed = cuts.stream().flatMap(c -> c.stretches().stream()).mapToLong(List::size).sum();
    if (placed == pieces(wanted)) {
      return cuts;
    }
    int[] byPriority =
        IntStream.range(0, types.size())
            .boxed()
            .sorted(Comparator.comparingInt(t -> types.get(t).priority()))
            .mapToInt(t -> t)
            .toArray();
    return freshFirstFit().plan(wanted, byPriority);
  }

  private BarFirstFit freshFirstFit() {
    return new BarFirstFit(lengths(), kerf, clear(), allowed(), counts(), values());
  }

  private StockBound bound() {
    return StockBound.of(Arrays.stream(lengths()).map(l -> l + kerf).toArray(), kinds, kerf);
  }

  private long[] lengths() {
    return types.stream().mapToLong(Type::length).toArray();
  }

  private List<long[]> clear() {
    return kinds.stream().map(BarKind::lengths).toList();
  }

  private int[] counts() {
    long all = pieces(demand);
    return kinds.stream().mapToInt(k -> (int) Math.min(k.count(), all)).toArray();
  }

  private long[] values() {
    return kinds.stream().mapToLong(BarKind::value).toArray();
  }
}
