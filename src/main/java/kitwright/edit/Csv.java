package kitwright.edit;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Comma-separated values as RFC 4180 has them, and as banks and suppliers really send them. */
final class Csv {
  private static final String DELIMITERS = ",;\t|";

  private Csv() {}

  /** A row as written, with its number in the file from 1. */
  record Row(int line, List<String> cells) {}

  /** UTF-8, UTF-16 with its mark, else Windows-1252, which any bytes can be. */
  static String decoded(byte[] bytes) {
    if (bytes.length > 1 && (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == 0xfe) {
      return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16LE);
    }
    if (bytes.length > 1 && (bytes[0] & 0xff) == 0xfe && (bytes[1] & 0xff) == 0xff) {
      return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16BE);
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException older) {
      return new String(bytes, Charset.forName("windows-1252"));
    }
  }

  /** The sign that parts the most cells of the first line, outside of quotes. */
  static char delimiter(String text) {
    char best = ',';
    int most = 0;
    for (int i = 0; i < DELIMITERS.length(); i++) {
      char each = DELIMITERS.charAt(i);
      List<Row> first = rows(text.lines().findFirst().orElse(""), each);
      int cells = first.isEmpty() ? 0 : first.get(0).cells().size();
      if (cells > most) {
        most = cells;
        best = each;
      }
    }
    return best;
  }

  /** The rows; a cell in quotes may hold delimiters, line ends and doubled quotes. */
  static List<Row> rows(String text, char delimiter) {
    List<Row> rows = new ArrayList<>();
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    int line = 1;
    int from = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n') {
        line++;
      }
      if (quoted) {
        if (c != '"') {
          cell.append(c);
        } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
          cell.append('"');
          i++;
        } else {
          quoted = false;
        }
      } else if (c == '"' && cell.toString().isBlank()) {
        quoted = true;
        cell.setLength(0);
      } else if (c == delimiter) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else if (c == '\n') {
        cells.add(stripEnd(cell));
        cell.setLength(0);
        add(rows, from, cells);
        cells = new ArrayList<>();
        from = line;
      } else {
        cell.append(c);
      }
    }
    if (cell.length() > 0 || !cells.isEmpty()) {
      cells.add(stripEnd(cell));
      add(rows, from, cells);
    }
    return rows;
  }

  private static String stripEnd(StringBuilder cell) {
    int length = cell.length();
    return length > 0 && cell.charAt(length - 1) == '\r'
        ? cell.substring(0, length - 1)
        : cell.toString();
  }

  private static void add(List<Row> rows, int line, List<String> cells) {
    if (cells.stream().anyMatch(cell -> !cell.isBlank())) {
      rows.add(new Row(line, List.copyOf(cells)));
    }
  }

  /** One row, ended as RFC 4180 ends it. */
  static String row(List<String> cells) {
    return cells.stream().map(Csv::cell).collect(Collectors.joining(",")) + "\r\n";
  }

  private static String cell(String text) {
    boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? text : "\"" + text.replace("\"", "\"\"") + "\"";
  }

  /**
   * A text that no spreadsheet takes for a formula: an apostrophe stands before what begins one.
   */
  static String harmless(String text) {
    return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
