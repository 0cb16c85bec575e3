package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;

/**
 * The objectives in their order: all parts made, then least value of stock. Where not everything
 * can be made, first the most parts of priority 1, of those plans the most of priority 2, and so
 * on; then for the parts chosen the least value.
 */
final class Fulfilment<L> {
  /** Of the work: for making everything, of the rest for choosing, of the rest for each try. */
  private static final int ALL_PERCENT = 5;

  private static final int MOST_PERCENT = 50;
  private static final int CLIMB_PERCENT = 20;

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
    // Where the first plan makes all, only value is left to better; else half is kept for choosing.
    Node<L> first = replayed(demand, firstPlan.apply(demand));
    boolean easy = first.isDone();
    if (easy && work.isForPartsAlone()) {
      return solved(first, 0, demand, true);
    }
    Search<L> everything = tried(demand, List.of(), easy ? 100 : ALL_PERCENT);
    if (everything.best().isDone()) {
      boolean enough = easy || work.isForPartsAlone();
      return solved(
          enough ? everything : tried(demand, everything.best().columns(), 100), demand, true);
    }
    Work part = work.part(MOST_PERCENT);
    Search<L> most = mostParts(part);
    work.spend(part.spent());
    int[] made = demand.clone();
    for (int i = 0; i < made.length; i++) {
      made[i] -= most.best().left[i];
    }
    List<Column<L>> known = most.best().columns();
    if (!most.isProved()) {
      known = climb(made, known);
    }
    return work.isForPartsAlone()
        ? solved(replayed(made, known), 0, made, most.isProved())
        : solved(tried(made, known, 100), made, most.isProved());
  }

  /**
   * Asks for one part more as long as that can be made, the first priority first: a search that
   * knows what it must make finds plans that one which chooses misses.
   *
   * @param made what is made so far; raised in place
   */
  private List<Column<L>> climb(int[] made, List<Column<L>> known) {
    List<Column<L>> columns = known;
    for (int i : byPriority()) {
      while (made[i] < demand[i] && !work.isOver()) {
        made[i]++;
        Search<L> search = tried(made, columns, CLIMB_PERCENT);
        if (!search.best().isDone()) {
          made[i]--;
          break;
        }
        columns = search.best().columns();
      }
    }
    return columns;
  }

  private List<Integer> byPriority() {
    return IntStream.range(0, demand.length)
        .boxed()
        .sorted(Comparator.comparingInt(i -> priority[i]))
        .toList();
  }

  /** Searches with so much of the work that is left. */
  private Search<L> tried(int[] wanted, List<Column<L>> known, int percent) {
    Work part = work.part(percent);
    Search<L> search = leastValue(wanted, known, part);
    work.spend(part.spent());
    return search;
  }

  private Search<L> leastValue(int[] wanted, List<Column<L>> known, Work part) {
    Cover cover = valued(wanted);
    Search<L> search = new Search<>(cover, pricing, part);
    search.consider(Renewal.replay(cover, known));
    search.consider(Renewal.replay(cover, firstPlan.apply(wanted)));
    // A plan that costs more than all the stock leaves something unmade.
    search.aimFor(Cover.ceiling(stock, cost));
    search.run(quickBound.applyAsLong(wanted));
    return search;
  }

  private Node<L> replayed(int[] wanted, List<Column<L>> columns) {
    return Renewal.replay(valued(wanted), columns);
  }

  private Cover valued(int[] wanted) {
    long[] penalty = new long[wanted.length];
    Arrays.fill(penalty, dearerThanAll());
    return new Cover(wanted, stock, cost, penalty);
  }

  /** The stock costs nothing, an unmade part more than all parts of lower priority together. */
  private Search<L> mostParts(Work part) {
    Cover cover = new Cover(demand, stock, new long[stock.length], weights());
    Search<L> search = new Search<>(cover, pricing, part);
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
    return solved(search.best(), search.bound(), wanted, mostParts);
  }

  private Solved<L> solved(Node<L> best, long bound, int[] wanted, boolean mostParts) {
    List<Integer> unmade = new ArrayList<>();
    for (int i = 0; i < demand.length; i++) {
      unmade.add(demand[i] - wanted[i] + best.left[i]);
    }
    return new Solved<>(
        best.columns(),
        unmade,
        best.spent,
        Math.min(best.spent, bound),
        mostParts && best.isDone());
  }
}
