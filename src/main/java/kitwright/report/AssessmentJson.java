package kitwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.assessment.Figure;
import kitwright.assessment.Input;
import kitwright.assessment.Result;
import kitwright.assessment.Row;
import kitwright.finding.PlainJson;

/** Assessments as JSON: every input and every result with its unit. */
public final class AssessmentJson {
  private AssessmentJson() {}

  /** The text. */
  public static String of(List<Result> results) {
    return PlainJson.of(
        json -> {
          json.writeStartObject();
          json.writeArrayFieldStart("assessments");
          for (Result result : results) {
            write(result, json);
          }
          json.writeEndArray();
          json.writeEndObject();
        });
  }

  private static void write(Result result, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", result.assessment().id());
    json.writeStringField("method", word(result.assessment().method()));
    json.writeStringField("verdict", word(result.verdict().outcome()));
    texts("reasons", result.verdict().reasons(), json);
    json.writeArrayFieldStart("results");
    for (Row row : result.rows()) {
      write(row, json);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("inputs");
    for (Input input : result.inputs()) {
      json.writeStartObject();
      json.writeStringField("material", input.material());
      json.writeStringField("property", input.property().key());
      json.writeStringField("value", input.value());
      if (input.basis().isPresent()) {
        json.writeStringField("basis", word(input.basis().get()));
      }
      json.writeStringField("trust", word(input.trust()));
      json.writeStringField("source", input.source());
      json.writeEndObject();
    }
    json.writeEndArray();
    texts("load", result.load(), json);
    texts("assumptions", result.notes(), json);
    texts("cautions", result.cautions(), json);
    json.writeEndObject();
  }

  private static void write(Row row, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("measure", word(row.measure()));
    json.writeStringField("key", row.measure().key());
    json.writeStringField("unit", row.measure().unit());
    figure("designed", row.designed(), json);
    figure("built", row.built(), json);
    number("ratio", row.ratio(), json);
    if (row.limit().isPresent()) {
      json.writeStringField("side", row.limit().get().side().words());
      json.writeNumberField("limit", row.limit().get().value());
    }
    number("margin", row.margin(), json);
    if (row.outcome().isPresent()) {
      json.writeStringField("outcome", word(row.outcome().get()));
    }
    texts("lacking", row.lacking(), json);
    json.writeEndObject();
  }

  private static void figure(String name, Optional<Figure> figure, JsonGenerator json)
      throws IOException {
    if (figure.isPresent()) {
      json.writeNumberField(name, figure.get().value());
      if (figure.get().governing().isPresent()) {
        json.writeStringField(name + "-set-by", figure.get().governing().get());
      }
    }
  }

  private static void number(String name, OptionalDouble value, JsonGenerator json)
      throws IOException {
    if (value.isPresent()) {
      json.writeNumberField(name, value.getAsDouble());
    }
  }

  private static void texts(String name, List<String> texts, JsonGenerator json)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
