package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The day before, the day, the day after: what is due on a day is in time all that day, and late
 * from the next morning; what is promised for a day stands all that day. Every telling has the same
 * edge. All that happens here is due on 10 April.
 */
class EdgesOfDaysTest {
  private static final String LEDGER =
      """
      build: {name: Gen, currency: EUR, started: 2026-02-02, launch: 2026-12-01,
              week: {days: [mon, tue, wed, thu, fri, sat, sun], hours: 8}}
      parties:
        - {id: maker, name: Maker, role: supplier}
        - {id: me, name: Me, role: builder}
        - {id: office, name: Office, role: designer, may-sign: [finish]}
        - {id: pal, name: Pal, role: helper}
      tasks:
        - {id: t0, what: A, takes: 30 d, uses: [{item: i0, qty: 1}, {item: i1, qty: 1}]}
        - {id: t1, what: B, takes: 2 d, started: 2026-04-10}
      kit: [{id: i0, what: Item, qty: 2}, {id: i1, what: Item, qty: 2}, {id: i2, what: I, qty: 2}]
      deliveries:
        - id: d0
          from: maker
          received: 2026-02-20
          counted: [{item: i0, qty: 0}, {item: i1, qty: 0}, {item: i2, qty: 0}]
        - {id: d1, from: maker, expected: 2026-04-10, packed: [{item: i1, qty: 2}]}
      shortages:
        - {id: s0, item: i0, qty: 2, found: 2026-03-01, cause: not-packed}
        - {id: s1, item: i1, qty: 2, found: 2026-03-01, cause: not-packed}
        - {id: s2, item: i2, qty: 2, found: 2026-03-01, cause: not-packed}
      claims:
        - {id: c0, against: maker, shortages: [s2], remedy: replacement, sent: 2026-03-18,
           reply-by: 2026-04-10}
        - {id: c1, against: maker, shortages: [s0], remedy: replacement, sent: 2026-03-18,
           reply-by: 2026-04-01, events: [{on: 2026-03-20, what: promised, expect: 2026-04-10}]}
      borrowed:
        - {id: l0, tool: Saw, from: pal, on: 2026-03-01, due: 2026-04-10, condition: good,
           needed-for: [t0]}
      substitutions:
        - {id: b0, instead-of: {what: some, qty: 1}, why: here, grade: finish, hold: t1,
           proposed: {by: pal, on: 2026-04-08}, sign-offs: [{by: office, on: SIGNED}]}
      """;

  @TempDir Path folder;

  @BeforeEach
  void aLedger() throws IOException {
    write("2026-04-10");
  }

