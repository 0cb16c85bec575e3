package kitwright.document;

import java.util.ArrayList;
import java.util.List;

/**
 * A row of a table.
 *
 * @param cells from left to right
 */
public record Row(List<Cell> cells) {
  public Row {
    cells = List.copyOf(cells);
  }

  /** A row of typed cells. */
  public static Row row(Cell... cells) {
    return new Row(List.of(cells));
  }

  /** A row of words. */
  public static Row row(String... cells) {
    List<Cell> row = new ArrayList<>();
    for (String cell : cells) {
      row.add(Cell.text(cell));
    }
    return new Row(row);
  }

  /** A row of one part a cell; {@link Inline#together} makes one part of several. */
  public static Row row(Inline... cells) {
    List<Cell> row = new ArrayList<>();
    for (Inline cell : cells) {
      row.add(Cell.of(cell));
    }
    return new Row(row);
  }
}
