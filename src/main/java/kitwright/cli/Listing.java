package kitwright.cli;

import java.util.ArrayList;
import java.util.List;
import kitwright.value.Visible;

/** Rows of words under headings, in columns as wide as they need to be, for a terminal. */
final class Listing {
  private static final String GAP = "  ";

  private final List<String> headings;
  private final List<Boolean> right = new ArrayList<>();
  private final List<List<String>> rows = new ArrayList<>();

  private Listing(List<String> headings) {
    for (String heading : headings) {
      right.add(heading.startsWith(">"));
    }
    this.headings = headings.stream().map(heading -> heading.replaceFirst("^>", "")).toList();
  }

  /** A list with headings; one that starts with {@code >} stands over numbers, to the right. */
  static Listing of(String... headings) {
    return new Listing(List.of(headings));
  }

  Listing row(String... cells) {
    if (cells.length != headings.size()) {
      throw new IllegalArgumentException(cells.length + " cells under " + headings.size());
    }
    rows.add(List.of(cells).stream().map(Visible::line).toList());
    return this;
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The text, a line a row, with the headings above. */
  String text() {
    StringBuilder out = new StringBuilder();
    int[] widths = widths();
    line(headings, widths, out);
    rows.forEach(row -> line(row, widths, out));
    return out.toString();
  }

  private void line(List<String> cells, int[] widths, StringBuilder out) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      String pad = " ".repeat(widths[i] - length(cells.get(i)));
      line.append(i == 0 ? "" : GAP);
      line.append(right.get(i) ? pad + cells.get(i) : cells.get(i) + pad);
    }
    out.append(line.toString().stripTrailing()).append('\n');
  }

  /** Looked up once: a list of thousands of rows is as quick a row as a short one. */
  private int[] widths() {
    int[] widths = headings.stream().mapToInt(Listing::length).toArray();
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], length(row.get(i)));
      }
    }
    return widths;
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
