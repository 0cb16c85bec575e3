package kitwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitwright.choice.Choice;
import kitwright.choice.Dominated;
import kitwright.choice.Signing;
import kitwright.choice.Taken;
import kitwright.choice.Turning;
import kitwright.choice.WayOut;
import kitwright.finding.PlainJson;

/** The ways out of a shortage as JSON; absent values are left out, days are ISO 8601. */
final class OptionsJson {
  private static final int DECIMALS = 4;

  private OptionsJson() {}

  static String of(Choice choice) {
    return PlainJson.of(json -> write(choice, json));
  }

  private static void write(Choice choice, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("shortage", choice.standing().shortage().id());
    json.writeStringField("open", choice.standing().open().toString());
    json.writeStringField("launch-if-here", choice.launchIfHere().toString());
    text("needed-by", choice.neededBy(), json);
    json.writeArrayFieldStart("ways");
    for (WayOut way : choice.ways()) {
      way(way, choice, json);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("turning");
    for (Turning each : choice.turning()) {
      turning(each, json);
    }
    json.writeEndArray();
    text("decided", choice.standing().shortage().decided().map(made -> made.option()), json);
    json.writeEndObject();
  }

  private static void turning(Turning each, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("way", each.way());
    json.writeStringField("against", each.against());
    text("cheaper-by", each.lessCost(), json);
    text("hour-worth-below", each.belowHour(), json);
    text("hour-worth-above", each.aboveHour(), json);
    number("days-sooner", each.daysSooner(), json);
    text("day-worth-above", each.dayWorth(), json);
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
    text("cost-with-hours", way.outlay().withHours(), json);
    text("here-on", way.timing().arrives(), json);
    text("holds", way.timing().held().map(held -> held.task()), json);
    number("holds-days", way.timing().held().map(held -> held.days()), json);
    if (way.timing().held().isPresent()) {
      rounded("float-used", way.timing().held().get().floatUsed(), json);
      rounded("float-left", way.timing().held().get().floatLeft(), json);
    }
    text("launch", way.timing().launch().map(day -> day.on()), json);
    number("launch-later", way.timing().launch().map(day -> day.later()), json);
    text(
        "strength",
        way.strength()
            .flatMap(s -> s.verdict())
            .map(v -> v.outcome().name().toLowerCase(Locale.ROOT).replace('_', '-')),
        json);
    text("governing", way.strength().flatMap(s -> s.governing()), json);
    if (way.strength().isPresent() && way.strength().get().margin().isPresent()) {
      rounded("margin", way.strength().get().margin().getAsDouble(), json);
    }
    if (way.strength().isPresent() && way.strength().get().mass().isPresent()) {
      rounded("mass-ratio", way.strength().get().mass().getAsDouble(), json);
    }
    text("sign-by", way.signing().flatMap(signing -> signing.by()), json);
    names("signers", way.signing().map(Signing::signers).orElse(List.of()), json);
    names("lacks", way.signing().map(Signing::lacks).orElse(List.of()), json);
    json.writeArrayFieldStart("takes");
    for (Taken taken : way.taken()) {
      json.writeStartObject();
      json.writeStringField("thing", taken.thing());
      json.writeStringField("qty", taken.qty().toString());
      json.writeStringField("left", taken.left().toString());
      names("meant-for", taken.losers(), json);
      json.writeEndObject();
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

  private static void number(String name, Optional<Long> value, JsonGenerator json)
      throws IOException {
    if (value.isPresent()) {
      json.writeNumberField(name, value.get());
    }
  }

  private static void rounded(String name, double value, JsonGenerator json) throws IOException {
    json.writeNumberField(name, BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP));
  }

  private static void names(String name, List<String> names, JsonGenerator json)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (String each : names) {
      json.writeString(each);
    }
    json.writeEndArray();
  }
}
