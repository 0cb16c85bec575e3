package kitwright.cutting.solve;

/** The best plan so far and the best bound so far. */
final class Incumbent<L> {
  private final Cover cover;
  private final Generation<L> generation;
  private Node<L> best;
  private long bound;
  private long ceiling = Long.MAX_VALUE - 1;

  Incumbent(Cover cover, Generation<L> generation) {
    this.cover = cover;
    this.generation = generation;
    this.best = Node.start(cover);
  }

  /** Keeps a plan where it is better, and its ways of cutting in any case. */
  void consider(Node<L> plan) {
    plan.columns().forEach(generation::learn);
    if (plan.total(cover) < best.total(cover)) {
      best = plan;
    }
  }

  /** Dearer plans are of no use, so the search may end where there are none but those. */
  void atMost(long dearest) {
    ceiling = dearest;
  }

  /** No plan costs less than this. */
  void atLeast(long proved) {
    bound = Math.max(bound, Math.min(cover.roundUp(proved), best.total(cover)));
  }

  Node<L> best() {
    return best;
  }

  long total() {
    return best.total(cover);
  }

  long bound() {
    return bound;
  }

  boolean isProved() {
    return best.total(cover) <= bound;
  }

  /** Whether nothing better can be found, or nothing that is of use. */
  boolean isSettled() {
    return isProved() || bound > ceiling;
  }

  /** From here on a total is of no interest. */
  long limit() {
    return Math.min(total(), ceiling + 1);
  }

  /** Whether a node can still lead to something better. */
  boolean mayBeat(Node<L> node, Relaxed<L> relaxed) {
    return node.spent + relaxed.bound() < limit();
  }

  /** Whether a node is likely to lead to something better; proves nothing. */
  boolean isPromising(Node<L> node, Relaxed<L> relaxed) {
    return mayBeat(node, relaxed) && node.spent + relaxed.master().total() < total() - 1e-6;
  }

  /** How low the rest of a node must come to be of interest. */
  long target(Node<L> node) {
    return limit() - node.spent;
  }
}
