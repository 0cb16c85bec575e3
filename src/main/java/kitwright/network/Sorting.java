package kitwright.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Brings tasks into an order in which every link points forward. Where a loop stands in the way it
 * is noted and opened at the link into its smallest id, so that the rest can still be computed.
 *
 * @see "Kahn, Topological sorting of large networks, Communications of the ACM 5 (1962) 558-562
 *     (from memory)"
 */
final class Sorting {
  private final int tasks;
  private final int[] tail;
  private final int[] head;
  private final Arrows after;
  private final Arrows before;
  private final int[] waitsFor;
  private final int[] order;
  private final boolean[] placed;
  private int count;
  private final boolean[] opened;
  private final List<int[]> loops = new ArrayList<>();

  /** Sorts at once; time grows with tasks and links, and once more with tasks for each loop. */
  Sorting(int tasks, int[] tail, int[] head) {
    this.tasks = tasks;
    this.tail = tail;
    this.head = head;
    long[] own = new long[tail.length];
    Arrays.setAll(own, k -> k);
    // The "lag" of these arrows carries the link's own number.
    after = Arrows.groupedByTail(tasks, tail, head, own);
    before = Arrows.groupedByTail(tasks, head, tail, own);
    waitsFor = new int[tasks];
    order = new int[tasks];
    placed = new boolean[tasks];
    opened = new boolean[tail.length];
    sort();
  }

  int[] order() {
    return order;
  }

  /** The links left out because they closed a loop. */
  boolean[] opened() {
    return opened;
  }

  /** Each loop in the order of work, from its smallest task on. */
  List<int[]> loops() {
    return loops;
  }

  private void sort() {
    for (int each : head) {
      waitsFor[each]++;
    }
    for (int i = 0; i < tasks; i++) {
      if (waitsFor[i] == 0) {
        place(i);
      }
    }
    int done = 0;
    int stuck = 0;
    while (done < tasks) {
      if (done == count) {
        while (placed[stuck]) {
          stuck++;
        }
        open(stuck);
      } else {
        release(order[done++]);
      }
    }
  }

  private void place(int task) {
    placed[task] = true;
    order[count++] = task;
  }

  private void release(int task) {
    for (int k = after.from[task]; k < after.from[task + 1]; k++) {
      if (!opened[(int) after.lag[k]] && --waitsFor[after.to[k]] == 0) {
        place(after.to[k]);
      }
    }
  }

  private void open(int stuck) {
    int[] links = loopOfLinks(stuck);
    int[] loop = Arrays.stream(links).map(link -> tail[link]).toArray();
    int least = Arrays.stream(loop).min().orElseThrow();
    int turn = 0;
    while (loop[turn] != least) {
      turn++;
    }
    int[] turned = new int[loop.length];
    for (int i = 0; i < loop.length; i++) {
      turned[i] = loop[(turn + i) % loop.length];
    }
    loops.add(turned);
    int closing = links[(turn + loop.length - 1) % loop.length];
    opened[closing] = true;
    if (--waitsFor[least] == 0) {
      place(least);
    }
  }

  /** Walks back from a task that cannot be placed until a task comes up again. */
  private int[] loopOfLinks(int stuck) {
    int[] cameBy = new int[tasks];
    Arrays.fill(cameBy, -1);
    int at = stuck;
    while (cameBy[at] < 0) {
      cameBy[at] = waitingLink(at);
      at = tail[cameBy[at]];
    }
    List<Integer> links = new ArrayList<>();
    int first = at;
    do {
      links.add(0, cameBy[at]);
      at = tail[cameBy[at]];
    } while (at != first);
    return links.stream().mapToInt(Integer::intValue).toArray();
  }

  private int waitingLink(int task) {
    for (int k = before.from[task]; k < before.from[task + 1]; k++) {
      if (!placed[before.to[k]] && !opened[(int) before.lag[k]]) {
        return (int) before.lag[k];
      }
    }
    throw new IllegalStateException("a task that waits for nobody was not placed");
  }
}
