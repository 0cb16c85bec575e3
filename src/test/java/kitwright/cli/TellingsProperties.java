package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import kitwright.finding.Findings;
import kitwright.history.Changes;
import kitwright.history.Commit;
import kitwright.history.Hands;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import kitwright.ledger.LedgerReader;
import kitwright.report.past.SinceTold;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

/**
 * One question, one answer, in every telling: {@code since}, {@code kit} and its stories, count
 * sheets, cuts, the calendar, the page for tomorrow, tools, claims with their letters and
 * reminders, both weeks. The same made-up builds on every run.
 */
class TellingsProperties {
  private static final LocalDate TODAY = GeneratedBuild.TODAY;
  private static final LocalDate BEFORE = TODAY.minusDays(30);

  @Property(generation = GenerationMode.EXHAUSTIVE, shrinking = ShrinkingMode.OFF)
  void everyTellingAnswersAlike(@ForAll @IntRange(min = 1, max = 24) int seed) throws IOException {
    assertThat(contradictions(seed)).as("build " + seed).isEmpty();
  }

  static List<String> contradictions(long seed) throws IOException {
    return contradictions(folder -> GeneratedBuild.write(seed, folder));
  }

  /** Writes a build into a folder. */
  interface Written {
    void into(Path folder) throws IOException;
  }

