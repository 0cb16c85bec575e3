package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** What to order from the saw: whole parts, and the pieces of those too long to come whole. */
final class BarOrders {
  private static final int MOST_LENGTHS_TRIED = 4;

  private final BarTask task;
  private final List<BarKind> kinds;
  private final long[] longest;

  BarOrders(BarTask task, List<BarKind> kinds) {
    this.task = task;
    this.kinds = kinds;
    this.longest =
        IntStream.range(0, task.parts().size()).mapToLong(p -> longest(kinds, p)).toArray();
  }

  /** Lists worth trying; they differ only in where jointed parts are parted. */
  Set<List<BarOrder>> worthTrying() {
    Set<List<BarOrder>> all = new LinkedHashSet<>();
    kinds.stream()
        .map(BarKind::longest)
        .distinct()
        .sorted((a, b) -> Long.compare(b, a))
        .limit(MOST_LENGTHS_TRIED)
        .forEach(full -> all.add(orders((p, l) -> BarSplit.full(p, Math.min(full, l)))));
    all.add(orders(BarSplit::even));
    return all;
  }

  /** The longest stretch that a part may come from. */
  static long longest(List<BarKind> kinds, int part) {
    return kinds.stream()
        .filter(kind -> kind.allows(part))
        .mapToLong(BarKind::longest)
        .max()
        .orElse(0);
  }

  private List<BarOrder> orders(BiFunction<BarPart, Long, List<Long>> split) {
    List<BarOrder> orders = new ArrayList<>();
    for (int p = 0; p < task.parts().size(); p++) {
      BarPart part = task.parts().get(p);
      List<Long> pieces =
          part.length() <= longest[p] ? List.of(part.length()) : split.apply(part, longest[p]);
      for (int i = 0; i < pieces.size(); i++) {
        orders.add(
            new BarOrder(p, 1, part.qty(), i + 1, pieces.size(), pieces.get(i), part.priority()));
      }
    }
    return orders;
  }
}
