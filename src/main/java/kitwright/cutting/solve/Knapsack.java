package kitwright.cutting.solve;

import java.util.Arrays;

/**
 * All fillings worth knowing, for every room up to a largest one: those that no lighter filling
 * equals in worth. Grown item by item (dynamic programming with dominance), so time and memory
 * follow the number of distinct fillings, not the fineness of the measure.
 */
final class Knapsack {
  private static final int MOST_STATES = 6_000_000;

  private final long room;
  private final Work work;
  private long[] weight = new long[256];
  private long[] worth = new long[256];
  private int[] parent = new int[256];
  private int[] item = new int[256];
  private int[] copies = new int[256];
  private int states = 1;
  private int[] front = {0};
  private boolean complete = true;

  /**
   * Empty.
   *
   * @param room the largest room anybody will ask for
   */
  Knapsack(long room, Work work) {
    this.room = room;
    this.work = work;
    parent[0] = -1;
  }

  /** Lets up to {@code most} copies of an item come in. */
  void offer(int name, long itemWeight, long itemWorth, int most) {
    if (itemWorth <= 0 || itemWeight > room || itemWeight <= 0) {
      return;
    }
    long rest = Math.min(most, room / itemWeight);
    for (int bundle = 1; rest > 0; bundle *= 2) {
      int n = (int) Math.min(bundle, rest);
      rest -= n;
      if (work.isOver() || states > MOST_STATES) {
        complete = false;
        return;
      }
      merge(name, n, itemWeight * n, itemWorth * n);
    }
  }

  /** False when work or memory ran out: the answers are then fillings, but not surely the best. */
  boolean isComplete() {
    return complete;
  }

  /** A mark of the fillings so far, to ask about later whatever is offered after. */
  int[] soFar() {
    return front;
  }

  /** The state of most worth that fits, in the fillings marked. */
  int best(int[] marked, long within) {
    int low = 0;
    int high = marked.length - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (weight[marked[middle]] <= within) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return marked[low];
  }

  long worth(int state) {
    return worth[state];
  }

  /** Calls back with each item's name and number of copies. */
  void unpack(int state, Taken taken) {
    for (int at = state; parent[at] >= 0; at = parent[at]) {
      taken.take(item[at], copies[at]);
    }
  }

  /** Hears of the items in a filling. */
  interface Taken {
    void take(int name, int copies);
  }

  private void merge(int name, int n, long addWeight, long addWorth) {
    int[] old = front;
    int[] merged = new int[old.length * 2];
    int size = 0;
    int a = 0;
    int b = 0;
    long best = -1;
    while (a < old.length || b < old.length) {
      long shifted = b < old.length ? weight[old[b]] + addWeight : Long.MAX_VALUE;
      if (shifted > room) {
        b = old.length;
        shifted = Long.MAX_VALUE;
      }
      if (a < old.length && weight[old[a]] <= shifted) {
        if (worth[old[a]] > best) {
          best = worth[old[a]];
          merged[size++] = old[a];
        }
        a++;
      } else if (b < old.length) {
        if (worth[old[b]] + addWorth > best) {
          best = worth[old[b]] + addWorth;
          merged[size++] = add(shifted, best, old[b], name, n);
        }
        b++;
      }
    }
    work.spend(old.length * 2L);
    front = Arrays.copyOf(merged, size);
  }

  private int add(long stateWeight, long stateWorth, int from, int name, int n) {
    if (states == weight.length) {
      int more = states * 2;
      weight = Arrays.copyOf(weight, more);
      worth = Arrays.copyOf(worth, more);
      parent = Arrays.copyOf(parent, more);
      item = Arrays.copyOf(item, more);
      copies = Arrays.copyOf(copies, more);
    }
    weight[states] = stateWeight;
    worth[states] = stateWorth;
    parent[states] = from;
    item[states] = name;
    copies[states] = n;
    return states++;
  }
}
