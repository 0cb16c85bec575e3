package kitwright.document;

import java.util.List;
import java.util.Locale;

/**
 * A column of a table.
 *
 * @param name by which JSON calls it: kebab-case, and it stays as it is once it was given out
 * @param title what stands at its head
 * @param align the side to which its cells lean
 * @param role what it is for
 */
public record Column(String name, String title, Align align, Role role) {
  /** The side to which cells lean. */
  public enum Align {
    LEFT,
    RIGHT,
    MIDDLE
  }

  /** What a column is for. */
  public enum Role {
    /** It tells of the row. */
    DETAIL,
    /** It names the row: where the table is too wide, it stands alone above the others. */
    HEAD,
    /** Only for other programs: nobody is shown it. */
    DATA
  }

  /** Words lean to the left. */
  public static Column left(String title) {
    return new Column(slug(title), title, Align.LEFT, Role.DETAIL);
  }

  /** Numbers lean to the right. */
  public static Column right(String title) {
    return new Column(slug(title), title, Align.RIGHT, Role.DETAIL);
  }

  /** Marks stand in the middle. */
  public static Column middle(String title) {
    return new Column(slug(title), title, Align.MIDDLE, Role.DETAIL);
  }

  /** The words that name the row. */
  public static Column head(String title) {
    return new Column(slug(title), title, Align.LEFT, Role.HEAD);
  }

  /** A value that only other programs read. */
  public static Column data(String name) {
    return new Column(name, "", Align.LEFT, Role.DATA);
  }

  /** The columns from left to right. */
  public static List<Column> columns(Column... columns) {
    return List.of(columns);
  }

  /** The same by another name than its title gives: where a title may change or says a currency. */
  public Column named(String other) {
    return new Column(other, title, align, role);
  }

  boolean isShown() {
    return role != Role.DATA;
  }

  /** {@code Float, days} as {@code float-days}. */
  static String slug(String title) {
    return title
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^a-z0-9]+", "-")
        .replaceFirst("^-", "")
        .replaceFirst("-$", "");
  }
}
