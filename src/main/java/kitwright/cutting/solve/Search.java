package kitwright.cutting.solve;

/**
 * Least cost: first plans by filling, column generation for the bound, diving for plans near it,
 * renewal for better ones, then branching until the bound is met or the work is spent.
 */
final class Search<L> {
  private static final int FILLING_PERCENT = 10;
  private static final int GLANCE_PERCENT = 10;
  private static final int RENEWAL_PERCENT = 45;
  private static final int COUNTING_PERCENT = 60;

  private final Cover cover;
  private final Pricing<L> pricing;
  private final Work work;
  private final Filling<L> filling;
  private final Generation<L> generation;
  private final Incumbent<L> incumbent;
  private final Dive<L> dive;

  Search(Cover cover, Pricing<L> pricing, Work work) {
    this.cover = cover;
    this.pricing = pricing;
    this.work = work;
    this.filling = new Filling<>(cover, pricing, work);
    this.generation = new Generation<>(cover, pricing, work);
    this.incumbent = new Incumbent<>(cover, generation);
    this.dive = new Dive<>(cover, generation, filling, incumbent, work);
  }

  /** A way of cutting from elsewhere, to draw on. */
  void know(Column<L> column) {
    generation.learn(column);
  }

  /** A plan from elsewhere, to start from. */
  void consider(Node<L> plan) {
    incumbent.consider(plan);
  }

  /** Only plans that cost no more than this are of use. */
  void aimFor(long dearest) {
    incumbent.atMost(dearest);
  }

  /** Searches until proved or out of work. */
  void run(long knownBound) {
    Node<L> root = Node.start(cover);
    incumbent.atLeast(knownBound);
    if (!incumbent.isSettled()) {
      filling.plans(root, work.share(FILLING_PERCENT)).forEach(incumbent::consider);
      dive();
    }
    if (!incumbent.isSettled() && !work.isOver()) {
      PatternTree<L> patterns = new PatternTree<>(cover, generation, incumbent, work);
      patterns.search(root, work.share(GLANCE_PERCENT));
    }
    if (!incumbent.isSettled() && !work.isOver()) {
      Renewal<L> renewal = new Renewal<>(cover, pricing, work);
      long most = work.share(RENEWAL_PERCENT);
      consider(renewal.better(best(), bound(), most, generation.known()));
    }
    if (!incumbent.isSettled() && !work.isOver()) {
      CountTree<L> counts = new CountTree<>(generation, dive, incumbent, work);
      counts.grow(root, work.share(COUNTING_PERCENT));
      new PatternTree<>(cover, generation, incumbent, work).search(root, Long.MAX_VALUE);
    }
  }

  /** Only the bound, and one dive from it. */
  void dive() {
    if (!incumbent.isSettled() && !work.isOver()) {
      Node<L> root = Node.start(cover);
      Relaxed<L> relaxed = generation.relax(root, incumbent.target(root), Care.EXACT);
      incumbent.atLeast(relaxed.bound());
      dive.from(root, relaxed);
    }
  }

  Node<L> best() {
    return incumbent.best();
  }

  long bound() {
    return incumbent.bound();
  }

  boolean isProved() {
    return incumbent.isProved();
  }
}
