package kitwright.cutting.solve;

import java.util.Optional;

/**
 * Depth first over ways of cutting: one more piece cut in a given way, or that way ruled out. Goes
 * through in rounds that allow more and more departures from the relaxation's advice (limited
 * discrepancy search: Harvey and Ginsberg, IJCAI-95, 607-613).
 */
final class PatternTree<L> {
  private final Cover cover;
  private final Generation<L> generation;
  private final Incumbent<L> incumbent;
  private final Work work;
  private long mostSteps;
  private boolean leftOut;
  private boolean unsure;

  PatternTree(Cover cover, Generation<L> generation, Incumbent<L> incumbent, Work work) {
    this.cover = cover;
    this.generation = generation;
    this.incumbent = incumbent;
    this.work = work;
  }

  /** Searches until the best plan is proved or so many steps are spent. */
  void search(Node<L> root, long steps) {
    mostSteps = steps;
    for (int departures = 1; !isOver(); departures *= 4) {
      leftOut = false;
      unsure = false;
      branch(root, departures);
      if (!leftOut && !unsure && !isOver()) {
        incumbent.atLeast(incumbent.limit());
      }
      if (!leftOut) {
        return;
      }
    }
  }

  private boolean isOver() {
    return incumbent.isSettled() || work.isOver() || work.spent() >= mostSteps;
  }

  private void branch(Node<L> start, int departures) {
    Node<L> node = start;
    for (int left = departures; !isOver(); left--) {
      incumbent.consider(node);
      Relaxed<L> relaxed = generation.relax(node, incumbent.target(node), Care.EXACT);
      if (!incumbent.mayBeat(node, relaxed)) {
        return;
      }
      Optional<Column<L>> column = relaxed.mostUsed();
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
