package kitwright.cutting.solve;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Least cost: a first plan by filling, column generation for the bound, diving for better plans,
 * then branching until the bound is met or the work is spent. A branch either cuts one more piece
 * in a given way, or rules that way out.
 */
final class Search<L> {
  private static final int FILLING_PERCENT = 10;
  private static final int RENEWAL_PERCENT = 60;
  private static final double ROUNDED_AT_ONCE = 0.1;

  private final Cover cover;
  private final Filling<L> filling;
  private final Generation<L> generation;
  private final Pricing<L> pricing;
  private final Work work;
  private Node<L> best;
  private long bound;
  private boolean leftOut;
  private boolean unsure;

  Search(Cover cover, Pricing<L> pricing, Work work) {
    this.cover = cover;
    this.pricing = pricing;
    this.work = work;
    this.filling = new Filling<>(cover, pricing, work);
    this.generation = new Generation<>(cover, pricing, work);
    this.best = Node.start(cover);
  }

  /** A way of cutting from elsewhere, to draw on. */
  void know(Column<L> column) {
    generation.learn(column);
  }

  /** A plan from elsewhere, to start from. */
  void consider(Node<L> plan) {
    plan.columns().forEach(generation::learn);
    if (plan.total(cover) < best.total(cover)) {
      best = plan;
    }
  }

  /** Searches until proved or out of work. */
  void run(long knownBound) {
    bound = Math.max(bound, cover.roundUp(knownBound));
    if (isProved()) {
      return;
    }
    long forFilling = work.share(FILLING_PERCENT);
    filling.plans(Node.start(cover), forFilling).forEach(this::consider);
    dive();
    if (!isProved() && !work.isOver()) {
      long forRenewal = work.share(RENEWAL_PERCENT);
      Renewal<L> renewal = new Renewal<>(cover, pricing, work);
      consider(renewal.better(best, bound, forRenewal, generation.known()));
      branch();
    }
  }

  private void branch() {
    Node<L> root = Node.start(cover);
    for (int leave = 1; !isProved() && !work.isOver(); leave *= 4) {
      leftOut = false;
      unsure = false;
      branch(root, leave);
      if (!leftOut && !work.isOver()) {
        bound = unsure ? bound : best.total(cover);
        return;
      }
    }
  }

  Node<L> best() {
    return best;
  }

  long bound() {
    return Math.min(bound, best.total(cover));
  }

  boolean isProved() {
    return best.total(cover) <= bound;
  }

  /** Finds the bound, then a plan near it: rounds down all it can, or cuts the most used. */
  void dive() {
    Node<L> node = Node.start(cover);
    while (!node.isDone() && !isProved() && !work.isOver()) {
      Relaxed<L> relaxed = generation.relax(node, best.total(cover) - node.spent);
      if (node.spent == 0) {
        bound = Math.max(bound, relaxed.bound());
      }
      if (node.spent + relaxed.bound() >= best.total(cover)) {
        break;
      }
      Node<L> next = rounded(node, relaxed);
      if (next == node) {
        break;
      }
      node = next;
      consider(filling.quick(node));
    }
    consider(node);
  }

  /** Uses columns, the most used first: as often as they are whole, or those nearest to whole. */
  private Node<L> rounded(Node<L> start, Relaxed<L> relaxed) {
    Node<L> node = start;
    double[] uses = relaxed.master().uses;
    List<Integer> order =
        IntStream.range(0, uses.length)
            .boxed()
            .filter(j -> uses[j] > 1e-6)
            .sorted(Comparator.comparingDouble(j -> -uses[j]))
            .toList();
    double all = order.stream().mapToDouble(j -> uses[j]).sum();
    double done = 0;
    for (int j : order) {
      Column<L> column = relaxed.columns().get(j);
      int whole = Math.max((int) (uses[j] + 1e-6), done < all * ROUNDED_AT_ONCE ? 1 : 0);
      int times = Math.min(whole, column.timesExactly(node.left, node.stock[column.kind]));
      if (times > 0) {
        node = node.use(column, times, cover);
        done += times;
      }
    }
    return node;
  }

  private Optional<Column<L>> mostUsed(Node<L> node, Relaxed<L> relaxed) {
    int most = -1;
    double uses = 1e-9;
    for (int j = 0; j < relaxed.columns().size(); j++) {
      Column<L> column = relaxed.columns().get(j);
      if (relaxed.master().uses[j] > uses + 1e-9 && node.stock[column.kind] > 0) {
        most = j;
        uses = relaxed.master().uses[j];
      }
    }
    return most < 0 ? Optional.empty() : Optional.of(relaxed.columns().get(most));
  }

  /** Depth first with at most so many departures from the relaxation's advice. */
  private void branch(Node<L> start, int departures) {
    Node<L> node = start;
    for (int left = departures; !isProved() && !work.isOver(); left--) {
      consider(node);
      Relaxed<L> relaxed = generation.relax(node, best.total(cover) - node.spent);
      if (node.spent + relaxed.bound() >= best.total(cover)) {
        return;
      }
      Optional<Column<L>> column = mostUsed(node, relaxed);
      if (column.isEmpty()) {
        unsure = true; // pricing cannot see past what is ruled out here
        return;
      }
      branch(node.use(column.get(), 1, cover), left);
      if (left == 0) {
        leftOut = true;
        return;
      }
      node = node.ban(column.get());
    }
  }
}
