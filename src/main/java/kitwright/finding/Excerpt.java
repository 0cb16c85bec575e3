package kitwright.finding;

import java.util.ArrayList;
import java.util.List;
import kitwright.value.Place;
import kitwright.value.Visible;

/**
 * The source lines of a place with the guilty stretch between marks. Every code point is counted as
 * one column of the terminal, which is too few for East Asian characters.
 */
final class Excerpt {
  private static final int LINES = 3;

  /**
   * The lines of one file, cut into code points. The last one stays cut, since one long line may
   * hold thousands of faults.
   */
  static final class Source {
    private final List<String> lines;
    private int number;
    private int[] points = {};

    Source(List<String> lines) {
      this.lines = lines;
    }

    int size() {
      return lines.size();
    }

    private int[] line(int wanted) {
      if (wanted != number) {
        number = wanted;
        points = lines.get(wanted - 1).codePoints().toArray();
      }
      return points;
    }
  }

  private final Place at;
  private final Source source;
  private final Marks marks;
  private final Ink ink;
  private final int width;

  private Excerpt(Place at, Source source, Marks marks, Ink ink, int width) {
    this.at = at;
    this.source = source;
    this.marks = marks;
    this.ink = ink;
    this.width = width;
  }

  /**
   * The quoted lines, none wider than {@code width}; at most three, then a line that says how many
   * more. Empty where the place is a whole file or lies outside {@code source}.
   */
  static List<String> of(Place at, Source source, Marks marks, Ink ink, int width) {
    if (at.isWholeFile() || at.line() > source.size()) {
      return List.of();
    }
    return new Excerpt(at, source, marks, ink, width).lines();
  }

  private List<String> lines() {
    int last = Math.max(at.line(), Math.min(lastLine(), source.size()));
    int shown = Math.min(last, at.line() + LINES - 1);
    var out = new ArrayList<String>();
    for (int number = at.line(); number <= shown; number++) {
      out.add(line(number, number == last));
    }
    if (shown < last) {
      int more = last - shown;
      out.add(marks.cut() + " and " + more + (more == 1 ? " more line" : " more lines"));
    }
    return out;
  }

  /** A stretch that ends before the first column of a line ends with the line above. */
  private int lastLine() {
    return at.endColumn() <= 1 && at.endLine() > at.line() ? at.endLine() - 1 : at.endLine();
  }

  private String line(int number, boolean last) {
    int[] points = source.line(number);
    int from = number == at.line() ? clamp(at.column() - 1, 0, points.length) : indent(points);
    int to =
        number == at.endLine() ? clamp(at.endColumn() - 1, from, points.length) : points.length;
    String open = number == at.line() ? marks.open() : "";
    String close = last ? marks.close() : "";
    int room = width - open.length() - close.length();
    String guilty = middle(guilty(points, from, to), room);
    int left = room - length(guilty);
    String all = visible(points, to, Math.min(points.length, to + width + 1));
    String after = head(all, left / 2);
    int start = Math.max(Math.min(from, indent(points)), from - width - 1);
    String before = tail(visible(points, start, from), left - length(after));
    after = head(all, left - length(before));
    return before + open + ink.guilty(guilty) + close + after;
  }

  private static int indent(int[] points) {
    int blank = 0;
    while (blank < points.length && points[blank] == ' ') {
      blank++;
    }
    return blank;
  }

  /** Of a long stretch no more than can be shown of its start and of its end. */
  private String guilty(int[] points, int from, int to) {
    return to - from <= 2 * width
        ? visible(points, from, to)
        : visible(points, from, from + width) + visible(points, to - width, to);
  }

  private static String visible(int[] points, int from, int to) {
    return Visible.line(new String(points, from, to - from));
  }

  private String head(String text, int room) {
    return length(text) <= room ? text : first(text, room - marks.cut().length()) + cutIn(room);
  }

  private String tail(String text, int room) {
    return length(text) <= room ? text : cutIn(room) + last(text, room - marks.cut().length());
  }

  private String middle(String text, int room) {
    if (length(text) <= room) {
      return text;
    }
    int kept = room - marks.cut().length();
    return first(text, kept - kept / 3) + marks.cut() + last(text, kept / 3);
  }

  private String cutIn(int room) {
    return room >= marks.cut().length() ? marks.cut() : "";
  }

  private static String first(String text, int count) {
    return count <= 0 ? "" : text.substring(0, text.offsetByCodePoints(0, count));
  }

  private static String last(String text, int count) {
    return count <= 0 ? "" : text.substring(text.offsetByCodePoints(text.length(), -count));
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  private static int clamp(int value, int low, int high) {
    return Math.max(low, Math.min(value, high));
  }
}
