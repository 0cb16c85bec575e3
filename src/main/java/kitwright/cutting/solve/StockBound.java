package kitwright.cutting.solve;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Quick lower bounds on the value of stock that lengths need, before any plan is tried. */
final class StockBound {
  private final long[] taking;
  private final List<long[]> clear;
  private final long kerf;
  private final int[] stock;
  private final long[] cost;

  /**
   * For parts that take so much (length and kerf), longest first.
   *
   * @param clear stretches of each kind of stock
   */
  StockBound(long[] taking, List<long[]> clear, long kerf, int[] stock, long[] cost) {
    this.taking = taking;
    this.clear = clear;
    this.kerf = kerf;
    this.stock = stock;
    this.cost = cost;
  }

  static StockBound of(long[] taking, List<BarKind> kinds, long kerf) {
    List<long[]> clear = kinds.stream().map(BarKind::lengths).toList();
    int[] stock = kinds.stream().mapToInt(BarKind::count).toArray();
    long[] cost = kinds.stream().mapToLong(BarKind::value).toArray();
    return new StockBound(taking, clear, kerf, stock, cost);
  }

  /** No plan for this demand costs less. */
  long of(int[] demand) {
    double need = 0;
    for (int i = 0; i < demand.length; i++) {
      need += (double) demand[i] * taking[i];
    }
    return Math.max(byMaterial(need), byCount(demand));
  }

  /** As if the parts were liquid: the stock that is cheapest by length, up to what is needed. */
  long byMaterial(double material) {
    double need = material;
    double total = 0;
    for (int s : kindsBy(Comparator.comparingDouble((Integer s) -> (double) cost[s] / room(s)))) {
      double part = Math.min(1, need / ((double) room(s) * stock[s]));
      total += part * stock[s] * cost[s];
      need -= part * stock[s] * room(s);
      if (need <= 0) {
        break;
      }
    }
    return (long) Math.ceil(total * (1 - 1e-12) - 1e-9);
  }

  /** The bound L2 on the number of stretches, each taken for the cheapest piece. */
  private long byCount(int[] demand) {
    boolean single = IntStream.range(0, stock.length).allMatch(s -> clear.get(s).length == 1);
    if (!single || stock.length == 0) {
      return 0;
    }
    long longest = IntStream.range(0, stock.length).mapToLong(this::room).max().orElse(0);
    long pieces = stretches(demand, longest);
    long total = 0;
    for (int s : kindsBy(Comparator.comparingLong((Integer s) -> cost[s]))) {
      long taken = Math.min(pieces, stock[s]);
      total += taken * cost[s];
      pieces -= taken;
    }
    return total;
  }

  /**
   * Bound L2 of Martello and Toth (Knapsack Problems, 1990, section 8.3): parts longer than half
   * cannot share; what the others cannot fill beside them needs stretches of its own.
   */
  private long stretches(int[] demand, long room) {
    int n = taking.length;
    long[] count = new long[n + 1];
    long[] sum = new long[n + 1];
    for (int i = 0; i < n; i++) {
      count[i + 1] = count[i] + demand[i];
      sum[i + 1] = sum[i] + demand[i] * taking[i];
    }
    int half = first(room / 2 + 1);
    long most = count[half];
    for (int small = half; small < n; small++) {
      int alone = Math.min(half, first(room - taking[small] + 1));
      long large = count[half] - count[alone];
      long beside = large * room - (sum[half] - sum[alone]);
      long rest = sum[small + 1] - sum[half] - beside;
      long more = rest <= 0 ? 0 : (rest + room - 1) / room;
      most = Math.max(most, count[half] + more);
    }
    return most;
  }

  /** How many types take at least this much. */
  private int first(long atLeast) {
    int low = 0;
    int high = taking.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (taking[middle] >= atLeast) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private long room(int kind) {
    long room = 0;
    for (long stretch : clear.get(kind)) {
      room += stretch + kerf;
    }
    return room;
  }

  private List<Integer> kindsBy(Comparator<Integer> order) {
    return IntStream.range(0, stock.length)
        .boxed()
        .filter(s -> stock[s] > 0)
        .sorted(order)
        .toList();
  }
}
