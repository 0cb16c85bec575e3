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

  /** Groups arrow k, from {@code tail[k]} to {@code head[k]}, by its tail; keeps their order. */
  static Arrows groupedByTail(int tasks, int[] tail, int[] head, long[] lags) {
    Arrows grouped = new Arrows(tasks, tail.length);
    int[] slot = slots(tail, grouped.from);
    for (int k = 0; k < tail.length; k++) {
      grouped.to[slot[k]] = head[k];
      grouped.lag[slot[k]] = lags[k];
    }
    return grouped;
  }

  /**
   * The place of each key in stable sorted order, by counting.
   *
   * @param from filled with the place of the first of each key; one entry more than keys
   */
  static int[] slots(int[] keys, int[] from) {
    for (int key : keys) {
      from[key + 1]++;
    }
    for (int i = 1; i < from.length; i++) {
      from[i] += from[i - 1];
    }
    int[] next = from.clone();
    int[] slots = new int[keys.length];
    for (int k = 0; k < keys.length; k++) {
      slots[k] = next[keys[k]]++;
    }
    return slots;
  }
}
