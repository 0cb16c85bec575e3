package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** What to order from the saw: whole parts, and the pieces of those too long to come whole. */
final class BarOrders {
  private static final int MOST_LENGTHS_TRIED = 4;

  private final BarTask task;
  private final List<BarKind> kinds;
  private final long longest;

  BarOrders(BarTask task, List<BarKind> kinds) {
    this.task = task;
    this.kinds = kinds;
    this.longest = kinds.stream().mapToLong(BarKind::longest).max().orElse(0);
  }

  /** Lists worth trying; they differ only in where jointed parts are parted. */
  Set<List<BarOrder>> worthTrying() {
    Set<List<BarOrder>> all = new LinkedHashSet<>();
    kinds.stream()
        .map(BarKind::longest)
        .distinct()
        .sorted((a, b) -> Long.compare(b, a))
        .limit(MOST_LENGTHS_TRIED)
        .forEach(full -> all.add(orders(part -> BarSplit.full(part, full))));
    all.add(orders(part -> BarSplit.even(part, longest)));
    return all;
  }

  private List<BarOrder> orders(Function<BarPart, List<Long>> split) {
    List<BarOrder> orders = new ArrayList<>();
    for (int p = 0; p < task.parts().size(); p++) {
      BarPart part = task.parts().get(p);
      List<Long> pieces = part.length() <= longest ? List.of(part.length()) : split.apply(part);
      for (int i = 0; i < pieces.size(); i++) {
        orders.add(
            new BarOrder(p, 1, part.qty(), i + 1, pieces.size(), pieces.get(i), part.priority()));
      }
    }
    return orders;
  }
}
