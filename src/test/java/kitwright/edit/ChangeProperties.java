package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.SourceFile;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.yaml.snakeyaml.Yaml;

/**
 * Whatever a file looks like, a change touches nothing but what it sets: every other character
 * stands as it stood, and a YAML reader of its own finds the change and nothing else.
 */
class ChangeProperties {
  /** How a file may be written. */
  record Style(String lineEnd, String indent, String comment, List<String> records, String end) {
    String text() {
      StringBuilder out =
          new StringBuilder("build: {name: T, currency: EUR, started: 2026-01-05}\n");
      out.append("tasks:").append(comment).append('\n');
      records.forEach(record -> out.append(record.indent(0)));
      return out.append(end).toString().replace("\n", lineEnd);
    }
  }

  @Provide
  Arbitrary<Style> styles() {
    return Combinators.combine(
            Arbitraries.of("\n", "\r\n"),
            Arbitraries.of("", "  ", "    "),
            Arbitraries.of("", "  # the work", " # id: a, 'quoted"),
            Arbitraries.integers().between(0, 5).list().ofSize(3),
            Arbitraries.of("", "\n\n# the end\n", "kit: []\n"))
        .as(
            (lineEnd, indent, comment, shapes, end) -> {
              List<String> records = new ArrayList<>();
              for (int i = 0; i < shapes.size(); i++) {
                records.add(record("t" + i, shapes.get(i), indent));
              }
              return new Style(lineEnd, indent, comment, records, end);
            });
  }

  private static String record(String id, int shape, String in) {
    return switch (shape) {
      case 0 -> in + "- {id: " + id + ", what: \"a, b\", takes: 1 d}   # one line\n";
      case 1 -> in + "- id: " + id + "\n" + in + "  what: sand   # long\n" + in + "  takes: 2 d\n";
      case 2 ->
          in
              + "- what: 'it''s'\n\n"
              + in
              + "  # between\n"
              + in
              + "  takes: [1 d, 2 d, 4 d]\n"
              + in
              + "  id: "
              + id
              + "\n"
              + in
              + "  phase:\n";
      case 3 ->
          in
              + "-   id: "
              + id
              + "\n"
              + in
              + "    takes: 3 d\n"
              + in
              + "    what: >-\n"
              + in
              + "      glue and\n"
              + in
              + "      clamp\n";
      case 4 ->
          in
              + "- id: "
              + id
              + "\n"
              + in
              + "  takes: 1 d\n"
              + in
              + "  what: ünï 🛶\n"
              + in
              + "  after:\n"
              + in
              + "    - t9   # first\n"
              + in
              + "  phase: \"hull\"  \n";
      default -> in + "- { id: '" + id + "',\n" + in + "    what: x, takes: 5 h, tools: [a, b] }\n";
    };
  }

  @Provide
  Arbitrary<Change> changes() {
    Arbitrary<Change> set =
        Arbitraries.of(
            Change.of("phase", "hull"),
            Change.of("what", "\"a: b, c\""),
            Change.of("started", "2026-03-02"),
            Change.of("progress", "40 %"));
    Arbitrary<Change> add =
        Combinators.combine(
                Arbitraries.of("after", "tools", "who"), Arbitraries.of("t1", "\"x-y\""))
            .as(Change::adding);
    return Arbitraries.oneOf(set, add);
  }

  @Property(tries = 250, edgeCases = EdgeCasesMode.NONE)
  void onlyWhatIsSetChanges(
      @ForAll("styles") Style style, @ForAll("changes") Change change, @ForAll("which") int which) {
    String before = style.text();
    String id = "t" + which;
    Optional<String> changed = change.in(new SourceFile("all.yaml", before), task(before, id));
    if (changed.isEmpty()) {
      return; // refused, and told to be made by hand
    }
    String now = changed.get();
    assertThat(parsed(now)).isEqualTo(meant(before, id, change));
    assertThat(kept(before, now)).as("%s%n-->%n%s", before, now).isTrue();
    Ledger read = read(now);
    assertThat(read.ids(Kind.TASKS)).containsExactly("t0", "t1", "t2");
  }

