package kitwright.finding;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kitwright.value.Place;

/**
 * Findings as SARIF, so that forges show them beside the lines.
 *
 * @see "OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0 Plus Errata 01, 28
 *     August 2023"
 */
public final class SarifFindings {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
  private static final String BASE = "LEDGER";

  private SarifFindings() {}

  /**
   * One run. Every rule of {@code rules} is described, whether it fired or not.
   *
   * @param rules the pages of the rules that were asked; a finding of another rule (an unreadable
   *     file, say) is described by its name alone
   */
  public static String render(
      Examination examination, List<RulePage> rules, List<Finding> findings) {
    List<RulePage> described = described(rules, findings);
    return PlainJson.of(json -> document(json, examination, described, findings));
  }

  private static List<RulePage> described(List<RulePage> rules, List<Finding> findings) {
    Map<String, RulePage> byName = new TreeMap<>();
    rules.forEach(rule -> byName.put(rule.name(), rule));
    findings.forEach(f -> byName.putIfAbsent(f.rule(), new RulePage(f.rule(), "", "")));
    return List.copyOf(byName.values());
  }

  private static void document(
      JsonGenerator json, Examination examination, List<RulePage> rules, List<Finding> findings)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("$schema", SCHEMA);
    json.writeStringField("version", "2.1.0");
    json.writeArrayFieldStart("runs");
    json.writeStartObject();
    driver(json, examination, rules);
    json.writeStringField("columnKind", "unicodeCodePoints");
    json.writeObjectFieldStart("originalUriBaseIds");
    json.writeObjectFieldStart(BASE);
    text(json, "description", "The ledger’s root folder.");
    json.writeEndObject();
    json.writeEndObject();
    results(json, rules, findings);
    json.writeEndObject();
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void driver(JsonGenerator json, Examination examination, List<RulePage> rules)
      throws IOException {
    json.writeObjectFieldStart("tool");
    json.writeObjectFieldStart("driver");
    json.writeStringField("name", "Kitwright");
    json.writeStringField("version", examination.version());
    json.writeArrayFieldStart("rules");
    for (RulePage rule : rules) {
      json.writeStartObject();
      json.writeStringField("id", rule.name());
      if (!rule.summary().isEmpty()) {
        text(json, "shortDescription", rule.summary());
      }
      if (!rule.help().isEmpty()) {
        json.writeObjectFieldStart("help");
        json.writeStringField("text", doubled(rule.help()));
        json.writeStringField("markdown", doubled(rule.help()));
        json.writeEndObject();
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndObject();
  }

  private static void results(JsonGenerator json, List<RulePage> rules, List<Finding> findings)
      throws IOException {
    List<String> names = new ArrayList<>();
    rules.forEach(rule -> names.add(rule.name()));
    List<String> prints = Fingerprints.of(findings);
    json.writeArrayFieldStart("results");
    for (int i = 0; i < findings.size(); i++) {
      Finding finding = findings.get(i);
      json.writeStartObject();
      json.writeStringField("ruleId", finding.rule());
      json.writeNumberField("ruleIndex", names.indexOf(finding.rule()));
      json.writeStringField("level", level(finding.severity()));
      text(json, "message", message(finding));
      location(json, finding.at());
      json.writeObjectFieldStart("partialFingerprints");
      json.writeStringField("ruleAndRecords/v1", prints.get(i));
      json.writeEndObject();
      records(json, finding.records());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void location(JsonGenerator json, Place at) throws IOException {
    json.writeArrayFieldStart("locations");
    json.writeStartObject();
    json.writeObjectFieldStart("physicalLocation");
    json.writeObjectFieldStart("artifactLocation");
    json.writeStringField("uri", RelativeUri.of(at.file()));
    json.writeStringField("uriBaseId", BASE);
    json.writeEndObject();
    if (!at.isWholeFile()) {
      json.writeObjectFieldStart("region");
      json.writeNumberField("startLine", at.line());
      json.writeNumberField("startColumn", at.column());
      json.writeNumberField("endLine", at.endLine());
      json.writeNumberField("endColumn", at.endColumn());
      json.writeEndObject();
    }
    json.writeEndObject();
    json.writeEndObject();
    json.writeEndArray();
  }

  private static void records(JsonGenerator json, List<String> records) throws IOException {
    if (!records.isEmpty()) {
      json.writeObjectFieldStart("properties");
      json.writeArrayFieldStart("records");
      for (String record : records) {
        json.writeString(record);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
  }

  private static void text(JsonGenerator json, String field, String text) throws IOException {
    json.writeObjectFieldStart(field);
    json.writeStringField("text", doubled(text.replace("](", "] (")));
    json.writeEndObject();
  }

  /** Section 3.11.5: a literal brace is written twice, else it opens a placeholder. */
  private static String doubled(String text) {
    return text.replace("{", "{{").replace("}", "}}");
  }

  private static String message(Finding finding) {
    return finding.what() + " " + finding.follows() + " To mend it: " + finding.mend();
  }

  private static String level(Severity severity) {
    return switch (severity) {
      case STOP -> "error";
      case WARN -> "warning";
      case NOTE -> "note";
    };
  }
}
