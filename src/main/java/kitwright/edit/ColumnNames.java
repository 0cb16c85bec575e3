package kitwright.edit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import kitwright.finding.Findings;
import kitwright.ledger.Kind;
import kitwright.report.writing.Beside;
import kitwright.yaml.Node;
import kitwright.yaml.Recall;
import kitwright.yaml.YamlText;

/**
 * Which key each column of somebody’s lists holds, by its title: kept in the ledger’s hidden folder
 * {@code .columns}, one small file a kind, so that the next list needs no naming.
 */
public final class ColumnNames {
  private final Path file;
  private final Map<String, String> all = new LinkedHashMap<>();

  private ColumnNames(Path file) {
    this.file = file;
  }

  /** What is kept for a kind. */
  public static ColumnNames of(Path root, Kind kind) {
    ColumnNames names = new ColumnNames(root.resolve(".columns").resolve(kind.key() + ".yaml"));
    try {
      if (Files.isRegularFile(names.file)) {
        YamlText.readOne(
            names.file.toString(),
            Files.readString(names.file),
            0,
            new Recall(),
            names::take,
            new Findings());
      }
    } catch (IOException unreadable) {
      names.all.clear(); // as if nothing were kept: the command line can name them
    }
    return names;
  }

  private void take(Node.Scalar title, Node key) {
    if (key instanceof Node.Scalar scalar) {
      all.put(title.text(), scalar.text());
    }
  }

  /** Keys by title. */
  public Map<String, String> all() {
    return all;
  }

  /** Keeps these as well. */
  public void keep(Map<String, String> more) throws IOException {
    all.putAll(more);
    StringBuilder out = new StringBuilder();
    all.forEach(
        (title, key) ->
            out.append(Scalar.of(title)).append(": ").append(Scalar.of(key)).append('\n'));
    Files.createDirectories(file.getParent());
    Beside.replace(file, out.toString().getBytes(StandardCharsets.UTF_8));
  }
}
