package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Prices lengths. A part takes its length and one kerf out of a clear stretch that is one kerf
 * longer than it is, since the last part of a stretch needs no further cut. A layout holds, for
 * each clear stretch, the types cut from it, longest first.
 */
final class BarPricing implements Pricing<int[][]> {
  private static final long ROUGH_STEPS = 1000;
  private static final long FINE_STEPS = 8000;

  private final long[] lengths;
  private final long kerf;
  private final List<long[]> clear;
  private final boolean[][] allowed;

  /** Kinds of stock from which the same types may come, priced together. */
  private final List<int[]> alike;

  /**
   * For parts of these lengths.
   *
   * @param lengths of each type, longest first
   * @param clear for each kind of stock the clear stretches in it
   * @param allowed for each kind of stock, which types may come from it
   */
  BarPricing(long[] lengths, long kerf, List<long[]> clear, boolean[][] allowed) {
    this.lengths = lengths.clone();
    this.kerf = kerf;
    this.clear = List.copyOf(clear);
    this.allowed = allowed;
    Map<String, List<Integer>> groups = new LinkedHashMap<>();
    for (int s = 0; s < clear.size(); s++) {
      groups.computeIfAbsent(Arrays.toString(allowed[s]), k -> new ArrayList<>()).add(s);
    }
    this.alike = groups.values().stream().map(g -> g.stream().mapToInt(s -> s).toArray()).toList();
  }

  @Override
  public long[] size() {
    return Arrays.stream(lengths).map(l -> l + kerf).toArray();
  }

  @Override
  public Offers<int[][]> offers(long[] worth, long[] floor, Node<int[][]> node, Work work) {
    Long[] most = new Long[clear.size()];
    List<Column<int[][]>> best = new ArrayList<>();
    boolean complete = true;
    for (int[] kinds : alike) {
      long[] own = own(worth, kinds);
      Knapsack sack = filled(own, floor, node, work, 1, kinds);
      for (int s : kinds) {
        offer(s, sack, own, floor[s], node, work, most, best);
      }
      complete &= sack.isComplete();
    }
    return new Offers<>(complete, List.of(most), best);
  }

  private void offer(
      int s,
      Knapsack sack,
      long[] worth,
      long floor,
      Node<int[][]> node,
      Work work,
      Long[] most,
      List<Column<int[][]>> best) {
    Column<int[][]> column = column(s, layout(sack, s, 1));
    long sum = column.worth(worth);
    boolean asked = node.stock[s] > 0 && sum > floor;
    if (asked && (column.exceeds(node.left) || node.bans(column))) {
      CarefulFilling careful = new CarefulFilling(size(), worth, rooms(s), node, s);
      careful.run(work);
      column = column(s, careful.layout());
      sum = careful.isComplete() ? careful.most() : sum;
    }
    most[s] = Math.max(sum, floor);
    if (asked && sum > floor) {
      best.add(column);
    }
  }

  /** What may not come from these kinds is worth nothing there. */
  private long[] own(long[] worth, int[] kinds) {
    long[] own = worth.clone();
    for (int i = 0; i < own.length; i++) {
      own[i] = allowed[kinds[0]][i] ? own[i] : 0;
    }
    return own;
  }

  /** As if lengths came in coarse steps, rounded up. */
  @Override
  public Optional<List<Column<int[][]>>> rough(
      long[] worth, long[] floor, Node<int[][]> node, Care care, Work work) {
    long room = room(node, IntStream.range(0, clear.size()).toArray());
    if (room / ROUGH_STEPS < 3) {
      return Optional.empty();
    }
    List<Column<int[][]>> found = rough(worth, floor, node, work, room / ROUGH_STEPS);
    boolean again = found.isEmpty() && care == Care.EXACT && room / FINE_STEPS >= 3;
    return Optional.of(again ? rough(worth, floor, node, work, room / FINE_STEPS) : found);
  }

  private List<Column<int[][]>> rough(
      long[] worth, long[] floor, Node<int[][]> node, Work work, long step) {
    List<Column<int[][]>> found = new ArrayList<>();
    for (int[] kinds : alike) {
      long[] own = own(worth, kinds);
      Knapsack sack = filled(own, floor, node, work, step, kinds);
      IntStream.of(kinds)
          .filter(s -> node.stock[s] > 0)
          .mapToObj(s -> column(s, layout(sack, s, step)))
          .filter(column -> column.worth(own) > floor[column.kind])
          .filter(column -> !column.exceeds(node.left) && !node.bans(column))
          .forEach(found::add);
    }
    return found;
  }

  private int[][] layout(Knapsack sack, int kind, long step) {
    return Arrays.stream(rooms(kind))
        .mapToObj(room -> unpacked(sack, sack.soFar().state(sack.soFar().best(room / step))))
        .toArray(int[][]::new);
  }

  /** All fillings of interest, the types best worth their length first. */
  private Knapsack filled(
      long[] worth, long[] floor, Node<int[][]> node, Work work, long step, int[] kinds) {
    Knapsack sack = new Knapsack(room(node, kinds) / step, work);
    List<Integer> order =
        IntStream.range(0, lengths.length)
            .boxed()
            .filter(i -> worth[i] > 0 && node.left[i] > 0)
            .sorted(Comparator.comparingDouble((Integer i) -> -perLength(worth, i)))
            .toList();
    double best = order.isEmpty() ? 0 : perLength(worth, order.get(0));
    for (int i : order) {
      double perLength = perLength(worth, i);
      sack.forget(perLength * step, asked(perLength, best, floor, node, kinds));
      long steps = (lengths[i] + kerf + step - 1) / step;
      sack.offer(i, steps, worth[i], node.left[i]);
    }
    return sack;
  }

  /** The least of (floor − room × worth per length) over all stretches that there are. */
  private double asked(
      double perLength, double best, long[] floor, Node<int[][]> node, int[] kinds) {
    double least = Double.MAX_VALUE;
    for (int s : kinds) {
      if (node.stock[s] > 0) {
        double whole = Arrays.stream(rooms(s)).sum();
        for (long room : rooms(s)) {
          least = Math.min(least, floor[s] - (whole - room) * best - room * perLength);
        }
      }
    }
    return least;
  }

  private double perLength(long[] worth, int type) {
    return (double) worth[type] / (lengths[type] + kerf);
  }

  private long[] rooms(int kind) {
    return Arrays.stream(clear.get(kind)).map(l -> l + kerf).toArray();
  }

  /** A column from what lies in each stretch. */
  Column<int[][]> column(int kind, int[][] layout) {
    int[] made = new int[lengths.length];
    for (int[] stretch : layout) {
      for (int type : stretch) {
        made[type]++;
      }
    }
    return new Column<>(kind, made, layout);
  }

  private long room(Node<int[][]> node, int[] kinds) {
    long room = 0;
    for (int s : kinds) {
      if (node.stock[s] > 0) {
        room = Math.max(room, Arrays.stream(clear.get(s)).max().orElse(0));
      }
    }
    return room + kerf;
  }

  private static int[] unpacked(Knapsack sack, int state) {
    List<Integer> types = new ArrayList<>();
    sack.unpack(
        state,
        (type, copies) -> {
          for (int n = 0; n < copies; n++) {
            types.add(type);
          }
        });
    return types.stream().mapToInt(t -> t).sorted().toArray();
  }
}
