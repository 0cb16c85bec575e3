package kitwright.cutting.solve;

import java.util.Comparator;
import java.util.OptionalInt;
import java.util.TreeSet;

/**
 * Best first over how many pieces of each kind are used: where the relaxation uses a broken number
 * of a kind, at most the number below, or at least the number above. Raises the bound, and gives
 * dives a whole number of each kind to aim at.
 */
final class CountTree<L> {
  private static final int TURNS_BETWEEN_DIVES = 16;

  private record Open<T>(long bound, int turn, Node<T> node) {}

  private final Generation<L> generation;
  private final Dive<L> dive;
  private final Incumbent<L> incumbent;
  private final Work work;
  private final TreeSet<Open<L>> open =
      new TreeSet<>(
          Comparator.comparingLong((Open<L> o) -> o.bound()).thenComparingInt(o -> -o.turn()));
  private long settledAt = Long.MAX_VALUE;
  private int turns;

  CountTree(Generation<L> generation, Dive<L> dive, Incumbent<L> incumbent, Work work) {
    this.generation = generation;
    this.dive = dive;
    this.incumbent = incumbent;
    this.work = work;
  }

  /** Grows the tree until every count is whole, the bound is met, or so many steps are spent. */
  void grow(Node<L> root, long mostSteps) {
    add(incumbent.bound(), root);
    while (!open.isEmpty() && !incumbent.isSettled() && work.spent() < mostSteps) {
      incumbent.atLeast(Math.min(open.first().bound(), settledAt));
      if (!split(open.first())) {
        return;
      }
    }
    long rest = open.isEmpty() ? incumbent.limit() : open.first().bound();
    incumbent.atLeast(Math.min(rest, settledAt));
  }

  private void add(long bound, Node<L> node) {
    open.add(new Open<>(bound, turns++, node));
  }

  /** False when the work ran out on the way. */
  private boolean split(Open<L> next) {
    Node<L> node = next.node();
    Relaxed<L> relaxed = generation.relax(node, incumbent.target(node), Care.EXACT);
    if (work.isOver()) {
      return false;
    }
    open.remove(next);
    long bound = Math.max(next.bound(), node.spent + relaxed.bound());
    if (bound >= incumbent.limit()) {
      return true;
    }
    OptionalInt kind = relaxed.brokenKind(node.stock.length, false);
    if (kind.isEmpty() || turns % TURNS_BETWEEN_DIVES == 0) {
      dive.from(node, relaxed);
    }
    if (kind.isEmpty()) {
      settledAt = Math.min(settledAt, bound);
      return true;
    }
    int below = (int) Math.floor(relaxed.counts(node.stock.length)[kind.getAsInt()]);
    add(bound, node.atMost(kind.getAsInt(), below));
    add(bound, node.atLeast(kind.getAsInt(), below + 1));
    return true;
  }
}
