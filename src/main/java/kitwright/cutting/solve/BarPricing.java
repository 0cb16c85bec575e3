package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Prices lengths. A part takes its length and one kerf out of a clear stretch that is one kerf
 * longer than it is, since the last part of a stretch needs no further cut. A layout holds, for
 * each clear stretch, the types cut from it, longest first.
 */
final class BarPricing implements Pricing<int[][]> {
  private final long[] lengths;
  private final long kerf;
  private final List<long[]> clear;

  /**
   * For parts of these lengths.
   *
   * @param lengths of each type, longest first
   * @param clear for each kind of stock the clear stretches in it
   */
  BarPricing(long[] lengths, long kerf, List<long[]> clear) {
    this.lengths = lengths.clone();
    this.kerf = kerf;
    this.clear = List.copyOf(clear);
  }

  @Override
  public long[] size() {
    return Arrays.stream(lengths).map(l -> l + kerf).toArray();
  }

  @Override
  public Offers<int[][]> offers(long[] worth, Node<int[][]> node, Work work) {
    Knapsack sack = new Knapsack(room(node), work);
    for (int i = 0; i < lengths.length; i++) {
      sack.offer(i, lengths[i] + kerf, worth[i], node.left[i]);
    }
    List<Long> most = new ArrayList<>();
    List<Column<int[][]>> best = new ArrayList<>();
    for (int s = 0; s < clear.size(); s++) {
      long sum = 0;
      int[][] layout = new int[clear.get(s).length][];
      for (int c = 0; c < layout.length; c++) {
        int state = sack.best(sack.soFar(), clear.get(s)[c] + kerf);
        sum += sack.worth(state);
        layout[c] = unpacked(sack, state);
      }
      Column<int[][]> column = column(s, layout);
      if (node.stock[s] > 0 && (column.exceeds(node.left) || node.bans(column))) {
        CarefulFilling careful = new CarefulFilling(size(), worth, rooms(s), node, s);
        careful.run(work);
        column = column(s, careful.layout());
        sum = careful.isComplete() ? careful.most() : sum;
      }
      most.add(sum);
      best.add(column);
    }
    return new Offers<>(sack.isComplete(), most, best);
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

  private long room(Node<int[][]> node) {
    long room = 0;
    for (int s = 0; s < clear.size(); s++) {
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
