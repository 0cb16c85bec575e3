package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schema accepts what the reader reads, and refuses what it refuses for its form. */
class KeySchemaTest {
  private static final JsonSchemaFactory FACTORY =
      JsonSchemaFactory.getInstance(VersionFlag.V202012);
  private static final JsonNode SCHEMA = YamlAsJson.parsed(KeySchema.text());
  private static final JsonSchema FILE = FACTORY.getSchema(SCHEMA);

  @Test
  void itIsASchemaOfDraft202012() {
    JsonSchema meta = FACTORY.getSchema(SchemaLocation.of(SchemaId.V202012));
    assertThat(meta.validate(SCHEMA)).isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> everyFileOfTheDemonstrationFits() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("ledger"))) {
      return files
          .filter(file -> file.toString().matches(".*\\.(yaml|yml|md)"))
          .filter(file -> !file.toString().matches(".*(README|reports|templates|/\\.).*"))
          .sorted()
          .map(file -> DynamicTest.dynamicTest(file.toString(), () -> fits(file)))
          .toList()
          .stream();
    }
  }

  private static void fits(Path file) throws IOException {
    String text = Files.readString(file);
    assertThat(file.toString().endsWith(".md") ? log(text) : faults(text)).isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> everyExampleFits() {
    Map<String, String> files = new LinkedHashMap<>(Starter.files("Dunlin", LocalDate.EPOCH));
    return files.entrySet().stream()
        .filter(file -> file.getKey().matches("[^.].*\\.(yaml|md)"))
        .filter(file -> !file.getKey().equals("README.md"))
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getKey(),
                    () ->
                        assertThat(
                                file.getKey().endsWith(".md")
                                    ? log(file.getValue())
                                    : faults(file.getValue()))
                            .isEmpty()));
  }

  /** Each is refused by the reader for its form alone, and by the schema too. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "kit: [{id: a, what: bolt}]",
        "kit: [{id: a, what: bolt, qty: 4 each, lenght: 3 m}]",
        "kit: [{id: a, what: [bolt], qty: 4 each}]",
        "kit: [{id: a, what: bolt, qty: -4}]",
        "kit: [{id: a, what: bolt, qty: many}]",
        "kit: [{id: a b, what: bolt, qty: 4}]",
        "kit: [{id: a, what: bolt, qty: 4, size: large}]",
        "kit: [{id: a, what: bolt, qty: 4, lead: 6 kg}]",
        "kit: bolt",
        "kitt: [{id: a}]",
        "tasks: [{id: a, what: glue, takes: [1 d, 2 d]}]",
        "tasks: [{id: a, what: glue, takes: soon}]",
        "tasks: [{id: a, what: glue, takes: 1 d, started: 12.3.2026}]",
        "tasks: [{id: a, what: glue, takes: 1 d, place: outside}]",
        "tasks: [{id: a, what: glue, takes: 1 d, weather: fine}]",
        "shortages: [{id: a, item: b, qty: 1, found: 2026-03-02, cause: lost}]",
        "spending: [{id: a, on: 2026-03-02, line: b, what: c, amount: 4 euro, state: paid}]",
        "spending: [{id: a, on: 2026-03-02, line: b, what: c, amount: '1.312,40 EUR', state:"
            + " paid}]",
        "spending: [{id: a, on: 1026-03-02, line: b, what: c, amount: 4, state: paid}]",
        "spending: [{id: a, on: 2026-03-02, line: b, what: c, amount: 4, in-full: perhaps}]",
        "rates: [{on: 2026-03-02, from: euro, to: NZD, rate: 0.5}]",
        "claims: [{id: a, against: b, remedy: credit, events: [{on: 2026-03-02, what: shouted}]}]",
        "cuts: [{id: a, kerf: 3 mm, parts: [{mark: x, length: 1 m, qty: 1.5}]}]",
        "assessments: [{id: a, method: section, require: {stiffness: more}}]",
        "materials: [{id: a, kind: timber, E: 11.8}]",
      })
  void whatTheReaderRefusesForItsFormTheSchemaRefuses(String yaml) {
    Findings read = new Findings();
    Sample.read(yaml, read);
    assertThat(read.inOrder()).as("what the reader says").isNotEmpty();
    assertThat(faults(yaml)).as("what the schema says").isNotEmpty();
  }

  /**
   * What the schema cannot say, each with the reason: the reader alone refuses these, so that an
   * editor without a red line is no promise.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        // the calendar
        "tasks: [{id: a, what: glue, takes: 1 d, started: 2026-02-30}]",
        // which currencies there are, and how fine their coins
        "spending: [{id: a, on: 2026-03-02, line: b, what: c, amount: 4 XYZ, state: paid}]",
        "spending: [{id: a, on: 2026-03-02, line: b, what: c, amount: 4.123 EUR, state: paid}]",
        // what hangs on another key of the group
        "tasks: [{id: a, what: glue, takes: 1 d, uses: [{qty: 4}]}]",
        "sections: [{id: a, layers: [{strips: [{material: b}]}]}]",
        // an anchor, a tag, nesting without end: gone before JSON is made; a key twice JSON has not
        "kit: [{id: a, what: &x bolt, qty: 4}]",
        "kit: [{id: a, what: !!str bolt, qty: 4}]",
        // a day of more than 24 hours, an angle of more than half a turn
        "build: {name: a, currency: EUR, started: 2026-01-05, week: {hours: 25}}",
        "materials: [{id: a, kind: cloth, angles: [270]}]",
      })
  void whatOnlyTheReaderCanRefuse(String yaml) {
    Findings read = new Findings();
    Sample.read(yaml, read);
    assertThat(read.inOrder()).extracting(Finding::rule).as("what the reader says").isNotEmpty();
    assertThat(faults(yaml)).as("what the schema says").isEmpty();
  }

  /** What looks odd and is read all the same. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "kit:",
        "kit: {id: 7, what: 12, qty: 012}",
        "kit: [{id: yes, what: true, qty: .5 kg, crate:, lead: ~}]",
        "tasks: [{id: a, what: glue, takes: 1, after: b, uses: [], tools: c}]",
        "parties: [{id: a, name: b, role: designer, may-sign: structural}]",
        "shortages: [{id: a, item: b, qty: 1, found: 2026-03-02, cause: damaged, evidence: x.jpg}]",
        "spending: [{id: a, on: 2026-03-02, line: b, what: c, amount: 4, state: paid, in-full:"
            + " yes}]",
      })
  void whatTheReaderReadsTheSchemaAccepts(String yaml) {
    Findings read = new Findings();
    Sample.read(yaml, read);
    assertThat(read.inOrder()).as("what the reader says").isEmpty();
    assertThat(faults(yaml)).as("what the schema says").isEmpty();
  }

  private static Set<ValidationMessage> faults(String yaml) {
    return FILE.validate(YamlAsJson.of(yaml));
  }

  /** A log day’s keys are checked by their own definition. */
  private static Set<ValidationMessage> log(String markdown) {
    ObjectNode only = SCHEMA.deepCopy();
    only.remove(List.of("properties", "additionalProperties", "type"));
    only.put("$ref", "#/$defs/log");
    return FACTORY.getSchema(only).validate(YamlAsJson.frontMatter(markdown));
  }
}
