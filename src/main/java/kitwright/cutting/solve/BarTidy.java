package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * Moves parts between pieces of stock already chosen, two stretches at a time, so that what is left
 * over lies together: first the longest left-over worth keeping, then the most length in them.
 */
final class BarTidy {
  private static final int MOST_STRETCHES = 400;
  private static final int MOST_ROUNDS = 20;

  private final long remnant;
  private final long kerf;
  private final Work work;

  BarTidy(long remnant, long kerf, Work work) {
    this.remnant = remnant;
    this.kerf = kerf;
    this.work = work;
  }

  void improve(BarBench bench) {
    List<BarBench.Stretch> all = bench.stretches();
    if (all.size() > MOST_STRETCHES) {
      return;
    }
    boolean moved = true;
    for (int round = 0; moved && round < MOST_ROUNDS && !work.isOver(); round++) {
      moved = false;
      for (BarBench.Stretch a : all) {
        for (BarBench.Stretch b : all) {
          if (a != b && !a.pieces.isEmpty() && a.room() > 0) {
            moved |= refill(a, b);
          }
        }
      }
    }
  }

  /** Fills {@code a} as full as the parts of both allow, if the others then fit {@code b}. */
  private boolean refill(BarBench.Stretch a, BarBench.Stretch b) {
    List<BarBench.Due> both = new ArrayList<>(a.pieces);
    both.addAll(b.pieces);
    if (!both.stream().allMatch(due -> mayLie(due, a) && mayLie(due, b))) {
      return false;
    }
    Knapsack sack = new Knapsack(a.span.length() + kerf, work);
    for (int i = 0; i < both.size(); i++) {
      long taking = both.get(i).length() + kerf;
      sack.offer(i, taking, taking, 1);
    }
    boolean[] inA = new boolean[both.size()];
    int place = sack.soFar().best(a.span.length() + kerf);
    sack.unpack(sack.soFar().state(place), (i, copies) -> inA[i] = true);
    long roomA = a.span.length() - sack.soFar().worth(place);
    long roomB = a.room() + b.room() - roomA;
    if (roomB + kerf < 0 || !better(roomA, roomB, a.room(), b.room())) {
      return false;
    }
    a.pieces.clear();
    b.pieces.clear();
    for (int i = 0; i < inA.length; i++) {
      (inA[i] ? a : b).pieces.add(both.get(i));
    }
    return true;
  }

  private static boolean mayLie(BarBench.Due due, BarBench.Stretch stretch) {
    return stretch.kind.allows(due.order().part());
  }

  private boolean better(long a, long b, long oldA, long oldB) {
    long longest = Math.max(useful(a), useful(b));
    long before = Math.max(useful(oldA), useful(oldB));
    return longest > before
        || (longest == before && useful(a) + useful(b) > useful(oldA) + useful(oldB));
  }

  private long useful(long room) {
    return room > 0 && room >= remnant ? room : 0;
  }
}
