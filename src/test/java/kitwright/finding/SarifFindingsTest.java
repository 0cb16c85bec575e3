package kitwright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import kitwright.value.Place;
import org.junit.jupiter.api.Test;

/** The schema's source stands in {@code src/test/resources/sarif/README.md}. */
class SarifFindingsTest {
  private static final Examination MARCH =
      new Examination("0.1.0", LocalDate.of(2026, 3, 2), "dunlin");
  private static final RulePage PAGE =
      new RulePage(
          "counted-short-unrecorded",
          "Less was counted than promised and no shortage is recorded",
          "Count again, then record it: `{item: x}`.");
  private static final List<Finding> ALL =
      List.of(Samples.SHORT, Samples.WHOLE, Samples.at("a b/ü#1:%.yaml", 2, 1, 2, 4));

  @Test
  void theSchemaOfTheStandardAcceptsIt() {
    assertThat(faults(SarifFindings.render(MARCH, List.of(PAGE), ALL))).isEmpty();
    assertThat(faults(SarifFindings.render(MARCH, List.of(), List.of()))).isEmpty();
  }

  @Test
  void theSchemaRefusesWhatTheStandardForbids() {
    String good = SarifFindings.render(MARCH, List.of(PAGE), ALL);
    assertThat(faults(good.replace("\"error\"", "\"stop\""))).isNotEmpty();
    assertThat(faults(good.replace("\"startLine\": 8", "\"startLine\": 0"))).isNotEmpty();
    assertThat(faults(good.replace("\"unicodeCodePoints\"", "\"bytes\""))).isNotEmpty();
    assertThat(faults(good.replace("\"message\": {", "\"massage\": {"))).isNotEmpty();
    assertThat(faults(good.replace("\"2.1.0\"", "\"2.0.0\""))).isNotEmpty();
  }

  @Test
  void severitiesBecomeTheLevelsOfTheStandard() {
    JsonNode results = run(ALL).get("results");
    assertThat(results.findValuesAsText("level")).containsExactly("error", "note", "warning");
  }

  @Test
  void placesAreRelativeToTheLedgerAndCountCodePoints() {
    JsonNode run = run(ALL);
    assertThat(run.get("columnKind").asText()).isEqualTo("unicodeCodePoints");
    assertThat(run.get("originalUriBaseIds").fieldNames()).toIterable().containsExactly("LEDGER");
    JsonNode place = run.at("/results/0/locations/0/physicalLocation");
    assertThat(place.get("region").toString())
        .isEqualTo("{\"startLine\":8,\"startColumn\":34,\"endLine\":8,\"endColumn\":38}");
    assertThat(place.at("/artifactLocation/uriBaseId").asText()).isEqualTo("LEDGER");
    assertThat(run.at("/results/1/locations/0/physicalLocation").has("region")).isFalse();
    assertThat(run.at("/results/2/locations/0/physicalLocation/artifactLocation/uri").asText())
        .isEqualTo("a%20b/%C3%BC%231%3A%25.yaml");
  }

  @Test
  void everyResultPointsAtItsRule() {
    JsonNode run = run(ALL);
    JsonNode rules = run.at("/tool/driver/rules");
    assertThat(run.get("results"))
        .allSatisfy(
            result ->
                assertThat(rules.get(result.get("ruleIndex").asInt()).get("id"))
                    .isEqualTo(result.get("ruleId")));
    assertThat(rules.get(0).at("/shortDescription/text").asText()).isEqualTo(PAGE.summary());
  }

  @Test
  void bracesAreDoubledAndNoLinkIsSmuggledIn() {
    // SARIF 2.1.0, sections 3.11.5 (placeholders) and 3.11.6 (embedded links).
    var finding =
        new Finding(
            "r",
            Severity.NOTE,
            Place.wholeFile("f"),
            "{0} [here](https://example.org)",
            "x",
            "y",
            List.of());
    assertThat(run(List.of(finding)).at("/results/0/message/text").asText())
        .startsWith("{{0}} [here] (https://example.org)");
    assertThat(run(ALL).at("/tool/driver/rules/0/help/markdown").asText()).contains("{{item: x}}");
  }

  @Test
  void aFingerprintOutlivesMovedLinesAndNewDays() {
    Finding moved =
        new Finding(
            Samples.SHORT.rule(),
            Severity.STOP,
            new Place("other.yaml", 80, 1, 80, 2),
            "Said otherwise.",
            "",
            "",
            Samples.SHORT.records());
    assertThat(Fingerprints.of(List.of(moved))).isEqualTo(Fingerprints.of(List.of(Samples.SHORT)));
  }

  @Test
  void noTwoFindingsShareAFingerprint() {
    List<String> prints =
        Fingerprints.of(List.of(Samples.SHORT, Samples.SHORT, Samples.WHOLE, Samples.SHORT));
    assertThat(prints).doesNotHaveDuplicates().allMatch(p -> p.matches("[0-9a-f]{64}:[123]"));
  }

  private static JsonNode run(List<Finding> findings) {
    return read(SarifFindings.render(MARCH, List.of(PAGE), findings)).at("/runs/0");
  }

  private static Set<ValidationMessage> faults(String sarif) {
    try (InputStream file =
        Objects.requireNonNull(
            SarifFindingsTest.class.getResourceAsStream("/sarif/sarif-2.1.0-rtm.5.json"))) {
      JsonSchema schema = JsonSchemaFactory.getInstance(VersionFlag.V4).getSchema(file);
      return schema.validate(
          read(sarif), run -> run.getExecutionConfig().setFormatAssertionsEnabled(true));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode read(String json) {
    try {
      return new ObjectMapper().readTree(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
