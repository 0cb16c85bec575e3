package kitwright.cutting.solve;

import java.util.Optional;

/**
 * Least cost: a first plan by filling, column generation for the bound, diving for better plans,
 * then branching until the bound is met or the work is spent. A branch either cuts one more piece
 * in a given way, or rules that way out.
 */
final class Search<L> {
  private final Cover cover;
  private final Filling<L> filling;
  private final Generation<L> generation;
  private final Work work;
  private Node<L> best;
  private long bound;
  private boolean leftOut;
  private boolean unsure;

  Search(Cover cover, Pricing<L> pricing, Work work) {
    this.cover = cover;
    this.work = work;
    this.filling = new Filling<>(cover, pricing, work);
    this.generation = new Generation<>(cover, pricing, work);
    this.best = Node.start(cover);
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
    Node<L> root = Node.start(cover);
    filling.plans(root).forEach(this::consider);
    if (isProved() || work.isOver()) {
      return;
    }
    Relaxed<L> relaxed = generation.relax(root, best.total(cover));
    bound = Math.max(bound, relaxed.bound());
    if (isProved()) {
      return;
    }
    dive(root, relaxed);
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

  /** Rounds down all it can, else takes the most used column once; again for the rest. */
  private void dive(Node<L> root, Relaxed<L> first) {
    Node<L> node = root;
    Relaxed<L> relaxed = first;
    while (!node.isDone() && !isProved() && !work.isOver()) {
      Node<L> next = rounded(node, relaxed);
      if (next == node) {
        Optional<Column<L>> most = mostUsed(node, relaxed);
        if (most.isEmpty()) {
          break;
        }
        next = node.use(most.get(), 1, cover);
      }
      node = next;
      consider(filling.quick(node));
      relaxed = generation.relax(node, best.total(cover) - node.spent);
      if (node.spent + relaxed.bound() >= best.total(cover)) {
        break;
      }
    }
    consider(node);
  }

  private Node<L> rounded(Node<L> start, Relaxed<L> relaxed) {
    Node<L> node = start;
    for (int j = 0; j < relaxed.columns().size(); j++) {
      Column<L> column = relaxed.columns().get(j);
      int whole = (int) (relaxed.master().uses[j] + 1e-6);
      int times = Math.min(whole, column.timesExactly(node.left, node.stock[column.kind]));
      if (times > 0) {
        node = node.use(column, times, cover);
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