  static List<String> contradictions(Written build) throws IOException {
    Path folder = Files.createTempDirectory("tellings");
    try {
      build.into(folder);
      return new Told(folder).contradictions();
    } finally {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      }
    }
  }

  /** Everything that the program says of one build. */
  private static final class Told {
    private final Path folder;
    private final List<String> contradictions = new ArrayList<>();
    private final JsonNode since;
    private final JsonNode ahead;
    private final JsonNode open;
    private final JsonNode kit;
    private final JsonNode claims;
    private final JsonNode crew;
    private final JsonNode everybody;
    private final JsonNode tools;

    Told(Path folder) {
      this.folder = folder;
      since = since(folder);
      ahead = json("ahead", "--weeks", "60");
      open = json("open").get("open");
      kit = json("kit");
      claims = json("claim");
      crew = json("week");
      everybody = json("week", "--audience", "public");
      tools = json("report", "tools");
    }

    List<String> contradictions() {
      work();
      days();
      counted();
      stories();
      missing();
      claimed();
      letters();
      signed();
      money();
      tools();
      calendar();
      acts();
      cuts();
      weeks();
      return contradictions;
    }

    private static JsonNode since(Path folder) {
      Ledger ledger =
          LedgerReader.read(
                  LedgerFolder.at(folder).files(new Findings()), paths -> Map.of(), new Findings())
              .orElseThrow();
      Changes changes =
          Changes.between(
              Facts.of(ledger, BEFORE), Facts.of(ledger, TODAY), new Hands(Map.of(), Set.of()));
      ZonedDateTime at = BEFORE.atTime(18, 0).atZone(ZoneOffset.UTC);
      Commit commit = new Commit("0123456789abcdef", "Somebody", at, "Before");
      return tree(SinceTold.sheet(Facts.of(ledger, TODAY), commit, changes).slots().json());
    }

    private String say(LocalDate day, String... words) {
      List<String> all = new ArrayList<>(Arrays.asList(words));
      all.addAll(List.of("--today", day.toString()));
      Run run = Run.in(folder, all.toArray(String[]::new));
      assertThat(run.err()).as(String.join(" ", words)).doesNotContain("breaks inside");
      return run.out();
    }

    private JsonNode json(String... words) {
      return jsonOn(TODAY, words);
    }

    private JsonNode jsonOn(LocalDate day, String... words) {
      List<String> all = new ArrayList<>(Arrays.asList(words));
      all.addAll(List.of("--format", "json"));
      return tree(say(day, all.toArray(String[]::new)));
    }

    private static JsonNode tree(String said) {
      try {
        return new ObjectMapper().readTree(said);
      } catch (JsonProcessingException broken) {
        throw new IllegalStateException(said, broken);
      }
    }

    private void same(String question, Object one, Object other) {
      if (!String.valueOf(one).equals(String.valueOf(other))) {
        contradictions.add(question + ": " + one + " against " + other);
      }
    }

    private static Stream<JsonNode> each(JsonNode list) {
      return StreamSupport.stream(list.spliterator(), false);
    }

    /** The rows of a report’s slot, which holds tables between headings. */
    private static Stream<JsonNode> rows(JsonNode slot) {
      return each(slot).filter(JsonNode::isArray).flatMap(Told::each);
    }

    private static Map<String, JsonNode> by(Stream<JsonNode> rows, String key) {
      Map<String, JsonNode> all = new LinkedHashMap<>();
      rows.forEach(row -> all.put(row.path(key).asText(), row));
      return all;
    }

    private static JsonNode row(Map<String, JsonNode> rows, String id) {
      return rows.getOrDefault(id, MissingNode.getInstance());
    }

    private Map<String, JsonNode> changed(String matter) {
      return by(each(since.get(matter)), "id");
    }

    private static String words(JsonNode several) {
      return String.join(", ", each(several).map(JsonNode::asText).toList());
    }

    /** How far work is: what changed, and the work ahead. */
    private void work() {
      Map<String, JsonNode> tasks = by(each(ahead.get("tasks")), "task");
      changed("work")
          .forEach(
              (id, row) -> {
                boolean all = row.path("now").asDouble(0) == 1.0;
                same("finished by what changed, and ahead: " + id, all, !tasks.containsKey(id));
              });
    }

    /** When the build and each task end. */
    private void days() {
      Map<String, JsonNode> tasks = by(each(ahead.get("tasks")), "task");
      JsonNode ends = ahead.get(ahead.has("with-weather") ? "with-weather" : "with-material");
      changed("days")
          .forEach(
              (id, row) -> {
                String told =
                    id.equals("The plan ends")
                        ? ends.get("ends").asText()
                        : tasks.containsKey(id)
                            ? row(tasks, id).path("finish").asText()
                            : "nothing";
                same("ends by what changed, and ahead: " + id, row.path("now").asText(), told);
              });
    }

    /** How many were counted good: what changed, the kit, the count sheets. */
    private void counted() {
      Map<String, JsonNode> items = by(each(kit.get("items")), "item");
      changed("counted")
          .forEach(
              (id, row) ->
                  same(
                      "good by what changed, and in the kit: " + id,
                      row.path("now").asText(),
                      row(items, id).path("good").asText()));
      Map<String, BigDecimal> counted = new TreeMap<>();
      String sheets = say(TODAY, "report", "count-sheet", "--format", "markdown");
      Matcher line =
          Pattern.compile("\\| ☑ [^|]*`(\\w+)`[^|]*\\|[^|]*\\| *(\\d+) \\| *(\\d*) *\\|")
              .matcher(sheets);
      while (line.find()) {
        BigDecimal good =
            new BigDecimal(line.group(2)).subtract(new BigDecimal("0" + line.group(3)));
        counted.merge(line.group(1), good, BigDecimal::add);
      }
      counted.forEach(
          (id, many) ->
              same(
                  "counted on the sheets, and good in the kit: " + id,
                  many + " each",
                  row(items, id).path("good").asText()));
    }

    /** The story of an item adds up to what its line says. */
    private void stories() {
      for (JsonNode item : kit.get("items")) {
        String id = item.get("item").asText();
        JsonNode alone = json("kit", id);
        same("the line of " + id + ", alone and in the list", alone.get("items").get(0), item);
        BigDecimal good = BigDecimal.ZERO;
        BigDecimal coming = BigDecimal.ZERO;
        BigDecimal noDay = BigDecimal.ZERO;
        for (JsonNode row : alone.get("stories")) {
          String what = row.get("what").asText();
          BigDecimal qty = new BigDecimal(row.get("quantity").asText().replaceAll(" .*", ""));
          if (what.startsWith("good in ")) {
            good = good.add(qty);
          }
          boolean sent = what.startsWith("on its way in ") || what.startsWith("ordered with ");
          boolean said = what.startsWith("promised in answer to ") || what.startsWith("decided, ");
          boolean stands = row.hasNonNull("on") && !what.contains("it was to come by this day");
          if ((sent || said) && stands) {
            coming = coming.add(qty);
          } else if (sent) {
            noDay = noDay.add(qty);
          }
        }
        same(
            "good of " + id + ", in its line and in its story",
            item.path("good").asText("0 each"),
            good + " each");
        same(
            "coming of " + id + ", in its line and in its story",
            item.path("coming").asText("0 each"),
            coming + " each");
        same(
            "of no day of " + id + ", in its line and in its story",
            item.path("no-day").asText("0 each"),
            noDay + " each");
      }
    }

    /** What is open of a shortage: what changed, and the list of ways out. */
    private void missing() {
      Map<String, JsonNode> list = by(each(json("options").get("shortages")), "shortage");
      Set<String> openNow = new TreeSet<>();
      changed("missing")
          .forEach(
              (id, row) -> {
                String now = row.path("now").path(0).asText();
                if (now.endsWith(" open")) {
                  openNow.add(id);
                  same(
                      "open by what changed, and with ways out: " + id,
                      now.replace(" open", ""),
                      list.containsKey(id) ? row(list, id).path("open").asText() : "nothing");
                }
              });
      same(
          "open shortages, by what changed and with ways out",
          openNow,
          new TreeSet<>(list.keySet()));
      int told = openNow.size();
      String words =
          told == 0
              ? ""
              : told == 1 ? "1 thing is still missing" : told + " things are still missing";
      if (!everybody.get("summary").asText().contains(words)) {
        same("still missing, for everybody", everybody.get("summary").asText(), words);
      }
    }

    private Map<String, JsonNode> claimRows() {
      Map<String, JsonNode> rows = by(each(claims.get("open")), "claim");
      rows.putAll(by(each(claims.get("ended")), "claim"));
      return rows;
    }

    /** How a claim stands: what changed, the list, its page. */
    private void claimed() {
      Map<String, JsonNode> open = by(each(claims.get("open")), "claim");
      Map<String, JsonNode> rows = claimRows();
      changed("claimed")
          .forEach(
              (id, row) ->
                  same(
                      "state by what changed, and in the list: " + id,
                      row.path("now").path(0).asText(),
                      open.containsKey(id) ? row(open, id).path("state").asText() : "settled"));
      rows.forEach(
          (id, row) -> {
            JsonNode page = json("claim", id, "--since");
            String sums = page.get("sums").asText();
            Matcher told =
                Pattern.compile(
                        "Asked in money: (.*); granted: (.*); come back: (.*); still open:"
                            + " (.*?)\\.(?: .*)?$")
                    .matcher(sums);
            assertThat(told.find()).as(sums).isTrue();
            String[] names = {"money-asked", "granted", "come-back", "still-open"};
            for (int i = 0; i < names.length; i++) {
              same(
                  names[i] + " of " + id + ", on its page and in the list",
                  told.group(i + 1).replace('\u00a0', ' ').replace("–", ""),
                  words(row.get(names[i])).replace(", ", " and "));
            }
            String stands =
                row.has("status") ? row.get("status").asText() : row.get("ended").asText();
            same(
                "status of " + id + ", on its page and in the list",
                page.get("stands").asText().toLowerCase(java.util.Locale.ROOT),
                stands.toLowerCase(java.util.Locale.ROOT) + ".");
          });
    }

    /** What a reminder asks is what is open. */
    private void letters() {
      claimRows()
          .forEach(
              (id, row) -> {
                if (row.has("state") && !row.get("state").asText().equals("draft")) {
                  JsonNode letter = json("claim", id, "--reminder");
                  same(
                      "open of " + id + ", in the reminder and in the list",
                      letter.path("sums").asText().replace('\u00a0', ' '),
                      words(row.get("still-open")).replace(", ", " and "));
                  boolean goods =
                      rows(letter.get("items"))
                          .anyMatch(each -> each.path("we-ask").asText().equals("goods"));
                  same(
                      "goods open of " + id + ", in the reminder and in the list",
                      goods,
                      !row.get("open-goods").isEmpty());
                }
              });
    }

    /** May it be built: what changed, and the report. */
    private void signed() {
      Map<String, JsonNode> rows =
          by(rows(json("report", "substitutions").get("overview")), "substitution");
      changed("signed")
          .forEach(
              (id, row) ->
                  same(
                      "may be built, by what changed and in the report: " + id,
                      row.path("now").path(0).asText().equals("approved"),
                      rows.containsKey(id)
                          && row(rows, id).path("stands").asText().equals("may be built")));
    }

    /** What is spent, where lines end, and what may come back. */
    private void money() {
      JsonNode budget = json("budget");
      BigDecimal toCome = BigDecimal.ZERO;
      for (JsonNode row : claimRows().values()) {
        for (JsonNode sum : row.get("still-open")) {
          toCome = toCome.add(new BigDecimal(sum.asText().replace(" EUR", "")));
        }
      }
      Matcher back =
          Pattern.compile("claims ask, ([0-9.]+).EUR would still come back")
              .matcher(budget.toString());
      same(
          "may come back, by the claims and in the budget",
          toCome.setScale(2),
          back.find() ? back.group(1) : "0.00");
      Map<String, JsonNode> lines = by(each(budget.get("lines")), "line");
      changed("money")
          .forEach(
              (id, row) -> {
                String line = id.replaceAll(" .*", "");
                String column = id.endsWith(" spent") ? "paid" : "forecast";
                same(
                    column + " of " + line + ", by what changed and in the budget",
                    row.get("now").asText(),
                    row(lines, line).path(column).asText());
              });
    }

    /** Which tools are here and when they are due. */
    private void tools() {
      Map<String, JsonNode> here = by(rows(tools.get("here")), "tool");
      changed("tools")
          .forEach(
              (id, row) -> {
                String name = id.replaceFirst("l", "Tool ");
                String now = row.path("now").path(0).asText();
                boolean late =
                    here.containsKey(name)
                        && row(here, name).path("days-left").asText().startsWith("late");
                same(
                    "overdue, by what changed and in the report: " + id,
                    now.equals("overdue"),
                    late);
                same(
                    "back, by what changed and in the report: " + id,
                    now.equals("returned") || now.equals("back"),
                    !here.containsKey(name));
              });
      Set<String> openTools = new TreeSet<>();
      open.forEach(
          matter -> {
            if (matter.get("record").asText().startsWith("loan ")) {
              openTools.add(matter.get("record").asText().replaceFirst("loan l", "Tool "));
            }
          });
      here.forEach(
          (name, row) -> {
            if (row.get("days-left").asText().startsWith("late")) {
              same("overdue, in the report and open: " + name, true, openTools.contains(name));
            }
          });
    }

    /** The phone is told the days that the list tells. */
    private void calendar() {
      Path file = folder.resolve("days.ics");
      say(TODAY, "calendar", "days.ics", "--force");
      String text;
      try {
        text = Files.readString(file).replace("\r\n ", "").replace("\\,", ",").replace("\\;", ";");
        Files.delete(file);
      } catch (IOException broken) {
        throw new UncheckedIOException(broken);
      }
      Set<String> told = new TreeSet<>();
      Set<String> due = new TreeSet<>();
      Matcher event =
          Pattern.compile("DTSTART;VALUE=DATE:(\\d+)(?s:.*?)SUMMARY:([^\r]*)").matcher(text);
      while (event.find()) {
        String day =
            LocalDate.parse(event.group(1), java.time.format.DateTimeFormatter.BASIC_ISO_DATE)
                .toString();
        String title = event.group(2);
        Matcher record = Pattern.compile("^(?:Overdue|Last day): .*\\(([^()]*)\\)$").matcher(title);
        if (record.find()) {
          told.add(day + " " + record.group(1) + (title.startsWith("Overdue") ? " late" : ""));
          due.add(record.group(1));
        } else if (title.startsWith("Give back: ")) {
          due.add(title.replace("Give back: Tool ", "loan l"));
        }
      }
      Set<String> listed = new TreeSet<>();
      open.forEach(
          matter -> {
            if (matter.has("last-day") && !matter.get("sort").asText().equals("weather")) {
              LocalDate day = LocalDate.parse(matter.get("last-day").asText());
              boolean late = day.isBefore(TODAY);
              listed.add(
                  (late ? TODAY : day)
                      + " "
                      + matter.get("record").asText()
                      + (late ? " late" : ""));
            }
          });
      same("days to act, in the calendar and in the list", told, listed);
      rows(tools.get("here"))
          .filter(row -> row.has("due"))
          .forEach(
              row -> {
                String id = row.get("tool").asText().replace("Tool ", "loan l");
                same("a day to give back in the calendar: " + id, true, due.contains(id));
              });
    }

    /** What must be done by tomorrow’s evening: the page, and the list of that day. */
    private void acts() {
      JsonNode page = json("tomorrow");
      LocalDate day = LocalDate.parse(page.get("day").asText());
      for (LocalDate each = TODAY.plusDays(1); !each.isAfter(day); each = each.plusDays(1)) {
        if (OneAnswerProperties.isDated(folder, each)) {
          return; // the page is seen from today: what is dated later has not happened
        }
      }
      Set<String> told = new TreeSet<>();
      page.path("acts")
          .forEach(
              act -> {
                if (act.asText().contains(", ")
                    && !act.asText().startsWith("be there")
                    && !act.asText().contains("give back the")) {
                  told.add(act.asText().replaceAll(".*, ", ""));
                }
              });
      Set<String> listed = new TreeSet<>();
      jsonOn(day, "open")
          .get("open")
          .forEach(
              matter -> {
                if (matter.has("last-day")
                    && !LocalDate.parse(matter.get("last-day").asText()).isAfter(day)) {
                  listed.add(matter.get("record").asText().replaceAll(".* ", ""));
                }
              });
      same("to do by tomorrow, on the page and in the list", told, listed);
    }

    /** What a cut yields: its tally, its pieces, the list. */
    private void cuts() {
      Map<String, JsonNode> list = by(each(json("cut").get("cuts")), "cut");
      list.forEach(
          (id, row) -> {
            if (row.has("done")) {
              return;
            }
            JsonNode plan = json("cut", id);
            Map<String, Integer> made = new TreeMap<>();
            Map<String, Integer> stock = new TreeMap<>();
            for (JsonNode piece : plan.get("pieces")) {
              stock.merge(piece.get("stock").asText(), 1, Integer::sum);
              piece
                  .get("parts")
                  .forEach(part -> made.merge(part.get("mark").asText(), 1, Integer::sum));
            }
            int wanted = 0;
            for (JsonNode part : plan.get("tally")) {
              same(
                  "made of " + part.get("mark"),
                  made.getOrDefault(part.get("mark").asText(), 0),
                  part.get("made").asInt());
              wanted += part.get("wanted").asInt();
            }
            same("wanted of " + id, wanted, row.get("parts").asInt());
            Map<String, Integer> used = new TreeMap<>();
            plan.get("used")
                .forEach(each -> used.put(each.get("stock").asText(), each.get("qty").asInt()));
            same("stock of " + id, stock, used);
          });
    }

    /** What happened: both weeks. */
    private void weeks() {
      same("hours, for the crew and for everybody", crew.get("phases"), everybody.get("hours"));
      List<String> own = new ArrayList<>();
      crew.get("progress")
          .forEach(
              row ->
                  own.add(
                      row.get("work")
                          + " "
                          + row.path("before")
                          + " "
                          + row.path("now")
                          + row.path("status")));
      List<String> theirs = new ArrayList<>();
      everybody
          .get("progress")
          .forEach(
              row ->
                  theirs.add(
                      row.get("work")
                          + " "
                          + row.path("before")
                          + " "
                          + row.path("now")
                          + row.path("status")));
      same("work done, for the crew and for everybody", own, theirs);
      same("used, for the crew and for everybody", crew.get("used"), everybody.get("used"));
      same(
          "found, for the crew and for everybody",
          rows(crew.get("missing")).count(),
          everybody.get("missing").size());
      String hours =
          Optional.of(everybody.get("summary").asText())
              .get()
              .replaceAll(" by \\d+ people", "")
              .replaceAll("\\. .*", "");
      same(
          "hours in all",
          crew.get("summary").asText().startsWith(hours.replaceAll("\\.$", "")),
          true);
    }
  }
}
