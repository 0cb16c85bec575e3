package kitwright.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * The chain of tasks that decides the end, with the variance that it gathers.
 *
 * @param tasks their numbers, in order of work
 * @param variance in working minutes²
 */
record Chain(List<Integer> tasks, double variance) {
  private static final int NOBODY = -1;

  static Chain of(Passes passes, Passes.Early early) {
    Network network = passes.network;
    double[] variance = new double[passes.tasks()];
    int[] driver = new int[passes.tasks()];
    Arrays.fill(driver, NOBODY);
    int last = NOBODY;
    for (int i : network.order) {
      for (int k = network.before.from[i]; k < network.before.from[i + 1]; k++) {
        int earlier = network.before.to[k];
        if (passes.drives(earlier, i, network.before.lag[k], early)
            && isBetter(earlier, driver[i], variance)) {
          driver[i] = earlier;
        }
      }
      variance[i] =
          network.activities().get(i).left().variance()
              + (driver[i] == NOBODY ? 0 : variance[driver[i]]);
    }
    for (int i = 0; i < passes.tasks(); i++) {
      if (!passes.done[i] && early.ready[i] == early.end && isBetter(i, last, variance)) {
        last = i;
      }
    }
    return new Chain(back(last, driver), last == NOBODY ? 0 : variance[last]);
  }

  private static boolean isBetter(int task, int best, double[] variance) {
    return best == NOBODY
        || variance[task] > variance[best]
        || (variance[task] == variance[best] && task < best);
  }

  private static List<Integer> back(int last, int[] driver) {
    List<Integer> tasks = new ArrayList<>();
    for (int at = last; at != NOBODY; at = driver[at]) {
      tasks.add(at);
    }
    Collections.reverse(tasks);
    return List.copyOf(tasks);
  }
}
