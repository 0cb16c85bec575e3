package kitwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import kitwright.choice.Choice;
import kitwright.choice.Dominated;
import kitwright.choice.Taken;
import kitwright.choice.WayOut;
import kitwright.finding.PlainJson;

/** The ways out of a shortage as JSON; absent values are left out, days are ISO 8601. */
final class OptionsJson {
  private OptionsJson() {}

  static String of(Choice choice) {
    return PlainJson.of(json -> write(choice, json));
  }

  private static void write(Choice choice, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("shortage", choice.standing().shortage().id());
    json.writeStringField("open", choice.standing().open().toString());
    json.writeStringField("launch-if-here", choice.launchIfHere().toString());
    json.writeArrayFieldStart("ways");
    for (WayOut way : choice.ways()) {
      way(way, choice, json);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void way(WayOut way, Choice choice, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", way.name());
    text("cash-now", way.outlay().now(), json);
    text("cost-low", way.outlay().cost().map(cost -> cost.low()), json);
    text("cost-likely", way.outlay().cost().map(cost -> cost.likely()), json);
    text("cost-high", way.outlay().cost().map(cost -> cost.high()), json);
    text("forecast", way.outlay().forecast(), json);
    json.writeStringField("claimable", way.outlay().claimable().toString());
    json.writeNumberField("own-hours", way.outlay().hours());
    text("own-hours-worth", way.outlay().hoursWorth(), json);
    text("here-on", way.timing().arrives(), json);
    text("holds", way.timing().held().map(held -> held.task()), json);
    text("launch", way.timing().launch().map(day -> day.on()), json);
    text("strength", way.strength().flatMap(s -> s.verdict()).map(v -> v.outcome()), json);
    text("governing", way.strength().flatMap(s -> s.governing()), json);
    if (way.strength().isPresent() && way.strength().get().margin().isPresent()) {
      json.writeNumberField("margin", way.strength().get().margin().getAsDouble());
    }
    if (way.strength().isPresent() && way.strength().get().mass().isPresent()) {
      json.writeNumberField("mass-ratio", way.strength().get().mass().getAsDouble());
    }
    text("sign-by", way.signing().flatMap(signing -> signing.by()), json);
    json.writeArrayFieldStart("takes");
    for (Taken taken : way.taken()) {
      json.writeString(taken.qty() + " of " + taken.thing());
    }
    json.writeEndArray();
    for (Dominated each : choice.dominated()) {
      if (each.way().equals(way.name())) {
        json.writeStringField("beaten-by", each.by());
        json.writeStringField("because", each.reason());
      }
    }
    json.writeEndObject();
  }

  private static void text(String name, Optional<?> value, JsonGenerator json) throws IOException {
    if (value.isPresent()) {
      json.writeStringField(name, value.get().toString());
    }
  }
}
