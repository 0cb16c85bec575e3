package kitwright.document;

import java.util.Arrays;
import java.util.List;

/**
 * A row of a table.
 *
 * @param cells from left to right; {@link Inline#together} makes one cell of several parts
 */
public record Row(List<Inline> cells) {
  public Row {
    cells = List.copyOf(cells);
  }

  /** A row of words. */
  public static Row row(String... cells) {
    return new Row(Arrays.stream(cells).map(Inline::text).toList());
  }

  /** A row of one part a cell. */
  public static Row row(Inline... cells) {
    return new Row(List.of(cells));
  }
}
