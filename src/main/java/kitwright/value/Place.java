package kitwright.value;

import java.util.Comparator;

/**
 * A stretch of a ledger file.
 *
 * @param file path from the ledger's root, with forward slashes
 * @param line first line, from 1; 0 where the whole file is meant
 * @param column first column, from 1, in Unicode code points
 * @param endLine last line
 * @param endColumn column just behind the last code point
 */
public record Place(String file, int line, int column, int endLine, int endColumn)
    implements Comparable<Place> {
  private static final Comparator<Place> ORDER =
      Comparator.comparing(Place::file)
          .thenComparingInt(Place::line)
          .thenComparingInt(Place::column)
          .thenComparingInt(Place::endLine)
          .thenComparingInt(Place::endColumn);

  /** The file as a whole, where no line is to blame. */
  public static Place wholeFile(String file) {
    return new Place(file, 0, 0, 0, 0);
  }

  /** Whether the file as a whole is meant. */
  public boolean isWholeFile() {
    return line == 0;
  }

  /** Whether nothing stands there. */
  public boolean isEmpty() {
    return line == endLine && column == endColumn;
  }

  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }

  @Override
  public String toString() {
    return isWholeFile() ? file : file + ":" + line + ":" + column;
  }
}