  private void write(String signed) throws IOException {
    Files.writeString(folder.resolve("ledger.yaml"), LEDGER.replace("SIGNED", signed));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-04-09 | 1  | no word yet, due in 1 day  | reply due in 1 day  | false",
        "2026-04-10 | 0  | no word yet, due today     | reply due today     | false",
        "2026-04-11 | -1 | no word yet, late by 1 day | reply 1 day overdue | true"
      })
  void aReply(String day, long left, String status, String open, boolean late) throws IOException {
    JsonNode claim = row(json(day, "claim").get("open"), "claim", "c0");
    assertThat(claim.get("status").asText()).isEqualTo(status);
    assertThat(claim.get("status.days-left").asLong()).isEqualTo(left);
    assertThat(row(json(day, "open").get("open"), "record", "claim c0").get("what").asText())
        .endsWith(open);
    assertThat(fires(day, "claim-reply-overdue")).isEqualTo(late);
    assertThat(calendar(day, "claim c0")).isEqualTo(late ? "Overdue" : "Last day");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-04-09 | 1  | Due on        | false",
        "2026-04-10 | 0  | Due on        | false",
        "2026-04-11 | -1 | Overdue since | true"
      })
  void aTool(String day, long left, String week, boolean late) throws IOException {
    JsonNode report = json(day, "report", "tools", "--out", "-");
    assertThat(report.get("here").get(0).get(0).get("days-left.number").asLong()).isEqualTo(left);
    assertThat(report.get("summary").asText().contains("Overdue")).isEqualTo(late);
    String due = week + " Fri 10 April 2026: Saw";
    assertThat(spoken(say(day, "week"))).contains(due);
    assertThat(spoken(say(day, "week", "--ending", "2026-05-31")))
        .as("a week to come is told as it stands today")
        .contains(due);
    assertThat(row(json(day, "open").get("open"), "record", "loan l0").get("what").asText())
        .matches(late ? ".*, overdue.*" : "(?!.*overdue).*");
    assertThat(fires(day, "tool-overdue")).isEqualTo(late);
  }

  @ParameterizedTest
  @CsvSource({
    "2026-04-09, true, 2026-04-10",
    "2026-04-10, true, 2026-04-11",
    "2026-04-11, false, "
  })
  void goodsPromisedOrSent(String day, boolean stands, String ready) throws IOException {
    JsonNode kit = json(day, "kit").get("items");
    for (String item : List.of("i0", "i1")) {
      JsonNode row = row(kit, "item", item);
      assertThat(row.get("coming.number").asInt()).as(item).isEqualTo(stands ? 2 : 0);
      JsonNode need =
          row(json(day, "ahead", "--weeks", "60").get("needs"), "thing", "kit item " + item);
      assertThat(need.path("ready").asText("")).as(item).isEqualTo(ready == null ? "" : ready);
      assertThat(need.get("missing.number").asInt()).isEqualTo(stands ? 0 : 1);
    }
    assertThat(row(kit, "item", "i1").get("no-day.number").asInt()).isEqualTo(stands ? 0 : 2);
    assertThat(row(json(day, "claim").get("open"), "claim", "c1").get("status").asText())
        .isEqualTo("promised for 2026-04-10" + (stands ? "" : ", which has passed"));
    assertThat(fires(day, "promise-overdue")).isEqualTo(!stands);
  }

  /** The work began on 10 April. */
  @ParameterizedTest
  @CsvSource({"2026-04-09, released", "2026-04-10, released", "2026-04-11, passed"})
  void aSignatureOfTheDayOnWhichTheWorkBeganReleasesIt(String signed, String hold)
      throws IOException {
    write(signed);
    JsonNode rows = json("2026-04-12", "report", "substitutions", "--out", "-").get("overview");
    assertThat(rows.get(0).get(0).get("hold-point").asText()).isEqualTo(hold);
    assertThat(fires("2026-04-12", "hold-point-passed")).isEqualTo(hold.equals("passed"));
  }

  /** “Within a week” reaches to the same day of the next week. */
  @ParameterizedTest
  @CsvSource({"2026-04-02, false", "2026-04-03, true", "2026-04-04, true"})
  void withinAWeek(String day, boolean within) throws IOException {
    JsonNode all = json(day, "open");
    JsonNode near = json(day, "open", "--within", "1");
    assertThat(StreamSupport.stream(near.get("open").spliterator(), false))
        .extracting(matter -> matter.get("record").asText())
        .matches(records -> records.contains("claim c0") == within);
    assertThat(all.get("summary").asText())
        .endsWith(", " + near.get("open").size() + " to settle within a week");
  }

  private static JsonNode row(JsonNode rows, String key, String value) {
    for (JsonNode row : rows) {
      if (row.path(key).asText().equals(value)) {
        return row;
      }
    }
    throw new AssertionError("no " + value + " in " + rows);
  }

  private boolean fires(String day, String rule) {
    return say(day, "check", "--all").contains(rule);
  }

  /** What a calendar says of a matter, on whatever day. */
  private String calendar(String day, String record) throws IOException {
    say(day, "calendar", "days.ics", "--force");
    String text = Files.readString(folder.resolve("days.ics")).replace("\r\n ", "");
    for (String line : text.split("\r\n")) {
      if (line.startsWith("SUMMARY:") && line.endsWith("(" + record + ")")) {
        return line.substring("SUMMARY:".length()).replaceAll(":.*", "");
      }
    }
    return "";
  }

  private static String spoken(String text) {
    return text.replace('\u00a0', ' ');
  }

  private JsonNode json(String day, String... words) throws IOException {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--format", "json"));
    return new ObjectMapper().readTree(say(day, all.toArray(String[]::new)));
  }

  private String say(String day, String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--today", day));
    return Run.in(folder, all.toArray(String[]::new)).out();
  }
}
