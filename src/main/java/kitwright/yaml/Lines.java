package kitwright.yaml;

import java.util.Arrays;
import java.util.Optional;
import kitwright.value.Place;
import org.yaml.snakeyaml.error.Mark;

/**
 * Turns the parser's marks into places. The parser takes U+0085, U+2028 and U+2029 for line ends,
 * which editors do not; for the rare text that holds one, lines are counted here from the mark's
 * index in code points.
 */
final class Lines {
  private final String file;
  private final int skipped;
  private final Optional<int[]> starts;

  private Lines(String file, int skipped, Optional<int[]> starts) {
    this.file = file;
    this.skipped = skipped;
    this.starts = starts;
  }

  /**
   * @param skipped lines of the file before this text begins
   */
  static Lines of(String file, String text, int skipped) {
    boolean odd =
        text.indexOf('\u2028') >= 0 || text.indexOf('\u2029') >= 0 || text.indexOf('\u0085') >= 0;
    return new Lines(file, skipped, odd ? Optional.of(starts(text)) : Optional.empty());
  }

  private static int[] starts(String text) {
    int[] points = text.codePoints().toArray();
    int[] starts = new int[points.length + 1];
    int lines = 1;
    for (int i = 0; i < points.length; i++) {
      boolean pair = points[i] == '\r' && i + 1 < points.length && points[i + 1] == '\n';
      if (points[i] == '\n' || (points[i] == '\r' && !pair)) {
        starts[lines++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, lines);
  }

  Place between(Mark from, Mark to) {
    return new Place(file, line(from), column(from), line(to), column(to));
  }

  Place at(Mark mark) {
    return new Place(file, line(mark), column(mark), line(mark), column(mark) + 1);
  }

  private int line(Mark mark) {
    int line = starts.map(all -> index(all, mark)).orElse(mark.getLine());
    return line + 1 + skipped;
  }

  private int column(Mark mark) {
    return 1 + starts.map(all -> mark.getIndex() - all[index(all, mark)]).orElse(mark.getColumn());
  }

  private static int index(int[] starts, Mark mark) {
    int found = Arrays.binarySearch(starts, mark.getIndex());
    return found >= 0 ? found : -found - 2;
  }
}
