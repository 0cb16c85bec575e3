package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitwright.finding.Findings;
import kitwright.kit.Positions;
import kitwright.kit.StockPosition;
import kitwright.ledger.Facts;
import kitwright.ledger.LedgerFolder;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.Stock;
import kitwright.value.Size;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

/**
 * What lies on the rack, what a plan takes of it and what it puts back: in the steps at the bench,
 * in JSON, in the records that {@code --done} writes, and in what is told afterwards. And what a
 * report tells in JSON is what the command of its matter tells. The same builds on every run.
 */
class RackTellingsProperties {
  private static final LocalDate TODAY = GeneratedBuild.TODAY;
  private static final String MM = "([0-9]+(?:\\.[0-9])?)";

  @Property(generation = GenerationMode.EXHAUSTIVE, shrinking = ShrinkingMode.OFF)
  void benchJsonAndLedgerTellTheSameCuts(@ForAll @IntRange(min = 1, max = 10) int seed)
      throws IOException {
    inBuild(
        seed,
        folder -> {
          for (JsonNode cut : json(folder, "cut").get("cuts")) {
            if (!cut.has("done")) {
              told(folder, cut.get("cut").asText());
            }
          }
        });
  }

  @Property(generation = GenerationMode.EXHAUSTIVE, shrinking = ShrinkingMode.OFF)
  void aReportTellsInJsonWhatItsCommandTells(@ForAll @IntRange(min = 1, max = 6) int seed)
      throws IOException {
    inBuild(
        seed,
        folder -> {
          for (String[] both :
              new String[][] {
                {"open", "open"}, {"ahead", "ahead"}, {"claims", "claim"}, {"budget", "budget"}
              }) {
            JsonNode report = json(folder, "report", both[0], "--out", "-");
            JsonNode command = json(folder, both[1]);
            for (Map.Entry<String, JsonNode> each : command.properties()) {
              if (each.getKey().equals("drawing") || each.getKey().equals("work")) {
                continue; // only the report draws, and tells money against work done
              }
              assertThat(report.get(each.getKey()))
                  .as("report " + both[0] + ": " + each.getKey())
                  .isEqualTo(each.getValue());
            }
          }
        });
  }

  /** Six boards, two gone: a substitution and a task are promised three of the rest. */
  private static final String RACK =
      """
      build: {name: Gen, currency: EUR, started: 2026-02-02}
      parties: [{id: me, name: Me, role: builder}]
      stock: [{id: k0, what: Board, size: 1200 x 120 x 20 mm, pieces: 6}]
      kit: [{id: rail, what: rail, qty: 2}]
      tasks:
        - {id: t0, what: A, takes: 2 d}
        - {id: t1, what: B, takes: 2 d, uses: [{stock: k0, qty: 1}]}
        - {id: t2, what: C, takes: 2 d, uses: [{item: rail, qty: 2}]}
        - {id: t3, what: D, takes: 1 d}
      shortages:
        - {id: s0, item: rail, qty: 2, found: 2026-03-01, cause: not-packed,
           options: [{kind: substitute, substitution: b0}]}
      substitutions:
        - {id: b0, for: s0, instead-of: {item: rail, qty: 2}, use: [{stock: k0, qty: 2}], why: here,
           grade: finish, proposed: {by: me, on: 2026-03-02}, hold: t2}
      cuts:
        - {id: u0, task: t0, from: [k0], kerf: 3 mm, keep: 200 x 40 mm,
           parts: [{mark: rib, length: 1100 mm, width: 100 mm, qty: 9}]}
        - {id: u1, task: t3, from: [k0], kerf: 3 mm, done: 2026-03-03, keep: 200 x 40 mm,
           used: [{stock: k0, pieces: 1}],
           parts: [{mark: rib, length: 1100 mm, width: 100 mm, qty: 1}]}
      """;

  @Example
  void aBoardIsToldToBeThereOnlyOnce() throws IOException {
    inFolder(
        folder -> {
          Files.writeString(folder.resolve("ledger.yaml"), RACK);
          Files.createDirectories(folder.resolve("log"));
          Files.writeString(
              folder.resolve("log/2026-03-04.md"),
              "---\nday: 2026-03-04\nused: [{stock: k0, qty: 1}]\n---\n\nWork.\n");
          StockPosition rack = Positions.on(facts(folder)).allStock().get(0);
          assertThat(rack.left()).hasToString("4 each");
          assertThat(rack.free()).hasToString("1 each");
          JsonNode plan = json(folder, "cut", "u0");
          assertThat(plan.get("used").toString()).isEqualTo("[{\"stock\":\"k0\",\"qty\":1}]");
          JsonNode takes = json(folder, "options", "s0").get("ways").get(0).get("takes").get(0);
          assertThat(takes.get("left.number").asInt()).as("4 at hand, 2 for it").isEqualTo(2);
          JsonNode need = json(folder, "ahead", "--weeks", "60").get("needs").get(0);
          assertThat(need.get("thing").asText()).isEqualTo("stock k0");
          assertThat(need.get("missing.number").asInt()).isZero();
        });
  }

  private interface Look {
    void at(Path folder) throws IOException;
  }

  private static void inBuild(long seed, Look look) throws IOException {
    inFolder(
        folder -> {
          GeneratedBuild.write(seed, folder);
          look.at(folder);
        });
  }

