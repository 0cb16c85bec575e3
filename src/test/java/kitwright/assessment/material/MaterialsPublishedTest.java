package kitwright.assessment.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.Sample;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.value.Quantity;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each row of the built-in table against the published values that stand in the CSV files. */
class MaterialsPublishedTest {
  private static final Path TABLES = Path.of("src/test/resources/kitwright/materials");
  private static final Map<String, Material> BUILT_IN =
      Sample.ledger("").builtInMaterials().stream()
          .collect(Collectors.toMap(Material::id, Function.identity()));

  /** The factor from the column's unit, as the first lines of the file state it, to SI. */
  private static double si(String column) {
    return switch (column) {
      case "density", "poisson", "fibre-fraction", "scatter" -> 1;
      case "E", "E-across" -> 1e9;
      case "areal-weight" -> 1e-3;
      default -> 1e6;
    };
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }

  private static List<List<String>> table(Path path) throws IOException {
    return Files.readAllLines(path).stream()
        .filter(line -> !line.startsWith("#"))
        .map(MaterialsPublishedTest::cells)
        .toList();
  }

  private static List<Path> tables() throws IOException {
    try (Stream<Path> files = Files.list(TABLES)) {
      return files.sorted().toList();
    }
  }

  @TestFactory
  List<DynamicTest> everyRowAgrees() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path path : tables()) {
      List<List<String>> rows = table(path);
      List<String> head = rows.get(0);
      for (List<String> row : rows.subList(1, rows.size())) {
        tests.add(DynamicTest.dynamicTest(row.get(0), () -> agrees(head, row)));
      }
    }
    assertThat(tests).hasSizeGreaterThan(90);
    return tests;
  }

  private static void agrees(List<String> head, List<String> row) {
    Material material = Optional.ofNullable(BUILT_IN.get(row.get(0))).orElseThrow();
    Set<String> stated = new HashSet<>();
    for (int i = 1; i < head.size(); i++) {
      String column = head.get(i);
      if (column.equals("source")) {
        String start = row.get(i).replaceAll("\\s+", " ");
        assertThat(material.source().orElse("")).startsWith(start);
      } else if (column.equals("unconfirmed")) {
        assertThat(String.join(";", material.unconfirmed())).isEqualTo(row.get(i));
      } else if (!column.equals("read_at") && !row.get(i).isEmpty()) {
        stated.add(column);
        Quantity value =
            Optional.ofNullable(material.properties().get(property(column))).orElseThrow();
        double published = Double.parseDouble(row.get(i)) * si(column);
        assertThat(value.base()).isCloseTo(published, within(1e-9 * published));
      }
    }
    assertThat(material.properties().keySet().stream().map(MaterialProperty::key))
        .as("no value beyond the published ones")
        .containsExactlyInAnyOrderElementsOf(stated);
  }

  private static MaterialProperty property(String key) {
    return Stream.of(MaterialProperty.values())
        .filter(one -> one.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyBuiltInRowStandsInATableAndNamesItsSource() throws IOException {
    Set<String> rows = new HashSet<>();
    for (Path path : tables()) {
      assertThat(Files.readAllLines(path).get(1)).as(path + " names its source").startsWith("# ");
      table(path).stream().skip(1).forEach(row -> rows.add(row.get(0)));
    }
    assertThat(BUILT_IN.keySet()).containsExactlyInAnyOrderElementsOf(rows);
    assertThat(BUILT_IN.values()).allMatch(material -> material.source().isPresent());
  }
}
