package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Best fit, longest first: each part goes where it leaves least; a new piece is opened only where
 * none open can take it, the cheapest by length that can. Runs in n log n.
 */
final class BarFirstFit {
  private final long[] lengths;
  private final long kerf;
  private final List<long[]> clear;
  private final boolean[][] allowed;
  private final int[] stock;
  private final List<Integer> kinds;
  private final TreeMap<Long, List<int[]>> open = new TreeMap<>();
  private final List<BarCut> cuts = new ArrayList<>();

  /**
   * For these types and kinds.
   *
   * @param allowed for each kind of stock, which types may come from it
   */
  BarFirstFit(
      long[] lengths,
      long kerf,
      List<long[]> clear,
      boolean[][] allowed,
      int[] stock,
      long[] cost) {
    this.lengths = lengths;
    this.kerf = kerf;
    this.clear = clear;
    this.allowed = allowed;
    this.stock = stock.clone();
    this.kinds =
        IntStream.range(0, stock.length)
            .boxed()
            .sorted(
                Comparator.comparingDouble(
                    (Integer s) -> (double) cost[s] / Arrays.stream(clear.get(s)).sum()))
            .toList();
  }

  /** Cuts so many of each type, in this order of types; leaves out what does not fit. */
  List<BarCut> plan(int[] demand, int[] order) {
    for (int type : order) {
      for (int n = 0; n < demand[type]; n++) {
        if (!place(type)) {
          break;
        }
      }
    }
    return cuts;
  }

  private boolean place(int type) {
    long taking = lengths[type] + kerf;
    for (Map.Entry<Long, List<int[]>> fit : open.tailMap(taking).entrySet()) {
      List<int[]> places = fit.getValue();
      for (int i = places.size() - 1; i >= 0; i--) {
        if (allowed[cuts.get(places.get(i)[0]).kind()][type]) {
          put(type, fit.getKey(), places.remove(i), places.isEmpty());
          return true;
        }
      }
    }
    return openOne(type, taking) && place(type);
  }

  private void put(int type, long room, int[] place, boolean wasLast) {
    if (wasLast) {
      open.remove(room);
    }
    cuts.get(place[0]).stretches().get(place[1]).add(type);
    leave(room - lengths[type] - kerf, place);
  }

  private void leave(long room, int[] place) {
    if (room > kerf) {
      open.computeIfAbsent(room, r -> new ArrayList<>()).add(place);
    }
  }

  private boolean openOne(int type, long taking) {
    for (int kind : kinds) {
      long longest = Arrays.stream(clear.get(kind)).max().orElse(0) + kerf;
      if (stock[kind] > 0 && longest >= taking && allowed[kind][type]) {
        stock[kind]--;
        List<List<Integer>> stretches = new ArrayList<>();
        for (int c = 0; c < clear.get(kind).length; c++) {
          stretches.add(new ArrayList<>());
          leave(clear.get(kind)[c] + kerf, new int[] {cuts.size(), c});
        }
        cuts.add(new BarCut(kind, stretches));
        return true;
      }
    }
    return false;
  }
}
