package kitwright.cutting.solve;

import java.util.List;

/**
 * What a search came to.
 *
 * @param columns one for each piece of stock used; together they may make more than wanted
 * @param unmade of each type
 * @param mostParts whether nobody can make more, by priority
 */
record Solved<L>(
    List<Column<L>> columns, List<Integer> unmade, long value, long bound, boolean mostParts) {

  long missing() {
    return unmade.stream().mapToLong(n -> n).sum();
  }

  /** The same parts cut otherwise. */
  Solved<L> with(List<Column<L>> others) {
    return new Solved<>(others, unmade, value, bound, mostParts);
  }
}
