package kitwright.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Map;
import kitwright.finding.Findings;
import kitwright.yaml.Recall;
import kitwright.yaml.YamlText;

/**
 * The built-in table of materials, written like a ledger and read like one; read when something
 * first asks for a material that the ledger lacks.
 */
final class BuiltInMaterials {
  private static final String TABLE = "/kitwright/materials.yaml";
  private static final Map<String, Material> BY_ID = read();

  private BuiltInMaterials() {}

  /** By their ids, in the table's order. */
  static Map<String, Material> byId() {
    return BY_ID;
  }

  private static Map<String, Material> read() {
    Findings faults = new Findings();
    Ledger.Gathering gathering = new Ledger.Gathering();
    Recall recall = new Recall();
    Records records =
        new Records(new Layouts(), Currency.getInstance("EUR"), recall, gathering, faults);
    YamlText.read("built-in materials", text(), recall, records::take, faults);
    if (!faults.inOrder().isEmpty()) {
      throw new IllegalStateException("the built-in materials are faulty: " + faults.inOrder());
    }
    Map<String, Material> byId = new LinkedHashMap<>();
    gathering
        .entries()
        .map(Material.class::cast)
        .forEach(material -> byId.put(material.id(), material));
    return Collections.unmodifiableMap(byId);
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
