package kitwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import kitwright.finding.PlainJson;
import kitwright.ledger.Facts;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.network.Range;
import kitwright.network.Schedule;
import kitwright.network.WeatherBound;
import kitwright.openmatter.Ends;
import kitwright.openmatter.Readiness;
import kitwright.shortage.LookAhead;
import kitwright.shortage.Wanted;

/** The look-ahead as JSON; absent values are left out, days are ISO 8601. */
final class AheadJson {
  private final Outlook outlook;
  private final Facts now;
  private final JsonGenerator json;

  private AheadJson(Outlook outlook, JsonGenerator json) {
    this.outlook = outlook;
    this.now = outlook.now();
    this.json = json;
  }

  static String of(Outlook outlook) {
    return PlainJson.of(json -> new AheadJson(outlook, json).write());
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeStringField("build", now.ledger().build().name());
    json.writeStringField("today", now.day().toString());
    json.writeStringField("last-day", outlook.last().toString());
    end("by-work-alone", Plan.on(now).schedule());
    end("with-material", LookAhead.on(now).paced());
    Ends ends = Ends.on(now);
    if (ends.weather().isPresent()) {
      end("with-weather", ends.weather().get().schedule());
    }
    json.writeArrayFieldStart("left-out");
    for (String left : ends.leftOut()) {
      json.writeString(left);
    }
    json.writeEndArray();
    if (outlook.suppose().isPresent()) {
      end("supposed", outlook.suppose().get().with());
      shifts(outlook.suppose().get());
    }
    if (outlook.range().isPresent()) {
      range(outlook.range().get());
    }
    json.writeArrayFieldStart("tasks");
    for (Planned planned : outlook.tasks()) {
      task(planned);
    }
    json.writeEndArray();
    needs();
    orders();
    weather();
    json.writeArrayFieldStart("ready-indoors");
    for (Readiness ready : Readiness.indoors(now)) {
      json.writeString(ready.task().id());
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void end(String name, Schedule schedule) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("ends", schedule.lastDay().toString());
    if (now.ledger().build().launch().isPresent()) {
      long spare = schedule.marginTo(now.ledger().build().launch().get()).wholeDays();
      json.writeNumberField("working-days-to-spare", spare);
    }
    json.writeEndObject();
  }

  private void shifts(Suppose suppose) throws IOException {
    json.writeArrayFieldStart("shifts");
    for (Suppose.Shift shift : suppose.shifts()) {
      json.writeStartObject();
      json.writeStringField("task", shift.with().id());
      json.writeStringField("starts", shift.with().earliestStart().toLocalDate().toString());
      json.writeStringField(
          "starts-without", shift.without().earliestStart().toLocalDate().toString());
      json.writeNumberField("float-days", shift.with().total().wholeDays());
      json.writeNumberField("float-days-without", shift.without().total().wholeDays());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void range(Range range) throws IOException {
    json.writeObjectFieldStart("range");
    json.writeNumberField("runs", range.runs());
    json.writeNumberField("seed", range.seed());
    for (int percent : new int[] {10, 50, 90}) {
      json.writeStringField(
          "by-" + percent + "-percent", range.by(percent / 100.0).at().toLocalDate().toString());
    }
    if (now.ledger().build().launch().isPresent()) {
      Range.Chance chance = range.chanceBy(now.ledger().build().launch().get());
      json.writeNumberField("chance-by-launch", rounded(chance.share()));
      json.writeNumberField("standard-error", rounded(chance.error()));
      json.writeNumberField(
          "classical-chance",
          rounded(LookAhead.on(now).paced().pert().chanceBy(now.ledger().build().launch().get())));
    }
    json.writeObjectFieldStart("criticality");
    for (Planned planned : Plan.on(now).ahead()) {
      json.writeNumberField(planned.id(), rounded(range.criticality(planned.id()).share()));
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private static double rounded(double share) {
    return Math.round(share * 10_000) / 10_000.0;
  }

  private void task(Planned planned) throws IOException {
    Task task = Plan.on(now).task(planned.id()).orElseThrow();
    Readiness readiness = Readiness.of(task, now);
    json.writeStartObject();
    json.writeStringField("task", task.id());
    json.writeStringField("what", task.what());
    json.writeStringField("from", readiness.from().toString());
    json.writeStringField("latest-start", planned.latestStart().toLocalDate().toString());
    json.writeStringField("finish", readiness.to().toString());
    json.writeNumberField("float-days", planned.total().wholeDays());
    json.writeBooleanField("critical", planned.critical());
    json.writeArrayFieldStart("lacks");
    for (Readiness.Lack lack : readiness.lacks()) {
      json.writeString(lack.words());
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void needs() throws IOException {
    json.writeArrayFieldStart("needs");
    for (Wanted wanted : LookAhead.on(now).all()) {
      if (outlook.shows(wanted.task())) {
        json.writeStartObject();
        json.writeStringField("task", wanted.task());
        json.writeStringField("thing", wanted.thing().record());
        json.writeStringField("on", wanted.on().toString());
        json.writeStringField("qty", wanted.qty().toString());
        json.writeStringField("missing", wanted.missing().toString());
        json.writeStringField("short-on-the-day", wanted.shortOnTheDay().toString());
        json.writeStringField("uncounted", wanted.uncounted().toString());
        OpenJson.day("ready", wanted.readyOn(), json);
        json.writeEndObject();
      }
    }
    json.writeEndArray();
  }

  private void orders() throws IOException {
    json.writeArrayFieldStart("orders");
    for (LookAhead.ToOrder each : LookAhead.on(now).orders()) {
      json.writeStartObject();
      json.writeStringField("thing", each.thing().record());
      json.writeStringField("qty", each.thing().qty(each.order().amount()).toString());
      json.writeStringField("order-by", each.order().orderBy().toString());
      json.writeStringField("needed", each.order().needed().toString());
      json.writeStringField("arrives", each.order().arrives().toString());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void weather() throws IOException {
    json.writeArrayFieldStart("weather");
    for (WeatherBound bound : WeatherBound.by(outlook.last(), now)) {
      json.writeStartObject();
      json.writeStringField("task", bound.task().id());
      json.writeStringField("from", bound.from().toString());
      json.writeStringField("window-first", bound.window().first().toString());
      json.writeStringField("window-last", bound.window().last().toString());
      json.writeNumberField("days-lacking", bound.window().lacking());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
