package kitwright.report;

import java.util.Arrays;
import java.util.Optional;
import kitwright.document.Inline;
import kitwright.document.Row;

/** Rows and cells that documents have in common. */
final class Cells {
  /** What stands where there is nothing to say. */
  static final String NONE = "–";

  private Cells() {}

  /** A last row, of sums. */
  static Row total(String... cells) {
    return new Row(Arrays.stream(cells).map(Cells::strong).toList());
  }

  private static Inline strong(String cell) {
    return cell.isEmpty() ? Inline.text("") : Inline.strong(cell);
  }

  static <T> String maybe(Optional<T> value) {
    return value.map(Object::toString).orElse(NONE);
  }

  /** A name with its id, by which the builder finds the record. */
  static Inline named(String what, String id) {
    return Inline.together(Inline.text(what + " "), Inline.code(id));
  }
}
