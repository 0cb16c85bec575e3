package kitwright.cutting.solve;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Goes straight down from a node to a plan: settles how many of each kind are used, then uses the
 * columns that the relaxation uses most, relaxes the rest again, and near the end tries to complete
 * the plan by filling.
 */
final class Dive<L> {
  private static final double AT_ONCE = 0.1;
  private static final int FEW_PIECES = 10;

  private final Cover cover;
  private final Generation<L> generation;
  private final Filling<L> filling;
  private final Incumbent<L> incumbent;
  private final Work work;

  Dive(
      Cover cover,
      Generation<L> generation,
      Filling<L> filling,
      Incumbent<L> incumbent,
      Work work) {
    this.cover = cover;
    this.generation = generation;
    this.filling = filling;
    this.incumbent = incumbent;
    this.work = work;
  }

  void from(Node<L> start, Relaxed<L> first) {
    Node<L> node = start;
    Relaxed<L> relaxed = first;
    while (incumbent.isPromising(node, relaxed) && !work.isOver()) {
      OptionalInt broken = relaxed.brokenKind(cover.kinds(), true);
      Node<L> next =
          broken.isPresent() ? counted(node, relaxed, broken.getAsInt()) : rounded(node, relaxed);
      if (next == node) {
        return;
      }
      node = next;
      incumbent.consider(node);
      relaxed = generation.relax(node, incumbent.target(node), Care.ROUGH);
      if (relaxed.pieces() <= FEW_PIECES && !node.isDone()) {
        incumbent.consider(filling.quick(node));
      }
    }
  }

  /** Settles on the nearest whole number of a kind, or the one beyond where that leads nowhere. */
  private Node<L> counted(Node<L> node, Relaxed<L> relaxed, int kind) {
    double count = relaxed.counts(cover.kinds())[kind];
    int below = (int) Math.floor(count);
    Node<L> fewer = node.atMost(kind, below);
    Node<L> more = node.atLeast(kind, below + 1);
    Node<L> nearer = count - below < 0.5 ? fewer : more;
    Relaxed<L> there = generation.relax(nearer, incumbent.target(nearer), Care.ROUGH);
    return incumbent.isPromising(nearer, there) ? nearer : nearer == fewer ? more : fewer;
  }

  /** Uses columns, the most used first: as often as they are whole, or those nearest to whole. */
  private Node<L> rounded(Node<L> start, Relaxed<L> relaxed) {
    Node<L> node = start;
    int columns = relaxed.columns().size();
    List<Integer> order =
        IntStream.range(0, columns)
            .boxed()
            .filter(j -> relaxed.uses(j) > 1e-6)
            .sorted(Comparator.comparingDouble(j -> -relaxed.uses(j)))
            .toList();
    double all = order.stream().mapToDouble(j -> relaxed.uses(j)).sum();
    double done = 0;
    for (int j : order) {
      Column<L> column = relaxed.columns().get(j);
      int whole = Math.max((int) (relaxed.uses(j) + 1e-6), done < all * AT_ONCE ? 1 : 0);
      int times = Math.min(whole, column.timesExactly(node.left, node.stock[column.kind]));
      if (times > 0) {
        node = node.use(column, times, cover);
        done += times;
      }
    }
    return node;
  }
}
