package kitwright.finding;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import kitwright.value.Place;

/**
 * Findings as JSON for other programs:
 *
 * <pre>{@code
 * {
 *   "kitwright": "0.1.0",
 *   "ledger": ".",
 *   "today": "2026-03-02",
 *   "counts": {"stop": 1, "warn": 0, "note": 0},
 *   "findings": [
 *     {"rule": …, "severity": "stop", "file": …, "line": 3, "column": 10, "endLine": 3,
 *      "endColumn": 14, "message": …, "why": …, "mend": …, "records": ["kit plank"]}
 *   ]
 * }
 * }</pre>
 *
 * Lines and columns count from 1, columns in Unicode code points; the four are absent where the
 * whole file is meant.
 */
public final class JsonFindings {
  private JsonFindings() {}

  /** The document, in the order of {@code findings}. */
  public static String render(Examination examination, List<Finding> findings) {
    return PlainJson.of(json -> document(json, examination, findings));
  }

  private static void document(JsonGenerator json, Examination examination, List<Finding> findings)
      throws IOException {
    Tally tally = Tally.of(findings);
    json.writeStartObject();
    json.writeStringField("kitwright", examination.version());
    json.writeStringField("ledger", examination.ledger());
    json.writeStringField("today", examination.today().toString());
    json.writeObjectFieldStart("counts");
    json.writeNumberField("stop", tally.stop());
    json.writeNumberField("warn", tally.warn());
    json.writeNumberField("note", tally.note());
    json.writeEndObject();
    json.writeArrayFieldStart("findings");
    for (Finding finding : findings) {
      one(json, finding);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void one(JsonGenerator json, Finding finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("rule", finding.rule());
    json.writeStringField("severity", finding.severity().word());
    place(json, finding.at());
    json.writeStringField("message", finding.what());
    json.writeStringField("why", finding.follows());
    json.writeStringField("mend", finding.mend());
    json.writeArrayFieldStart("records");
    for (String record : finding.records()) {
      json.writeString(record);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void place(JsonGenerator json, Place at) throws IOException {
    json.writeStringField("file", at.file());
    if (!at.isWholeFile()) {
      json.writeNumberField("line", at.line());
      json.writeNumberField("column", at.column());
      json.writeNumberField("endLine", at.endLine());
      json.writeNumberField("endColumn", at.endColumn());
    }
  }
}
