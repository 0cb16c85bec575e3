package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Betters a plan a few pieces at a time: their parts are set free and cut anew from those pieces
 * and all unused stock (large neighbourhood search: Shaw, CP-98, 417-431). The choice of pieces is
 * pseudo-random from a fixed seed, leaning to those that yield least for their cost.
 */
final class Renewal<L> {
  private static final int PIECES = 7;
  private static final int MOST_VAIN = 120;

  /** So far chance may lift a piece over a dearer one. */
  private static final double SPREAD = 0.12;

  private final Cover cover;
  private final Pricing<L> pricing;
  private final Work work;
  private final SplittableRandom random = new SplittableRandom(20260101);

  Renewal(Cover cover, Pricing<L> pricing, Work work) {
    this.cover = cover;
    this.pricing = pricing;
    this.work = work;
  }

  /**
   * The plan bettered as long as that goes on, down to {@code bound} at best. One that costs the
   * same is taken too: it opens ways that the old one did not.
   */
  Node<L> better(Node<L> start, long bound, long mostSteps, List<Column<L>> known) {
    Node<L> plan = start;
    int vain = 0;
    while (vain < MOST_VAIN && plan.total(cover) > bound && work.spent() < mostSteps) {
      List<Column<L>> all = plan.columns();
      if (all.size() < 3) {
        return plan;
      }
      Node<L> next = renewed(plan, all, known);
      vain = next.total(cover) < plan.total(cover) ? 0 : vain + 1;
      plan = next.total(cover) <= plan.total(cover) ? next : plan;
    }
    return plan;
  }

  private Node<L> renewed(Node<L> plan, List<Column<L>> all, List<Column<L>> known) {
    double[] key =
        all.stream().mapToDouble(c -> -dearness(c) * (1 + SPREAD * random.nextDouble())).toArray();
    List<Column<L>> order =
        IntStream.range(0, key.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> key[i]))
            .<Column<L>>map(all::get)
            .toList();
    List<Column<L>> freed = order.subList(0, Math.min(PIECES, (order.size() + 1) / 2));
    List<Column<L>> kept = order.subList(freed.size(), order.size());
    int[] demand = plan.left.clone();
    int[] stock = plan.stock.clone();
    for (Column<L> column : freed) {
      stock[column.kind]++;
      for (int i = 0; i < demand.length; i++) {
        demand[i] += column.made[i];
      }
    }
    Cover part = cover.with(demand, stock);
    Search<L> search = new Search<>(part, pricing, work);
    known.forEach(search::know);
    search.consider(replay(part, freed));
    search.dive();
    List<Column<L>> together = new ArrayList<>(kept);
    together.addAll(search.best().columns());
    return replay(cover, together);
  }

  private double dearness(Column<L> column) {
    return (cover.cost[column.kind] + 1e-3) / (double) column.worth(pricing.size());
  }

  /** A plan cut in that order, leaving out what is no longer wanted. */
  static <T> Node<T> replay(Cover cover, List<Column<T>> columns) {
    Node<T> node = Node.start(cover);
    for (Column<T> column : columns) {
      Column<T> useful = column.clipped(node.left);
      if (!useful.makesNothing()) {
        node = node.use(useful, 1, cover);
      }
    }
    return node;
  }
}
