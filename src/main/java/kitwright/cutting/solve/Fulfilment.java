package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/**
 * The objectives in their order: all parts made, then least value of stock. Where not everything
 * can be made, first the most parts of priority 1, of those plans the most of priority 2, and so
 * on; then for the parts chosen the least value.
 */
final class Fulfilment<L> {
  private final int[] demand;
  private final int[] priority;
  private final int[] stock;
  private final long[] cost;
  private final Pricing<L> pricing;
  private final ToLongFunction<int[]> quickBound;
  private final Function<int[], List<Column<L>>> firstPlan;
  private final Work work;

  /**
   * The task, with two helps.
   *
   * @param quickBound a lower bound on the value for a demand
   * @param firstPlan a plan for a demand made without search; may be empty
   */
  Fulfilment(
      int[] demand,
      int[] priority,
      int[] stock,
      long[] cost,
      Pricing<L> pricing,
      ToLongFunction<int[]> quickBound,
      Function<int[], List<Column<L>>> firstPlan,
      Work work) {
    this.demand = demand;
    this.priority = priority;
    this.stock = stock;
    this.cost = cost;
    this.pricing = pricing;
    this.quickBound = quickBound;
    this.firstPlan = firstPlan;
    this.work = work;
  }

  Solved<L> solve() {
    Search<L> everything = leastValue(demand, List.of());
    if (everything.best().isDone()) {
      return solved(everything, demand, true);
    }
    Search<L> most = mostParts();
    int[] made = demand.clone();
    for (int i = 0; i < made.length; i++) {
      made[i] -= most.best().left[i];
    }
    return solved(leastValue(made, most.best().columns()), made, most.isProved());
  }

  private Search<L> leastValue(int[] wanted, List<Column<L>> known) {
    long dear = dearerThanAll();
    long[] penalty = new long[wanted.length];
    Arrays.fill(penalty, dear);
    Cover cover = new Cover(wanted, stock, cost, penalty);
    Search<L> search = new Search<>(cover, pricing, work);
    search.consider(Renewal.replay(cover, known));
    search.consider(Renewal.replay(cover, firstPlan.apply(wanted)));
    search.run(quickBound.applyAsLong(wanted));
    return search;
  }

  /** The stock costs nothing, an unmade part more than all parts of lower priority together. */
  private Search<L> mostParts() {
    Cover cover = new Cover(demand, stock, new long[stock.length], weights());
    Search<L> search = new Search<>(cover, pricing, work);
    search.consider(Renewal.replay(cover, firstPlan.apply(demand)));
    search.run(0);
    return search;
  }

  private long[] weights() {
    long[] weight = new long[demand.length];
    long next = 1;
    for (int level : Arrays.stream(priority).distinct().boxed().sorted((a, b) -> b - a).toList()) {
      long all = 0;
      for (int i = 0; i < demand.length; i++) {
        if (priority[i] == level) {
          weight[i] = next;
          all += demand[i] * next;
        }
      }
      // Beyond this the levels still come in their order, but many low ones may outweigh a high
      // one.
      next = Math.min(next + all, 1_000_000_000L);
    }
    return weight;
  }

  private long dearerThanAll() {
    Cover plain = new Cover(demand, stock, cost, new long[demand.length]);
    return plain.roundUp(Cover.ceiling(stock, cost) + 1);
  }

  private Solved<L> solved(Search<L> search, int[] wanted, boolean mostParts) {
    List<Integer> unmade = new ArrayList<>();
    for (int i = 0; i < demand.length; i++) {
      unmade.add(demand[i] - wanted[i] + search.best().left[i]);
    }
    boolean all = mostParts && search.best().isDone();
    Node<L> best = search.best();
    return new Solved<>(
        best.columns(), unmade, best.spent, Math.min(best.spent, search.bound()), all);
  }
}
