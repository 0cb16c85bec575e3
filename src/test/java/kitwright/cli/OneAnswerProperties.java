package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

/**
 * One question, one answer: what reports, both weeks, {@code ahead}, {@code open}, {@code options}
 * and JSON say of a made-up build never differs.
 */
class OneAnswerProperties {
  private static final Pattern ID = Pattern.compile("`([a-z0-9-]+)`");
  private static final Pattern DAY = Pattern.compile("2026-\\d\\d-\\d\\d");
  private static final Pattern SPOKEN = Pattern.compile("\\d{1,2} [A-Z][a-z]+ \\d{4}");
  private static final Pattern EARNED =
      Pattern.compile("earned value \\(EV\\) *\\| *([0-9.]+) EUR");

  private static final Pattern TASK = Pattern.compile("Task [A-Z]|Meter");
  private static final Pattern MUST_BE_HERE =
      Pattern.compile("is needed by \\w+ (\\d+ \\w+ \\d{4})");
  private static final Pattern STANDS_AT = Pattern.compile("“([^”]+)” stands at ([0-9.]+).EUR");
  private static final DateTimeFormatter LONG_DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /** The same builds on every run: which of them holds what is no matter of chance. */
  @Property(generation = GenerationMode.EXHAUSTIVE, shrinking = ShrinkingMode.OFF)
  void whatIsToldNeverContradictsWhatIsToldElsewhere(
      @ForAll @IntRange(min = 1, max = 30) int seed) {
    List<String> contradictions = contradictions(seed);
    assertThat(contradictions).as("seed " + seed).isEmpty();
  }

  /** The page for tomorrow is compared where nothing is dated tomorrow: some builds are such. */
  @Example
  void someBuildsHaveNothingDatedTomorrow() throws IOException {
    Path folder = Files.createTempDirectory("one-answer");
    try {
      List<Long> free = new ArrayList<>();
      for (long seed = 1; seed <= 12; seed++) {
        Path build = folder.resolve("build-" + seed);
        GeneratedBuild.write(seed, build);
        if (!isDated(build, GeneratedBuild.TODAY.plusDays(1))) {
          free.add(seed);
        }
      }
      assertThat(free).isNotEmpty();
      assertThat(contradictions(free.get(0))).isEmpty();
    } finally {
      remove(folder);
    }
  }

