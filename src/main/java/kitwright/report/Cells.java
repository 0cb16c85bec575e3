package kitwright.report;

import java.util.Arrays;
import java.util.Optional;
import kitwright.document.Cell;
import kitwright.document.Inline;
import kitwright.document.Row;

/** Rows and cells that documents have in common. */
final class Cells {
  /** What stands where there is nothing to say. */
  static final String NONE = Cell.NONE;

  private Cells() {}

  /** A last row, of sums. */
  static Row total(String... cells) {
    return new Row(Arrays.stream(cells).map(cell -> Cell.text(cell).strong()).toList());
  }

  static <T> String maybe(Optional<T> value) {
    return value.map(Object::toString).orElse(NONE);
  }

  /** A name with its id, by which the builder finds the record. */
  static Inline named(String what, String id) {
    return Inline.together(Inline.text(what + " "), Inline.code(id));
  }
}
