package kitwright.cutting.solve;

import java.util.Arrays;

/**
 * One way to cut one kind of stock.
 *
 * @param <L> where the parts lie; known only to whoever made the column
 */
final class Column<L> {
  final int kind;
  final int[] made;
  final L layout;

  Column(int kind, int[] made, L layout) {
    this.kind = kind;
    this.made = made;
    this.layout = layout;
  }

  /** The same way, counting only what is still wanted. */
  Column<L> clipped(int[] left) {
    int[] fewer = new int[made.length];
    for (int i = 0; i < made.length; i++) {
      fewer[i] = Math.min(made[i], left[i]);
    }
    return new Column<>(kind, fewer, layout);
  }

  boolean makesNothing() {
    return Arrays.stream(made).allMatch(n -> n == 0);
  }

  /** How often in a row it can be used, making more than wanted in the last at most. */
  int times(int[] left, int stock) {
    return Math.max(1, timesExactly(left, stock));
  }

  /** How often in a row it can be used without making more than wanted. */
  int timesExactly(int[] left, int stock) {
    int most = stock;
    for (int i = 0; i < made.length; i++) {
      if (made[i] > 0) {
        most = Math.min(most, left[i] / made[i]);
      }
    }
    return most;
  }

  boolean exceeds(int[] left) {
    for (int i = 0; i < made.length; i++) {
      if (made[i] > left[i]) {
        return true;
      }
    }
    return false;
  }

  boolean isWithin(Column<L> other) {
    if (kind != other.kind) {
      return false;
    }
    for (int i = 0; i < made.length; i++) {
      if (made[i] > other.made[i]) {
        return false;
      }
    }
    return true;
  }

  long worth(long[] each) {
    long sum = 0;
    for (int i = 0; i < made.length; i++) {
      sum += made[i] * each[i];
    }
    return sum;
  }

  /** Tells equal columns from others; the layout does not matter. */
  String key() {
    return kind + Arrays.toString(made);
  }
}