  private static void inFolder(Look look) throws IOException {
    Path folder = Files.createTempDirectory("rack");
    try {
      look.at(folder);
    } finally {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      }
    }
  }

  private static void told(Path folder, String id) throws IOException {
    JsonNode plan = json(folder, "cut", id);
    String steps = say(folder, "cut", id, "--format", "markdown").replace('\u00a0', ' ');
    Map<String, String> left = new TreeMap<>();
    List<String> atTheBench = new ArrayList<>();
    for (JsonNode piece : plan.get("pieces")) {
      piece.get("remnants").forEach(rest -> left.put(rest.get("id").asText(), sides(rest)));
      piece.get("cuts").forEach(cut -> atTheBench.add(way(cut) + " " + number(cut.get("at"))));
    }
    assertThat(kept(steps)).as("left of " + id).isEqualTo(left);
    assertThat(cuts(steps, plan)).containsExactlyInAnyOrderElementsOf(atTheBench);
    plan.get("tally")
        .forEach(
            part ->
                assertThat(found(steps, "\\b(" + part.get("mark").asText() + ") [0-9]+, "))
                    .as("made at the bench of " + part)
                    .hasSize(part.get("made").asInt()));
    done(folder, id, plan, left);
  }

  /** What the steps say to keep: its sides, by what is written on it. */
  private static Map<String, String> kept(String steps) {
    Map<String, String> all = new TreeMap<>();
    Matcher each =
        Pattern.compile("keep " + MM + " x " + MM + " mm, mark it ([a-z0-9-]+)").matcher(steps);
    while (each.find()) {
      all.put(each.group(3), each.group(1) + " " + each.group(2));
    }
    return all;
  }

  /** The cuts of the steps; a line that trims tells two. */
  private static List<String> cuts(String steps, JsonNode plan) {
    List<String> all = new ArrayList<>(found(steps, "(cross|rip)(?:-cut)? at " + MM + " mm from"));
    Matcher kerf = Pattern.compile("Kerf ([0-9]+) mm").matcher(plan.get("bench").asText(""));
    BigDecimal wide = kerf.find() ? new BigDecimal(kerf.group(1)) : BigDecimal.ZERO;
    Matcher trim =
        Pattern.compile(
                "trim the (ends|edges): the piece begins at " + MM + " mm and ends at " + MM)
            .matcher(steps);
    while (trim.find()) {
      String way = trim.group(1).equals("ends") ? "cross " : "rip ";
      all.add(way + number(new BigDecimal(trim.group(2)).subtract(wide)));
      all.add(way + number(new BigDecimal(trim.group(3))));
    }
    return all;
  }

  /** After the cut: the ledger, the cut and the rack say what the plan said. */
  private static void done(Path folder, String id, JsonNode plan, Map<String, String> left)
      throws IOException {
    Map<String, Integer> before = rack(folder);
    Run booked = Run.in(folder, "cut", id, "--done", "--today", TODAY.toString());
    if (booked.err().contains("is done since")) {
      return; // written with a day that lies ahead: nothing is booked twice
    }
    assertThat(booked.code()).as(booked.err()).isZero();
    JsonNode done = json(folder, "cut", id);
    assertThat(done.get("used")).as("taken by " + id).isEqualTo(plan.get("used"));
    List<String> names = new ArrayList<>();
    done.path("left-overs").forEach(each -> names.add(each.asText()));
    assertThat(names).as("left-overs of " + id).containsExactlyInAnyOrderElementsOf(left.keySet());
    Map<String, Integer> after = rack(folder);
    plan.get("used")
        .forEach(
            each ->
                assertThat(after.get(each.get("stock").asText()))
                    .as("left of " + each)
                    .isEqualTo(
                        before.getOrDefault(each.get("stock").asText(), 0)
                            - each.get("qty").asInt())
                    .isNotNegative());
    Map<String, String> sizes = new TreeMap<>();
    for (Stock stock : facts(folder).ledger().stock()) {
      if (names.contains(stock.id())) {
        Size size = stock.size().orElseThrow();
        sizes.put(stock.id(), number(size.length()) + " " + number(size.width()));
      }
    }
    assertThat(sizes).as("on the rack after " + id).isEqualTo(left);
  }

  private static Map<String, Integer> rack(Path folder) throws IOException {
    Map<String, Integer> left = new TreeMap<>();
    for (StockPosition each : Positions.on(facts(folder)).allStock()) {
      left.put(each.stock().id(), each.left().amount().intValue());
    }
    return left;
  }

  private static Facts facts(Path folder) throws IOException {
    Findings faults = new Findings();
    return Facts.of(
        LedgerReader.read(LedgerFolder.at(folder).files(faults), paths -> Map.of(), faults)
            .orElseThrow(),
        TODAY);
  }

  private static List<String> found(String text, String pattern) {
    List<String> all = new ArrayList<>();
    Matcher each = Pattern.compile(pattern).matcher(text);
    while (each.find()) {
      all.add(each.groupCount() > 1 ? each.group(1) + " " + each.group(2) : each.group(1));
    }
    return all;
  }

  private static String way(JsonNode cut) {
    return cut.get("way").asText();
  }

  private static String sides(JsonNode rect) {
    return number(rect.get("length")) + " " + number(rect.get("width"));
  }

  private static String number(JsonNode number) {
    return number(number.decimalValue());
  }

  private static String number(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }

  private static JsonNode json(Path folder, String... words) throws IOException {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--format", "json"));
    return new ObjectMapper().readTree(say(folder, all.toArray(String[]::new)));
  }

  private static String say(Path folder, String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--today", TODAY.toString()));
    return Run.in(folder, all.toArray(String[]::new)).out();
  }
}
