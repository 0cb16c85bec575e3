package kitwright.network;

/** Links as flat arrays, grouped by the task at one end. Tasks are numbered from 0. */
final class Arrows {
  /** Where the arrows of task i begin; one entry more than tasks. */
  final int[] from;

  /** The task at the other end of each arrow. */
  final int[] to;

  /** Working minutes on each arrow. */
  final long[] lag;

  private Arrows(int tasks, int arrows) {
    from = new int[tasks + 1];
    to = new int[arrows];
    lag = new long[arrows];
  }

  /** Groups arrow k, from {@code tail[k]} to {@code head[k]}, by its tail. */
  static Arrows groupedByTail(int tasks, int[] tail, int[] head, long[] lags) {
    Arrows grouped = new Arrows(tasks, tail.length);
    for (int each : tail) {
      grouped.from[each + 1]++;
    }
    for (int i = 0; i < tasks; i++) {
      grouped.from[i + 1] += grouped.from[i];
    }
    int[] next = grouped.from.clone();
    for (int k = 0; k < tail.length; k++) {
      int slot = next[tail[k]]++;
      grouped.to[slot] = head[k];
      grouped.lag[slot] = lags[k];
    }
    return grouped;
  }
}
