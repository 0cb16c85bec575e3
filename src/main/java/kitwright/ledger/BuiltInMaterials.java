package kitwright.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.finding.Findings;
import kitwright.yaml.Recall;
import kitwright.yaml.YamlText;

/**
 * The built-in table of materials, written like a ledger and read like one: a row to a line, each
 * read when first asked for, since a build leans on a few of them.
 */
final class BuiltInMaterials {
  private static final String TABLE = "/kitwright/materials.yaml";
  private static final String ROW = "  - {id: ";
  private static final Map<String, Row> ROWS = rows();

  private BuiltInMaterials() {}

  /** Their ids, in the table's order. */
  static Set<String> ids() {
    return ROWS.keySet();
  }

  static Optional<Material> of(String id) {
    return Optional.ofNullable(ROWS.get(id)).map(Row::material);
  }

  /** All of them, in the table's order. */
  static List<Material> all() {
    return ROWS.values().stream().map(Row::material).toList();
  }

  /** A line of the table, and what was read from it once. */
  private static final class Row {
    private final int number;
    private final String line;
    private Optional<Material> read = Optional.empty();

    Row(int number, String line) {
      this.number = number;
      this.line = line;
    }

    synchronized Material material() {
      if (read.isEmpty()) {
        read = Optional.of(read("materials:" + "\n".repeat(number - 1) + line));
      }
      return read.get();
    }

    private static Material read(String text) {
      Findings faults = new Findings();
      Ledger.Gathering gathering = new Ledger.Gathering();
      Recall recall = new Recall();
      Records records =
          new Records(new Layouts(), Currency.getInstance("EUR"), recall, gathering, faults);
      YamlText.read("built-in materials", text, recall, records::take, faults);
      if (!faults.inOrder().isEmpty()) {
        throw new IllegalStateException("a built-in material is faulty: " + faults.inOrder());
      }
      return gathering.entries().map(Material.class::cast).findFirst().orElseThrow();
    }
  }

  private static Map<String, Row> rows() {
    Map<String, Row> rows = new LinkedHashMap<>();
    int number = 0;
    for (String line : text().split("\n", -1)) {
      number++;
      if (line.startsWith(ROW)) {
        rows.put(line.substring(ROW.length(), line.indexOf(',')), new Row(number, line));
      }
    }
    return Collections.unmodifiableMap(rows);
  }

  private static String text() {
    try (InputStream in = BuiltInMaterials.class.getResourceAsStream(TABLE)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its own " + TABLE);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
