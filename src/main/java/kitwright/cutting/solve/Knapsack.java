package kitwright.cutting.solve;

import java.util.Arrays;

/**
 * All fillings worth knowing, for every room up to a largest one: those that no lighter filling
 * equals in worth. Grown item by item (dynamic programming with dominance), so time and memory
 * follow the number of distinct fillings, not the fineness of the measure.
 */
final class Knapsack {
  private static final int MOST_STATES = 6_000_000;

  /** The fillings after some items, lightest first; each names a state to unpack. */
  static final class Front {
    private final long[] weight;
    private final long[] worth;
    private final int[] state;
    private int size;

    private Front(int room) {
      weight = new long[room];
      worth = new long[room];
      state = new int[room];
    }

    private void add(long addWeight, long addWorth, int addState) {
      if (size > 0 && weight[size - 1] == addWeight) {
        size--;
      }
      weight[size] = addWeight;
      worth[size] = addWorth;
      state[size++] = addState;
    }

    /** The place of the filling of most worth that fits; -1 where none does. */
    int best(long within) {
      int at = Arrays.binarySearch(weight, 0, size, within);
      return at >= 0 ? at : -at - 2;
    }

    long worth(int place) {
      return place < 0 ? 0 : worth[place];
    }

    int state(int place) {
      return place < 0 ? 0 : state[place];
    }
  }

  private final long room;
  private final Work work;
  private int[] parent = new int[256];
  private int[] item = new int[256];
  private int[] copies = new int[256];
  private int states = 1;
  private Front front = new Front(1);
  private boolean complete = true;

  /**
   * Empty.
   *
   * @param room the largest room anybody will ask for
   */
  Knapsack(long room, Work work) {
    this.room = room;
    this.work = work;
    front.add(0, 0, 0);
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

  /**
   * Forgets fillings that cannot come to anything: those whose worth, with the rest of the room
   * filled at {@code perWeight} at most, stays below what is asked.
   *
   * @param asked the least of (worth asked − room × perWeight) over all rooms
   */
  void forget(double perWeight, double asked) {
    Front kept = new Front(front.size);
    double least = asked - Math.abs(asked) * 1e-12 - 1;
    for (int i = 0; i < front.size; i++) {
      if (front.worth[i] - perWeight * front.weight[i] > least) {
        kept.add(front.weight[i], front.worth[i], front.state[i]);
      }
    }
    work.spend(front.size);
    front = kept;
  }

  /** False when work or memory ran out: the answers are then fillings, but not surely the best. */
  boolean isComplete() {
    return complete;
  }

  /** The fillings so far; it stays as it is whatever is offered later. */
  Front soFar() {
    return front;
  }

  /** Calls back with each item's name and number of copies. */
  void unpack(int state, Taken taken) {
    for (int at = state; at > 0; at = parent[at]) {
      taken.take(item[at], copies[at]);
    }
  }

  /** Hears of the items in a filling. */
  interface Taken {
    void take(int name, int copies);
  }

  private void merge(int name, int n, long addWeight, long addWorth) {
    Front old = front;
    Front merged = new Front(old.size * 2);
    int a = 0;
    int b = 0;
    long best = -1;
    while (a < old.size || b < old.size) {
      long shifted = b < old.size ? old.weight[b] + addWeight : Long.MAX_VALUE;
      if (shifted > room) {
        b = old.size;
        shifted = Long.MAX_VALUE;
      }
      if (a < old.size && old.weight[a] <= shifted) {
        if (old.worth[a] > best) {
          best = old.worth[a];
          merged.add(old.weight[a], best, old.state[a]);
        }
        a++;
      } else if (b < old.size) {
        if (old.worth[b] + addWorth > best) {
          best = old.worth[b] + addWorth;
          merged.add(shifted, best, added(old.state[b], name, n));
        }
        b++;
      }
    }
    work.spend(old.size * 2L);
    front = merged;
  }

  private int added(int from, int name, int n) {
    if (states == parent.length) {
      parent = Arrays.copyOf(parent, states * 2);
      item = Arrays.copyOf(item, states * 2);
      copies = Arrays.copyOf(copies, states * 2);
    }
    parent[states] = from;
    item[states] = name;
    copies[states] = n;
    return states++;
  }
}
