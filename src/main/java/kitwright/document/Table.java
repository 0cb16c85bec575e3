package kitwright.document;

import java.util.ArrayList;
import java.util.List;

/**
 * A table.
 *
 * @param title what it shows, in a few words; may be empty
 * @param columns at least one that is shown, each of a name of its own
 * @param rows each with a cell for every column; may be empty
 */
public record Table(String title, List<Column> columns, List<Row> rows) implements Block {
  public Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    if (columns.stream().noneMatch(Column::isShown)) {
      throw new IllegalArgumentException("a table has at least one column");
    }
    for (Row row : rows) {
      if (row.cells().size() != columns.size()) {
        throw new IllegalArgumentException(
            "a row of " + row.cells().size() + " cells under " + columns.size() + " columns");
      }
    }
  }

  @Override
  public <R> R match(Block.Cases<R> cases) {
    return cases.table(this);
  }

  /** The same without what only other programs read. */
  Table shown() {
    if (columns.stream().allMatch(Column::isShown)) {
      return this;
    }
    List<Row> seen = new ArrayList<>();
    for (Row row : rows) {
      List<Cell> cells = new ArrayList<>();
      for (int i = 0; i < columns.size(); i++) {
        if (columns.get(i).isShown()) {
          cells.add(row.cells().get(i));
        }
      }
      seen.add(new Row(cells));
    }
    return new Table(title, columns.stream().filter(Column::isShown).toList(), seen);
  }
}
