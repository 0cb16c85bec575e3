package kitwright.network;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.NullMarked;

/** A published table: comment lines with the source, one heading line, rows by column name. */
@NullMarked
final class Table {
  private Table() {}

  static List<Map<String, String>> read(String name) {
    try (InputStream in = Objects.requireNonNull(Table.class.getResourceAsStream(name), name)) {
      List<String> lines =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> !line.startsWith("#"))
              .toList();
      List<String> heading = cells(lines.get(0));
      return lines.stream().skip(1).map(line -> row(heading, cells(line))).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> cells(String line) {
    return Arrays.asList(line.split(",", -1));
  }

  private static Map<String, String> row(List<String> heading, List<String> cells) {
    Map<String, String> row = new HashMap<>();
    for (int i = 0; i < heading.size(); i++) {
      row.put(heading.get(i), cells.get(i));
    }
    return row;
  }
}
