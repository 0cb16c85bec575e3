package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A piece of a kind of stock, with the types of part cut from each of its clear stretches. The
 * lists grow while a plan is made.
 */
record BarCut(int kind, List<List<Integer>> stretches) {

  static BarCut of(Column<int[][]> column) {
    List<List<Integer>> stretches = new ArrayList<>();
    for (int[] stretch : column.layout) {
      stretches.add(new ArrayList<>(Arrays.stream(stretch).boxed().toList()));
    }
    return new BarCut(column.kind, stretches);
  }

  int[][] layout() {
    return stretches.stream()
        .map(s -> s.stream().mapToInt(t -> t).sorted().toArray())
        .toArray(int[][]::new);
  }
}