  static boolean isDated(Path folder, LocalDate day) {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (Files.readAllLines(file).stream()
            .anyMatch(line -> line.contains(day.toString()) && !line.contains("rain:"))) {
          return true; // a forecast for a day is known before it
        }
      }
      return false;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  static List<String> contradictions(long seed) {
    try {
      Path folder = Files.createTempDirectory("one-answer");
      try {
        GeneratedBuild.write(seed, folder);
        return new Told(folder).contradictions();
      } finally {
        remove(folder);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static void remove(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** A row of a table, by the titles of its columns. */
  private record Row(Map<String, String> cells) {
    String of(String title) {
      assertThat(cells).as("columns").containsKey(title);
      return cells.getOrDefault(title, "");
    }

    /** The id of the record that a cell ends with, empty where there is none. */
    String id(String title) {
      Matcher id = ID.matcher(of(title));
      String last = "";
      while (id.find()) {
        last = id.group(1);
      }
      return last;
    }
  }

  /** Everything that the program says of one build. */
  private static final class Told {
    private final Path folder;
    private final JsonNode ahead;
    private final JsonNode open;
    private final String aheadPage;
    private final String openPage;
    private final String shortagesPage;
    private final String substitutionsPage;
    private final String crew;
    private final String everybody;
    private final JsonNode check;
    private final List<String> contradictions = new ArrayList<>();

    Told(Path folder) {
      this.folder = folder;
      ahead = json("ahead", "--weeks", "60", "--format", "json");
      open = json("open", "--format", "json").get("open");
      aheadPage = say("report", "--out", "-", "ahead");
      openPage = say("report", "--out", "-", "open");
      shortagesPage = say("report", "--out", "-", "shortages");
      substitutionsPage = say("report", "--out", "-", "substitutions");
      crew = say("week");
      everybody = say("week", "--audience", "public");
      check = json("check", "--format", "json", "--fail-on", "never");
    }

    List<String> contradictions() {
      mayStart();
      release();
      lacks();
      howFar();
      shortages();
      needed();
      tomorrow();
      tomorrowAsTold();
      kit();
      letters();
      money();
      holds();
      return contradictions;
    }

    private String say(String... words) {
      return sayOn(GeneratedBuild.TODAY, words);
    }

    private String sayOn(LocalDate day, String... words) {
      List<String> all = new ArrayList<>(Arrays.asList(words));
      all.add("--today");
      all.add(day.toString());
      Run run = Run.in(folder, all.toArray(String[]::new));
      assertThat(run.err()).as(String.join(" ", words)).doesNotContain("fault");
      return run.out();
    }

    private JsonNode json(String... words) {
      return tree(say(words));
    }

    private static JsonNode tree(String said) {
      try {
        return new ObjectMapper().readTree(said);
      } catch (JsonProcessingException broken) {
        throw new IllegalStateException(said, broken);
      }
    }

    private void same(String question, Object one, Object other) {
      if (!iso(one.toString()).equals(iso(other.toString()))) {
        contradictions.add(question + ": " + one + " against " + other);
      }
    }

    /** The rows of all tables that have a column of that title. */
    private static List<Row> rows(String page, String title) {
      List<Row> rows = new ArrayList<>();
      List<String> heads = List.of();
      for (String line : page.lines().toList()) {
        if (!line.startsWith("|")) {
          heads = List.of();
        } else if (heads.isEmpty()) {
          heads = cells(line);
        } else if (!line.startsWith("|:") && !line.startsWith("|-") && heads.contains(title)) {
          rows.add(row(heads, cells(line)));
        }
      }
      return rows;
    }

    private static Row row(List<String> heads, List<String> cells) {
      Map<String, String> row = new LinkedHashMap<>();
      for (int i = 0; i < heads.size(); i++) {
        row.put(heads.get(i), cells.get(i));
      }
      return new Row(row);
    }

    private static List<String> cells(String line) {
      return Arrays.stream(iso(line.substring(1, line.lastIndexOf('|'))).split("\\|"))
          .map(String::strip)
          .toList();
    }

    /** Days as a table writes them, unbroken, or as a sentence does, by their numbers. */
    private static String iso(String told) {
      return SPOKEN
          .matcher(told.replace('\u2011', '-').replace('\u00a0', ' '))
          .replaceAll(day -> LocalDate.parse(day.group(), LONG_DAY).toString());
    }

    /** The tasks that a line of a week names: “- May start: Task A, Task B and Task C.” */
    private static Set<String> named(String week, String word) {
      Set<String> all = new TreeSet<>();
      Matcher line = Pattern.compile("(?m)^- " + word + ": (.*)\\.$").matcher(week);
      if (line.find()) {
        Matcher task = Pattern.compile("Task [A-Z]|Meter").matcher(line.group(1));
        while (task.find()) {
          all.add(task.group());
        }
      }
      return all;
    }

    /** May it start: both weeks, the look-ahead and its report. */
    private void mayStart() {
      Set<String> start = named(crew, "May start");
      Set<String> underWay = named(crew, "In progress");
      same("may start, for the crew and for all", start, named(everybody, "May start"));
      same("under way, for the crew and for all", underWay, named(everybody, "In progress"));
      Set<String> free = new TreeSet<>();
      for (JsonNode task : ahead.get("tasks")) {
        if (task.get("lacks").isEmpty()) {
          free.add(task.get("what").asText());
        }
      }
      free.removeAll(underWay);
      same("may start, in the week and ahead", start, free);
    }

    private void lacks() {
      Map<String, String> json = new LinkedHashMap<>();
      each(
          ahead.get("tasks"),
          task -> {
            List<String> lacks = new ArrayList<>();
            task.get("lacks").forEach(lack -> lacks.add(lack.asText()));
            json.put(
                task.get("what").asText(),
                task.get("from").asText()
                    + " "
                    + (lacks.isEmpty() ? "–" : String.join("; ", lacks)));
          });
      Set<String> ready = new LinkedHashSet<>();
      ahead.get("ready-indoors").forEach(each -> ready.add(each.asText()));
      each(
          ahead.get("tasks"),
          task -> {
            if (ready.contains(task.get("task").asText())) {
              same("ready indoors " + task.get("what"), 0, task.get("lacks").size());
            }
          });
      for (Row row : rows(aheadPage, "Lacks")) {
        String told = row.of("From") + " " + row.of("Lacks").replace("\\", "");
        same(
            "what is lacking for " + row.of("Work"),
            told,
            json.getOrDefault(row.of("Work").replaceFirst(", (begun|Tool ).*", ""), "nothing"));
      }
    }

    private static void each(JsonNode list, Consumer<JsonNode> seen) {
      list.forEach(seen);
    }

    /** May a part be built today: the report, the work that it holds, and both weeks. */
    private void release() {
      Set<String> start = named(crew, "May start");
      for (Row row : rows(substitutionsPage, "Hold point")) {
        String id = row.id("Substitution");
        boolean mayBe = row.of("Status").contains("may be built");
        if (row.of("Hold point").equals("released")) {
          same("released, and may be built: " + id, true, mayBe);
        }
        for (JsonNode task : ahead.get("tasks")) {
          boolean lacks = task.get("lacks").toString().contains("signature for " + id + "\"");
          if (lacks) {
            same("a signature is lacking and may be built: " + id, false, mayBe);
            same(
                "waits for a signature and may start: " + id,
                false,
                start.contains(task.get("what").asText()));
          }
          if (!mayBe && !row.of("Status").contains("withdrawn") && isHeld(task, id)) {
            same("not yet, and no signature is lacking: " + id, true, lacks);
          }
        }
      }
    }

    private boolean isHeld(JsonNode task, String substitution) {
      try {
        String hold = "hold: " + task.get("task").asText();
        return Files.readString(folder.resolve("ledger.yaml"))
            .lines()
            .filter(line -> line.contains("{id: " + substitution + ","))
            .anyMatch(line -> line.matches(".*" + hold + "[,}].*"));
      } catch (IOException broken) {
        throw new UncheckedIOException(broken);
      }
    }

    /** How far is a task: its days that are left, against what it has earned of 1000 EUR. */
    private void howFar() {
      Matcher earned = EARNED.matcher(say("report", "--out", "-", "budget"));
      if (!earned.find()) {
        return;
      }
      BigDecimal left = BigDecimal.ZERO;
      for (JsonNode task : ahead.get("tasks")) {
        if (task.get("task").asText().equals(GeneratedBuild.METER)) {
          LocalDate from = LocalDate.parse(task.get("from").asText());
          LocalDate finish = LocalDate.parse(task.get("finish").asText());
          left = BigDecimal.valueOf(ChronoUnit.DAYS.between(from, finish) + 1);
        }
      }
      same(
          "what the plan leaves of the meter’s ten days, and what it has earned",
          left.stripTrailingZeros(),
          BigDecimal.TEN
              .subtract(new BigDecimal(earned.group(1)).movePointLeft(2))
              .stripTrailingZeros());
    }

    /** How many are open, what is promised, which way out: the report, the list and the ways. */
    private void shortages() {
      Map<String, String> list = new LinkedHashMap<>();
      each(
          json("options", "--format", "json").get("shortages"),
          row ->
              list.put(
                  row.get("shortage").asText(),
                  row.get("open").asText().replaceAll(" .*", "")
                      + " "
                      + row.path("decided").asText("–")));
      Set<String> told = new TreeSet<>();
      for (Row row : rows(shortagesPage, "Way out")) {
        String id = row.id("Missing");
        told.add(id);
        JsonNode ways = json("options", id, "--format", "json");
        String way = row.of("Way out").replaceAll("[;:].*", "");
        String decided = ways.hasNonNull("decided") ? ways.get("decided").asText() : "not chosen";
        same("way out of " + id, way, decided);
        String open = row.of("Open").replaceAll(" .*", "");
        same("open of " + id, open, ways.get("open").asText().replaceAll(" .*", ""));
        same(
            "listed of " + id,
            open + " " + (decided.equals("not chosen") ? "–" : decided),
            String.valueOf(list.get(id)));
        promised(row, ways, id);
      }
      same("open shortages, in the report and in the list", told, new TreeSet<>(list.keySet()));
    }

    private void promised(Row row, JsonNode ways, String id) {
      Matcher day = DAY.matcher(row.of("Way out"));
      if (row.of("Way out").contains("promised for") && day.find()) {
        LocalDate promised = LocalDate.parse(day.group());
        for (JsonNode way : ways.get("ways")) {
          if (way.get("name").asText().equals("wait") && promised.isAfter(GeneratedBuild.TODAY)) {
            same("promised for " + id, day.group(), way.path("arrives").asText());
          }
        }
      }
    }

    /** “Task C from 2026-03-31, the whole plan from 2026-04-02” is needed by the later. */
    private static String lastDay(String stops) {
      Matcher day = DAY.matcher(stops);
      String last = "–";
      while (day.find()) {
        last = day.group();
      }
      return last;
    }

    /** When is it needed, and by when must one act: the reports, the list and the ways. */
    private void needed() {
      Map<String, String> needed = new LinkedHashMap<>();
      Set<String> dated = new TreeSet<>();
      for (JsonNode matter : open) {
        String id = matter.get("record").asText().replaceAll(".* ", "");
        if (matter.get("record").asText().startsWith("shortage ")) {
          needed.put(id, matter.path("needed-by").asText("–"));
        }
        if (matter.has("last-day")) {
          dated.add(
              id
                  + " "
                  + matter.get("last-day").asText()
                  + " "
                  + matter.path("needed-by").asText("–"));
        }
      }
      for (Row row : rows(shortagesPage, "Needed by")) {
        String id = row.id("Missing");
        if (row.cells().containsKey("Way out") && needed.containsKey(id)) {
          same("needed by, of " + id, row.of("Needed by"), needed.get(id));
          JsonNode ways = json("options", id, "--format", "json");
          same(
              "needed by, among the ways of " + id,
              row.of("Needed by"),
              ways.path("needed-by").asText("–"));
        }
      }
      Set<String> told = new TreeSet<>();
      for (Row row : rows(openPage, "Act by")) {
        told.add(row.id("What") + " " + row.of("Act by") + " " + lastDay(row.of("Stops")));
      }
      same("act by and needed by, in the report and as JSON", told, dated);
    }

    /** What may start, and what waits: the page for tomorrow, the look-ahead and the week. */
    private void tomorrow() {
      JsonNode page = json("tomorrow", "--format", "json");
      Set<String> start = named(crew, "May start");
      Map<String, List<String>> lacks = new LinkedHashMap<>();
      each(
          ahead.get("tasks"),
          task -> {
            List<String> all = new ArrayList<>();
            task.get("lacks").forEach(lack -> all.add(lack.asText()));
            // Waits may end tonight and goods may come; a signature is there today or not.
            all.removeIf(lack -> !lack.startsWith("signature"));
            lacks.put(task.get("what").asText(), all);
          });
      List<String> ready = new ArrayList<>(List.of(page.path("first").asText()));
      page.path("ready").forEach(line -> ready.add(line.asText()));
      for (String line : ready) {
        Matcher task = TASK.matcher(line);
        if (task.lookingAt()) {
          same(
              "lacks, ready tomorrow: " + line,
              List.of(),
              lacks.getOrDefault(task.group(), List.of()));
        }
      }
      for (JsonNode line : page.path("waiting")) {
        Matcher task = TASK.matcher(line.asText());
        if (task.lookingAt() && line.asText().contains("signature")) {
          same("waits tomorrow and may start: " + line, false, start.contains(task.group()));
        }
      }
    }

    /**
     * Where nothing is dated tomorrow, the page for tomorrow lets go what the look-ahead of that
     * day does, and nothing else.
     */
    private void tomorrowAsTold() {
      LocalDate day = GeneratedBuild.TODAY.plusDays(1);
      if (isDated(folder, day)) {
        return;
      }
      JsonNode page = json("tomorrow", "--format", "json");
      Set<String> ready = new TreeSet<>();
      List<String> lines = new ArrayList<>(List.of(page.path("first").asText()));
      page.path("ready").forEach(line -> lines.add(line.asText()));
      for (String line : lines) {
        Matcher task = TASK.matcher(line);
        if (task.lookingAt()) {
          ready.add(task.group());
        }
      }
      Set<String> free = new TreeSet<>();
      for (JsonNode task :
          tree(sayOn(day, "ahead", "--weeks", "60", "--format", "json")).get("tasks")) {
        if (task.get("lacks").isEmpty()) {
          free.add(task.get("what").asText());
        }
      }
      same("may start tomorrow, on the page and ahead", ready, free);
    }

    /** What the count says is missing and nobody recorded: the findings and the kit’s table. */
    private void kit() {
      Map<String, String> open = new LinkedHashMap<>();
      each(
          json("kit", "--format", "json").get("items"),
          row -> open.put(row.get("item").asText(), row.get("open").asText()));
      for (JsonNode finding : findings("counted-short-unrecorded")) {
        for (JsonNode record : finding.get("records")) {
          String item = record.asText().replaceFirst(".* ", "");
          if (open.containsKey(item)) {
            String told = open.get(item);
            same("found short, and open in the kit: " + item, false, told.matches("0\\b.*"));
          }
        }
      }
    }

    /** When is it needed: a letter, and the ways out as they stood on the day it was sent. */
    private void letters() {
      for (String number : List.of("0", "1")) {
        String letter = say("claim", "c" + number).replaceAll("[\\s\u00a0]+", " ");
        Matcher must = MUST_BE_HERE.matcher(letter);
        if (must.find()) {
          JsonNode ways =
              tree(sayOn(GeneratedBuild.SENT, "options", "s" + number, "--format", "json"));
          same(
              "needed by, in the letter of c" + number,
              LocalDate.parse(must.group(1), LONG_DAY).toString(),
              ways.path("needed-by").asText("–"));
        }
      }
    }

    /** What is spent and ordered of a line: the budget and the findings. */
    private void money() {
      Map<String, BigDecimal> spent = new LinkedHashMap<>();
      each(
          json("budget", "--format", "json").get("lines"),
          line ->
              spent.put(
                  line.get("title").asText(), euros(line, "paid").add(euros(line, "ordered"))));
      for (JsonNode finding : findings("line-over-budget")) {
        Matcher told = STANDS_AT.matcher(finding.get("message").asText());
        assertThat(told.find()).as(finding.toString()).isTrue();
        same(
            "spent and ordered of " + told.group(1),
            new BigDecimal(told.group(2)),
            spent.getOrDefault(told.group(1), BigDecimal.ZERO));
      }
    }

    private static BigDecimal euros(JsonNode line, String column) {
      return new BigDecimal(line.path(column).asText("0.00 EUR").replace(" EUR", ""));
    }

    /** What waits for a signature: the findings and the report. */
    private void holds() {
      Map<String, String> points = new LinkedHashMap<>();
      rows(substitutionsPage, "Hold point")
          .forEach(row -> points.put(row.id("Substitution"), row.of("Hold point")));
      for (JsonNode finding : findings("hold-point-near")) {
        for (JsonNode record : finding.get("records")) {
          String id = record.asText().replaceFirst("^substitution ", "");
          if (points.containsKey(id)) {
            same("found near, and released: " + id, false, points.get(id).equals("released"));
          }
        }
      }
    }

    private List<JsonNode> findings(String rule) {
      List<JsonNode> found = new ArrayList<>();
      each(
          check.get("findings"),
          finding -> {
            if (finding.get("rule").asText().equals(rule)) {
              found.add(finding);
            }
          });
      return found;
    }
  }
}
