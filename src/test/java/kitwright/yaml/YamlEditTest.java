package kitwright.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import kitwright.finding.Findings;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** One value changes, and every byte outside it stays. */
class YamlEditTest {
  private static final String FILE =
      """
      # the mast
      tasks:
        - id: glue    # first
          what: 'Glue'
          after: [plane]   # and no other
          started: 2026-02-03 # late

        # then
        - {id: plane, what: Plane, uses: [{item: stave, qty: 4}]}
        - id: sand
          tools:
            - jigsaw   # Pell's
          finished:
      """;

  @Test
  void aNewKeyStandsBelowTheLastWithItsIndentation() {
    assertThat(set("glue", "finished", "2026-02-05"))
        .isEqualTo(FILE.replace("# late\n", "# late\n    finished: 2026-02-05\n"));
  }

  @Test
  void aNewKeyOfAGroupInBracketsStandsBeforeTheBracket() {
    assertThat(set("plane", "started", "2026-02-01"))
        .isEqualTo(FILE.replace("qty: 4}]}", "qty: 4}], started: 2026-02-01}"));
  }

  @Test
  void aValueIsReplacedAndItsCommentStays() {
    assertThat(set("glue", "started", "2026-02-04"))
        .isEqualTo(FILE.replace("2026-02-03 # late", "2026-02-04 # late"));
    assertThat(set("sand", "finished", "2026-02-09"))
        .isEqualTo(FILE.replace("finished:\n", "finished: 2026-02-09\n"));
  }

  @Test
  void anItemGoesBehindTheLast() {
    assertThat(add("glue", "after", "saw")).isEqualTo(FILE.replace("[plane]", "[plane, saw]"));
    assertThat(add("sand", "tools", "plane"))
        .isEqualTo(FILE.replace("# Pell's\n", "# Pell's\n      - plane\n"));
    assertThat(add("sand", "who", "me"))
        .isEqualTo(FILE.replace("finished:\n", "finished:\n    who: [me]\n"));
    assertThat(add("plane", "what", "x"))
        .isEqualTo(FILE.replace("what: Plane", "what: [Plane, x]"));
  }

  @Test
  void aRecordThatIsNotThereOrTwiceIsRefused() {
    assertThat(YamlEdit.record(FILE, "tasks", "id", "saw")).isEmpty();
    assertThat(YamlEdit.record("a: [{id: x}, {id: x}]", "a", "id", "x")).isEmpty();
    assertThat(YamlEdit.record("a: [", "a", "id", "x")).isEmpty();
  }

  @Test
  void lineEndsStayAsTheyAre() {
    String windows = FILE.replace("\n", "\r\n");
    assertThat(
            YamlEdit.record(windows, "tasks", "id", "glue")
                .flatMap(edit -> edit.set("finished", "x")))
        .contains(windows.replace("# late\r\n", "# late\r\n    finished: x\r\n"));
    String unended = "tasks:\n  - id: a";
    assertThat(YamlEdit.record(unended, "tasks", "id", "a").flatMap(edit -> edit.set("b", "c")))
        .contains("tasks:\n  - id: a\n    b: c");
  }

  /**
   * Reading again gives the record meant and all others as they were; the rest is the same text.
   */
  @Property(tries = 2_000)
  void outsideTheChangeEveryByteStays(
      @ForAll("files") String file, @ForAll("keys") String key, @ForAll boolean more) {
    Optional<String> edited =
        YamlEdit.record(file, "x", "id", "b")
            .flatMap(edit -> more ? edit.add(key, "new") : edit.set(key, "new"));
    if (edited.isEmpty()) {
      return;
    }
    String after = edited.get();
    assertThat(after.length() - file.length()).as(after).isLessThan(40).isGreaterThan(-60);
    List<String> before = read(file);
    List<String> now = read(after);
    assertThat(now).as(after).hasSameSizeAs(before);
    for (int i = 0; i < before.size(); i++) {
      if (before.get(i).contains("id=b")) {
        assertThat(now.get(i)).as(after).contains(key + "=").contains("new");
        assertThat(without(now.get(i), key)).as(after).isEqualTo(without(before.get(i), key));
      } else {
        assertThat(now.get(i)).isEqualTo(before.get(i));
      }
    }
    assertThat(comments(after)).as("comments of " + after).isEqualTo(comments(file));
  }

  private static List<String> comments(String text) {
    return Pattern.compile("# (said|é|last|head|between)")
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .toList();
  }

  private static String without(String record, String key) {
    return record
        .lines()
        .filter(line -> !line.startsWith(key + "="))
        .collect(Collectors.joining("\n"));
  }

  @Provide
  Arbitrary<String> keys() {
    return Arbitraries.of("what", "list", "more", "none");
  }

  @Provide
  Arbitrary<String> files() {
    Arbitrary<String> value =
        Arbitraries.of("w", "'q # q'", "\"é: ü\"", "two words", "[a, b]", "[]", "{m: 1}", "⛵", "");
    Arbitrary<String> comment = Arbitraries.of("", "", "  # said", " # é");
    Arbitrary<String> list =
        Arbitraries.of("[p, q]", "[]", "p", "\n      - p\n      - q  # last", "\n    - p", "");
    Arbitrary<String> block =
        Combinators.combine(value, comment, list, comment)
            .as((v, c, l, d) -> "    what: " + v + c + "\n    list: " + l + d + "\n");
    Arbitrary<String> flow =
        Arbitraries.of("w", "'q, q'", "[a, b]").map(v -> "{id: b, what: " + v + ", list: [p]}");
    Arbitrary<String> records =
        Combinators.combine(block, block, flow, Arbitraries.integers().between(0, 1))
            .as(
                (first, second, third, which) ->
                    "  - id: a\n"
                        + first
                        + "\n"
                        + (which == 0 ? "  - id: b\n" + second : "  - " + third + "\n")
                        + "  # between\n  - id: c\n    what: end\n");
    return Combinators.combine(records, Arbitraries.of("\n", "\r\n"), Arbitraries.of("", "y: 1\n"))
        .as((all, end, last) -> ("# head\nx:\n" + all + last).replace("\n", end));
  }

  private static List<String> read(String text) {
    List<String> all = new ArrayList<>();
    YamlText.read("x.yaml", text, new Recall(), (key, node) -> all.add(told(node)), new Findings());
    return all;
  }

  private static String told(kitwright.yaml.Node node) {
    if (node instanceof kitwright.yaml.Node.Mapping mapping) {
      return mapping.entries().stream()
          .map(entry -> entry.key().text() + "=" + told(entry.value()).replace("\n", ";"))
          .sorted()
          .collect(Collectors.joining("\n"));
    }
    if (node instanceof kitwright.yaml.Node.Listing list) {
      return list.items().stream().map(YamlEditTest::told).toList().toString();
    }
    return node instanceof kitwright.yaml.Node.Scalar scalar ? scalar.text() : "?";
  }

  private static String set(String id, String key, String value) {
    return YamlEdit.record(FILE, "tasks", "id", id).flatMap(e -> e.set(key, value)).orElseThrow();
  }

  private static String add(String id, String key, String value) {
    return YamlEdit.record(FILE, "tasks", "id", id).flatMap(e -> e.add(key, value)).orElseThrow();
  }
}
