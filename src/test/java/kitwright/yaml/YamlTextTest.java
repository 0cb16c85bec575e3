package kitwright.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.value.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts to placed values: every scalar is what was written, and stands where it was written. */
class YamlTextTest {
  private final Findings faults = new Findings();

  /** What YAML 1.1 turns into truth values, numbers and dates stays the text that it is. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "on",
        "off",
        "yes",
        "no",
        "y",
        "n",
        "true",
        "1_000",
        "012",
        "0o14",
        "0x1F",
        "0b101",
        "190:20:30",
        "1:30",
        ".5",
        "5.",
        "1e3",
        ".inf",
        ".nan",
        "2026-01-05",
        "2026-01-05T10:00:00",
        "<<",
        "="
      })
  void aPlainScalarIsItsText(String text) {
    assertThat(value("kit: [" + text + "]")).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"~", "null", ""})
  void nothingWrittenIsEmptyUnlessQuoted(String text) {
    Node plain = values("kit:\n  - a: " + text + "\n").get(0);
    Node quoted = values("kit:\n  - a: \"" + text + "\"\n").get(0);
    assertThat(scalar(plain, "a").isEmpty()).isTrue();
    assertThat(scalar(quoted, "a").isEmpty()).isFalse();
    assertThat(scalar(quoted, "a").text()).isEqualTo(text);
  }

  @Test
  void quotesGoAndTheirEscapesAreRead() {
    assertThat(value("kit: ['it''s']")).isEqualTo("it's");
    assertThat(value("kit: [\"a\\tb \\u00e9 \\\"c\\\"\"]")).isEqualTo("a\tb é \"c\"");
    assertThat(value("kit: ['012 # no comment']")).isEqualTo("012 # no comment");
  }

  @Test
  void textsOfSeveralLinesAreJoinedAsYamlSays() {
    assertThat(value("kit:\n  - |\n    one\n    two\n")).isEqualTo("one\ntwo\n");
    assertThat(value("kit:\n  - >-\n    one\n    two\n\n    three\n")).isEqualTo("one two\nthree");
    assertThat(value("kit:\n  - one\n    two\n")).isEqualTo("one two");
  }

  @Test
  void eachItemComesByItselfUnderItsTopKey() {
    assertThat(read("kit:\n  - a\n  - b\nstock: c\ntasks:\n"))
        .containsExactly("kit=a", "kit=b", "stock=c", "tasks=");
  }

  @Test
  void severalDocumentsOfAFileAreReadAsOne() {
    assertThat(read("---\nkit: [a]\n...\n---\nkit: [b]\n---\n# nothing\n"))
        .containsExactly("kit=a", "kit=b");
    assertThat(faults.inOrder()).isEmpty();
  }

  static Stream<Arguments> places() {
    return Stream.of(
        Arguments.of("kit: [{id: a}]", 1, 12),
        Arguments.of("kit:\n  - id: a\n", 2, 9),
        Arguments.of("kit:\r\n  - id: a\r\n", 2, 9),
        Arguments.of("# ä\nkit:\n  - {é: 1, id: a}\n", 3, 16),
        Arguments.of("kit:\n  - {x: \"⛵🛠\", id: a}\n", 2, 19),
        Arguments.of("\n\nkit:\n\n  - id:   a   # so\n", 5, 11));
  }

  @ParameterizedTest
  @MethodSource("places")
  void aPlaceCountsLinesAndCodePointsFromOne(String text, int line, int column) {
    assertThat(scalar(values(text).get(0), "id").at())
        .isEqualTo(new Place("x.yaml", line, column, line, column + 1));
  }

  @Test
  void thePlaceOfAQuotedTextIncludesItsQuotes() {
    assertThat(scalar(values("kit: [{id: 'ab'}]").get(0), "id").at())
        .isEqualTo(new Place("x.yaml", 1, 12, 1, 16));
  }

  @Test
  void linesBeforeTheTextAreCounted() {
    List<Place> places = new ArrayList<>();
    YamlText.readOne(
        "d.md",
        "day: 2026-01-05\nhours: {nora: 2}\n",
        1,
        new Recall(),
        (k, v) -> places.add(k.at()),
        faults);
    assertThat(places).extracting(Place::toString).containsExactly("d.md:2:1", "d.md:3:1");
  }

  @Test
  void aSecondOfAKeyIsToldAndTheFirstStands() {
    Node record = values("kit:\n  - {id: a, qty: 1, id: b}\n").get(0);
    assertThat(scalar(record, "id").text()).isEqualTo("a");
    assertThat(faults.inOrder())
        .singleElement()
        .satisfies(fault -> assertThat(fault.rule()).isEqualTo("key-twice"))
        .satisfies(fault -> assertThat(fault.at()).hasToString("x.yaml:2:21"));
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 23, 24, 25, 26, 40})
  void aSecondOfAKeyIsToldHoweverManyKeysThereAre(int keys) {
    StringBuilder text = new StringBuilder("kit:\n  - {");
    IntStream.range(0, keys).forEach(i -> text.append("k").append(i).append(": 1, "));
    values(text + "k" + (keys - 1) + ": 2, k0: 2}\n");
    assertThat(faults.inOrder())
        .extracting(Finding::rule)
        .containsExactly("key-twice", "key-twice");
  }

  /** A load of 10 N and one of 90 kN: nothing is worked out of either. */
  @Test
  void ofTwoValuesOfAKeyNeitherIsTaken() {
    Node record =
        values("assessments:\n  - {id: a, load: {force: 10 N, force: 90 kN, span: 1 m}}\n").get(0);
    Node.Mapping load = (Node.Mapping) ((Node.Mapping) record).get("load").orElseThrow();
    assertThat(load.get("force")).containsInstanceOf(Node.Unreadable.class);
    assertThat(load.get("span")).containsInstanceOf(Node.Scalar.class);
  }

