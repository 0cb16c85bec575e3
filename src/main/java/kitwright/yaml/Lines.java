package kitwright.yaml;

import kitwright.value.Place;
import org.yaml.snakeyaml.error.Mark;

/**
 * Turns the parser's marks into places.
 *
 * @param skipped lines of the file before the text begins
 */
record Lines(String file, int skipped) {
  Place between(Mark from, Mark to) {
    return new Place(file, line(from), from.getColumn() + 1, line(to), to.getColumn() + 1);
  }

  Node.Scalar scalar(String text, boolean quoted, Mark from, Mark to) {
    return new Node.Scalar(
        text, quoted, file, line(from), from.getColumn() + 1, line(to), to.getColumn() + 1);
  }

  Place at(Mark mark) {
    return new Place(file, line(mark), mark.getColumn() + 1, line(mark), mark.getColumn() + 2);
  }

  private int line(Mark mark) {
    return mark.getLine() + 1 + skipped;
  }
}
