package kitwright.cutting.solve;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The filling of one piece that is worth most, with no more of a type than is wanted and none of
 * the ways ruled out: depth first through its stretches, bounded by the best worth per length still
 * to come. Gives up after a number of steps; then the answer proves nothing.
 */
final class CarefulFilling {
  private static final long PATIENCE = 200_000;

  private final long[] weight;
  private final long[] worth;
  private final long[] rooms;
  private final long[] roomsAfter;
  private final Node<int[][]> node;
  private final int kind;
  private final int[] order;
  private final int[] left;
  private final int[] made;
  private final int[][] lying;
  private long steps;
  private long best;
  private int[][] bestLying;

  /**
   * For one kind of stock.
   *
   * @param weight what each type takes, kerf included
   * @param rooms of its stretches, each with one kerf added
   */
  CarefulFilling(long[] weight, long[] worth, long[] rooms, Node<int[][]> node, int kind) {
    this.weight = weight;
    this.worth = worth;
    this.rooms = rooms;
    this.node = node;
    this.kind = kind;
    this.left = node.left.clone();
    this.made = new int[weight.length];
    this.lying = new int[rooms.length][weight.length];
    this.bestLying = new int[rooms.length][weight.length];
    this.roomsAfter = new long[rooms.length];
    for (int c = rooms.length - 2; c >= 0; c--) {
      roomsAfter[c] = roomsAfter[c + 1] + rooms[c + 1];
    }
    this.order =
        IntStream.range(0, weight.length)
            .filter(i -> worth[i] > 0 && left[i] > 0)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer i) -> -ratio(i)).thenComparing(i -> i))
            .mapToInt(i -> i)
            .toArray();
  }

  void run(Work work) {
    down(0, 0, rooms[0], 0);
    work.spend(steps);
  }

  /** Whether {@link #most} is surely the most. */
  boolean isComplete() {
    return steps <= PATIENCE;
  }

  long most() {
    return best;
  }

  int[][] layout() {
    return Arrays.stream(bestLying)
        .map(
            stretch ->
                IntStream.range(0, stretch.length)
                    .flatMap(i -> IntStream.generate(() -> i).limit(stretch[i]))
                    .toArray())
        .toArray(int[][]::new);
  }

  private void down(int stretch, int at, long room, long sum) {
    steps++;
    if (!isComplete()) {
      return;
    }
    if (at == order.length) {
      if (stretch + 1 < rooms.length) {
        down(stretch + 1, 0, rooms[stretch + 1], sum);
      } else if (sum > best && !node.bans(new Column<>(kind, made, lying))) {
        best = sum;
        bestLying = Arrays.stream(lying).map(int[]::clone).toArray(int[][]::new);
      }
      return;
    }
    int i = order[at];
    double promise = ratio(i) * room + ratio(order[0]) * roomsAfter[stretch];
    if (sum + promise * (1 + 1e-12) + 1 <= best) {
      return;
    }
    int most = (int) Math.min(left[i], room / weight[i]);
    take(stretch, i, most);
    for (int n = most; n >= 0; n--) {
      down(stretch, at + 1, room - n * weight[i], sum + n * worth[i]);
      take(stretch, i, n > 0 ? -1 : 0);
    }
  }

  private void take(int stretch, int type, int copies) {
    lying[stretch][type] += copies;
    made[type] += copies;
    left[type] -= copies;
  }

  private double ratio(int type) {
    return (double) worth[type] / weight[type];
  }
}
