package kitwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitwright.finding.PlainJson;
import kitwright.ledger.Facts;
import kitwright.openmatter.OpenMatter;

/** The open matters as JSON; absent values are left out, days are ISO 8601. */
final class OpenJson {
  private OpenJson() {}

  static String of(Facts now, List<OpenMatter> matters) {
    return PlainJson.of(
        json -> {
          json.writeStartObject();
          json.writeStringField("build", now.ledger().build().name());
          json.writeStringField("today", now.day().toString());
          json.writeArrayFieldStart("open");
          for (OpenMatter matter : matters) {
            matter(matter, json);
          }
          json.writeEndArray();
          json.writeEndObject();
        });
  }

  private static void matter(OpenMatter matter, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("sort", matter.sort().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    json.writeStringField("record", matter.record());
    json.writeStringField("what", matter.what());
    if (matter.stop().isPresent()) {
      OpenMatter.Stop stop = matter.stop().get();
      json.writeStringField("needed-by", stop.neededBy().toString());
      json.writeNumberField("float-days", stop.floatDays());
      json.writeStringField("stops-task", stop.task());
      json.writeStringField("stops-from", stop.from().toString());
    }
    day("act-by", matter.actBy(), json);
    day("expected", matter.expected(), json);
    json.writeStringField("waits-for", matter.waitsFor());
    json.writeStringField("next", matter.next());
    json.writeEndObject();
  }

  static void day(String name, Optional<? extends Object> value, JsonGenerator json)
      throws IOException {
    if (value.isPresent()) {
      json.writeStringField(name, value.get().toString());
    }
  }
}
