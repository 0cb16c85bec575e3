package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.Yaml;

/** The table read row by row, against a general-purpose reader of the whole of it. */
class BuiltInMaterialsTest {
  private static final String TEXT = text();

  @Test
  void everyRowOfTheTableIsThereInItsOrder() {
    Map<String, List<Map<String, Object>>> whole = new Yaml().load(TEXT);
    List<String> ids =
        whole.getOrDefault("materials", List.of()).stream()
            .map(row -> String.valueOf(row.get("id")))
            .toList();
    assertThat(BuiltInMaterials.ids()).containsExactlyElementsOf(ids);
    assertThat(BuiltInMaterials.all()).extracting(Material::id).containsExactlyElementsOf(ids);
  }

  @Test
  void aRowIsToldAtItsOwnLine() {
    List<String> lines = TEXT.lines().toList();
    assertThat(BuiltInMaterials.all())
        .allSatisfy(
            material ->
                assertThat(lines.get(material.at().record().line() - 1))
                    .startsWith("  - {id: " + material.id() + ","));
  }

  @Test
  void aRowIsReadOnceAndAnotherNameHasNone() {
    assertThat(BuiltInMaterials.of("teak").orElseThrow())
        .isSameAs(BuiltInMaterials.of("teak").orElseThrow());
    assertThat(BuiltInMaterials.of("driftwood")).isEmpty();
  }

  private static String text() {
    try (InputStream in =
        BuiltInMaterialsTest.class.getResourceAsStream("/kitwright/materials.yaml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new AssertionError(broken);
    }
  }
}
