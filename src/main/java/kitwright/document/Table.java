package kitwright.document;

import java.util.List;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.Node;

/**
 * A table.
 *
 * @param columns at least one
 * @param rows each with a cell for every column; may be empty
 */
public record Table(List<Column> columns, List<Row> rows) implements Block {
  public Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    if (columns.isEmpty()) {
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
  public List<Node> nodes() {
    var table = new TableBlock();
    var head = new TableHead();
    head.appendChild(line(columns.stream().map(c -> Inline.text(c.title())).toList(), Kind.HEAD));
    table.appendChild(head);
    if (!rows.isEmpty()) {
      var body = new TableBody();
      rows.forEach(row -> body.appendChild(line(row.cells(), Kind.BODY)));
      table.appendChild(body);
    }
    return List.of(table);
  }

  private enum Kind {
    HEAD,
    BODY
  }

  private Node line(List<Inline> cells, Kind kind) {
    var line = new TableRow();
    for (int i = 0; i < cells.size(); i++) {
      var cell = new TableCell();
      cell.setHeader(kind == Kind.HEAD);
      cell.setAlignment(columns.get(i).align());
      Flow.append(cell, List.of(cells.get(i)), Flow.Breaks.AS_STROKES);
      line.appendChild(cell);
    }
    return line;
  }
}
