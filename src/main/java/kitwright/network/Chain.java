package kitwright.network;

/**
 * The variance, in working minutes², that gathers along the chain of tasks that decides the end; of
 * several such chains along the one with the greatest.
 */
final class Chain {
  private Chain() {}

  static double variance(Passes passes, Passes.Early early) {
    Network network = passes.network;
    double[] variance = new double[passes.tasks()];
    double greatest = 0;
    for (int i : network.order) {
      double before = 0;
      for (int k = network.before.from[i]; k < network.before.from[i + 1]; k++) {
        int earlier = network.before.to[k];
        if (passes.drives(earlier, i, network.before.lag[k], early)) {
          before = Math.max(before, variance[earlier]);
        }
      }
      variance[i] = before + network.activities().get(i).left().variance();
      if (!passes.done[i] && early.ready[i] == early.end) {
        greatest = Math.max(greatest, variance[i]);
      }
    }
    return greatest;
  }
}