  @Provide
  Arbitrary<Integer> which() {
    return Arbitraries.integers().between(0, 2);
  }

  /** Most changes are made and few refused, or the law above would say nothing. */
  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void aPlainKeyIsAlwaysSet(@ForAll("styles") Style style, @ForAll("which") int which) {
    String before = style.text();
    String id = "t" + which;
    assertThat(Change.of("budget", "hull").in(new SourceFile("all.yaml", before), task(before, id)))
        .isPresent();
  }

  /** All that was taken out is one stretch on one line, and no comment in it. */
  private static boolean kept(String before, String now) {
    int start = 0;
    while (start < before.length()
        && start < now.length()
        && before.charAt(start) == now.charAt(start)) {
      start++;
    }
    int end = 0;
    while (end < before.length() - start
        && end < now.length() - start
        && before.charAt(before.length() - 1 - end) == now.charAt(now.length() - 1 - end)) {
      end++;
    }
    String out = before.substring(start, before.length() - end);
    String in = now.substring(start, now.length() - end);
    boolean sameEnds = !before.contains("\r\n") || !in.replace("\r\n", "").contains("\n");
    return !out.contains("\n") && !out.contains("#") && sameEnds;
  }

  private static Entry task(String text, String id) {
    return read(text).<Entry>find(Kind.TASKS, id).orElseThrow();
  }

  private static Ledger read(String text) {
    return LedgerReader.read(
            List.of(new SourceFile("all.yaml", text)),
            paths -> {
              Map<String, EvidenceFile> none = new HashMap<>();
              paths.forEach(
                  path ->
                      none.put(
                          path, new EvidenceFile(EvidenceFile.State.ABSENT, Optional.empty())));
              return none;
            },
            new Findings())
        .orElseThrow();
  }

  private static Object parsed(String text) {
    return new Yaml().load(text);
  }

  /** The same change, made on what the YAML means. */
  @SuppressWarnings("unchecked")
  private static Object meant(String before, String id, Change change) {
    Map<String, Object> whole = (Map<String, Object>) parsed(before);
    for (Map<String, Object> task :
        (List<Map<String, Object>>) whole.getOrDefault("tasks", List.of())) {
      if (id.equals(task.get("id"))) {
        change.set().forEach((key, value) -> task.put(key, new Yaml().load(value)));
        change.added().forEach((key, items) -> items.forEach(item -> add(task, key, item)));
      }
    }
    return whole;
  }

  @SuppressWarnings("unchecked")
  private static void add(Map<String, Object> task, String key, String item) {
    List<Object> all = new ArrayList<>();
    Object there = task.get(key);
    if (there instanceof List<?> list) {
      all.addAll((List<Object>) list);
    } else if (there != null) {
      all.add(there);
    }
    all.add(new Yaml().load(item));
    task.put(key, all);
  }

  /** A day of the log keeps its words, and whatever stands between the lines of hyphens. */
  @Property(tries = 100)
  void aDayKeepsItsWords(@ForAll("bodies") String body) {
    String before = "---\nday: 2026-03-02   # Monday\nhours: {me: 5}\n---\n" + body;
    Change change =
        new Change(
            Map.of(),
            Map.of(),
            new LinkedHashMap<>(Map.of("hours", Map.of("pell", "2"))),
            Optional.empty());
    Ledger ledger =
        LedgerReader.read(
                List.of(
                    new SourceFile(
                        "b.yaml",
                        "build: {name: T, currency: EUR, started: 2026-01-05}\nparties: []\n"),
                    new SourceFile("log/d.md", before)),
                paths -> Map.of(),
                new Findings())
            .orElseThrow();
    Entry day = ledger.entries(Kind.LOG).get(0);
    assertThat(change.in(new SourceFile("log/d.md", before), day))
        .contains(before.replace("{me: 5}", "{me: 5, pell: 2}"));
  }

  @Provide
  Arbitrary<String> bodies() {
    return Arbitraries.of(
            "Rain.\n", "---\nnot keys\n---\n", "", "# A day\n\n- {id: x}\n", "ünï\r\nmore")
        .list()
        .ofMaxSize(3)
        .map(parts -> String.join("", parts));
  }
}