  @Test
  void aSecondOfATopKeyIsTold() {
    assertThat(read("kit: [a]\nkit: [b]\n")).containsExactly("kit=a");
    assertThat(faults.inOrder()).extracting(Finding::rule).containsExactly("key-twice");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "kit:\n  - {id: a, what: \"b # c\", at: one # two}\n  - {id: d}\n",
        "kit: [one,\n  {id: a, what: \"b # c\", at: one # two}]\n",
      })
  void aCommentThatSwallowsABracketIsToldAtItsSign(String text) {
    values(text);
    assertThat(faults.inOrder())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.what())
                  .isEqualTo("The # begins a comment, and the closing bracket stands in it.");
              assertThat(fault.at().line()).isEqualTo(2);
              String line = text.lines().toList().get(1);
              assertThat(fault.at().column()).isEqualTo(line.indexOf("# two") + 1);
            });
  }

  @Test
  void whatCameBeforeABreakIsRead() {
    assertThat(read("kit:\n  - a\n  - b\n  - [c\nstock: d\n")).startsWith("kit=a", "kit=b");
    assertThat(faults.inOrder()).extracting(Finding::rule).containsExactly("yaml-unreadable");
  }

  @Test
  void theFirstOfAKindEndsTheReading() {
    String text = "kit: [a]\nbuild: {name: Wherry}\nstock: [\n";
    assertThat(YamlText.first("x.yaml", text, "build"))
        .hasValueSatisfying(
            build -> assertThat(scalar(build.value(), "name").text()).isEqualTo("Wherry"));
    assertThat(YamlText.first("x.yaml", text, "tasks")).isEmpty();
  }

  @Test
  void oddLineBreaksOfUnicodeStayInTheTextAndShiftNothing() {
    Node record = values("kit:\n  - {what: \"a\u2028b\u0085c\", id: d}\n").get(0);
    assertThat(scalar(record, "what").text()).isEqualTo("a\u2028b\u0085c");
    assertThat(scalar(record, "id").at()).hasToString("x.yaml:2:25");
  }

  private String value(String text) {
    return ((Node.Scalar) values(text).get(0)).text();
  }

  private List<Node> values(String text) {
    List<Node> values = new ArrayList<>();
    YamlText.read("x.yaml", text, new Recall(), (key, value) -> values.add(value), faults);
    return values;
  }

  private List<String> read(String text) {
    List<String> all = new ArrayList<>();
    YamlText.read(
        "x.yaml",
        text,
        new Recall(),
        (key, value) ->
            all.add(key.text() + "=" + (value instanceof Node.Scalar one ? one.text() : "?")),
        faults);
    return all;
  }

  private static Node.Scalar scalar(Node record, String key) {
    return (Node.Scalar) ((Node.Mapping) record).get(key).orElseThrow();
  }
}
