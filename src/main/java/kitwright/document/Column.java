package kitwright.document;

import java.util.List;
import org.commonmark.ext.gfm.tables.TableCell.Alignment;

/**
 * A column of a table.
 *
 * @param title what stands at its head
 * @param align the side to which its cells lean
 */
public record Column(String title, Alignment align) {
  /** Words lean to the left. */
  public static Column left(String title) {
    return new Column(title, Alignment.LEFT);
  }

  /** Numbers lean to the right. */
  public static Column right(String title) {
    return new Column(title, Alignment.RIGHT);
  }

  /** Marks stand in the middle. */
  public static Column middle(String title) {
    return new Column(title, Alignment.CENTER);
  }

  /** The columns from left to right. */
  public static List<Column> columns(Column... columns) {
    return List.of(columns);
  }
}
