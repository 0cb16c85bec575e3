package kitwright.document;

import java.util.ArrayList;
import java.util.List;
import kitwright.finding.Wrapping;
import kitwright.value.ScreenWidth;

/**
 * A table in columns of a terminal: as wide as its cells are where that fits, else with its columns
 * of words broken into several lines, else each row as lines of label and value.
 */
final class TerminalTable {
  private static final int GAP = 2;
  private static final int NARROWEST = 12;

  /** Rows of so many lines still read across. */
  private static final int SHALLOW = 3;

  /**
   * Rows of so many lines do where most are shallow, so that folding would take half as much room
   * again.
   */
  private static final int DEEPEST = 7;

  private final List<Column> columns;
  private final List<List<String>> rows = new ArrayList<>();
  private final int width;

  private TerminalTable(Table table, int width) {
    Table shown = table.shown();
    this.columns = shown.columns();
    this.width = width;
    for (Row row : shown.rows()) {
      List<String> cells = new ArrayList<>();
      row.cells().forEach(cell -> cells.add(TerminalBlocks.words(List.of(cell.shown()))));
      rows.add(cells);
    }
  }

  /** The lines of a table, none wider than {@code width} unless one word is. */
  static List<String> lines(Table table, int width) {
    return new TerminalTable(table, width).lines();
  }

  private List<String> lines() {
    int[] widths = new int[columns.size()];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = natural(i);
    }
    if (sum(widths) <= width) {
      return inColumns(widths);
    }
    narrow(widths);
    if (sum(widths) > width || deepest(widths) > DEEPEST) {
      return folded();
    }
    List<String> narrowed = inColumns(widths);
    List<String> folded = deepest(widths) > SHALLOW ? folded() : List.of();
    return folded.isEmpty() || 3 * narrowed.size() <= 2 * folded.size() ? narrowed : folded;
  }

  private static int sum(int[] widths) {
    int sum = GAP * (widths.length - 1);
    for (int each : widths) {
      sum += each;
    }
    return sum;
  }

  private int natural(int column) {
    int widest = ScreenWidth.of(columns.get(column).title());
    for (List<String> row : rows) {
      widest = Math.max(widest, ScreenWidth.of(row.get(column)));
    }
    return widest;
  }

  /** Takes from the widest column that can give, one cell at a time, until all fit. */
  private void narrow(int[] widths) {
    int[] least = new int[widths.length];
    for (int i = 0; i < widths.length; i++) {
      least[i] = Math.min(widths[i], least(i));
    }
    for (int over = sum(widths) - width; over > 0; over--) {
      int widest = -1;
      for (int i = 0; i < widths.length; i++) {
        if (widths[i] > least[i] && (widest < 0 || widths[i] > widths[widest])) {
          widest = i;
        }
      }
      if (widest < 0) {
        return;
      }
      widths[widest]--;
    }
  }

  /** Words may break between each other; figures, days and ids stay in one piece. */
  private int least(int column) {
    int longest = longestWord(columns.get(column).title());
    for (List<String> row : rows) {
      String cell = row.get(column);
      longest = Math.max(longest, isWords(column) ? longestWord(cell) : ScreenWidth.of(cell));
    }
    return isWords(column) ? Math.max(longest, NARROWEST) : longest;
  }

  private boolean isWords(int column) {
    return columns.get(column).align() == Column.Align.LEFT;
  }

  private static int longestWord(String text) {
    int longest = 0;
    for (String word : Wrapping.words(text)) {
      longest = Math.max(longest, ScreenWidth.of(word));
    }
    return longest;
  }

  private int deepest(int[] widths) {
    int deepest = 1;
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        deepest = Math.max(deepest, Wrapping.at(widths[i], row.get(i)).size());
      }
    }
    return deepest;
  }

  private List<String> inColumns(int[] widths) {
    List<String> lines = new ArrayList<>();
    List<String> titles = new ArrayList<>();
    columns.forEach(column -> titles.add(column.title()));
    if (titles.stream().anyMatch(title -> !title.isEmpty())) {
      line(titles, widths, lines);
    }
    rows.forEach(row -> line(row, widths, lines));
    return lines;
  }

  private void line(List<String> cells, int[] widths, List<String> lines) {
    List<List<String>> broken = new ArrayList<>();
    int deepest = 0;
    for (int i = 0; i < widths.length; i++) {
      broken.add(Wrapping.at(widths[i], cells.get(i)));
      deepest = Math.max(deepest, broken.get(i).size());
    }
    for (int at = 0; at < deepest; at++) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        String part = at < broken.get(i).size() ? broken.get(i).get(at) : "";
        line.append(i == 0 ? "" : " ".repeat(GAP)).append(padded(part, i, widths[i]));
      }
      lines.add(line.toString().stripTrailing());
    }
  }

  private String padded(String part, int column, int width) {
    int left = Math.max(0, width - ScreenWidth.of(part));
    int before =
        switch (columns.get(column).align()) {
          case LEFT -> 0;
          case RIGHT -> left;
          case MIDDLE -> left / 2;
        };
    return " ".repeat(before) + part + " ".repeat(left - before);
  }

  private List<String> folded() {
    int head = head();
    int label = 0;
    for (int i = 0; i < columns.size(); i++) {
      label = i == head ? label : Math.max(label, ScreenWidth.of(columns.get(i).title()));
    }
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      hang("", 0, row.get(head), lines);
      for (int i = 0; i < columns.size(); i++) {
        if (i != head && !row.get(i).isEmpty() && !row.get(i).equals(Cell.NONE)) {
          detail(columns.get(i).title(), label, row.get(i), lines);
        }
      }
    }
    return lines;
  }

  private int head() {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).role() == Column.Role.HEAD) {
        return i;
      }
    }
    return 0;
  }

  /** Beside its label, or below it where that would leave no room. */
  private void detail(String title, int label, String text, List<String> lines) {
    int start = GAP + label + GAP;
    int room = width - start;
    if (room >= Math.max(NARROWEST, longestWord(text))) {
      List<String> broken = Wrapping.at(room, text);
      for (int i = 0; i < broken.size(); i++) {
        String before = i == 0 ? " ".repeat(GAP) + title : "";
        lines.add(before + " ".repeat(start - ScreenWidth.of(before)) + broken.get(i));
      }
    } else {
      hang(" ".repeat(GAP), GAP, title, lines);
      hang(" ".repeat(2 * GAP), 2 * GAP, text, lines);
    }
  }

  private void hang(String start, int indent, String text, List<String> lines) {
    if (!text.isEmpty()) {
      Wrapping.at(width - indent, text).forEach(part -> lines.add(start + part));
    }
  }
}
