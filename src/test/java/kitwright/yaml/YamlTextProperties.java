package kitwright.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitwright.finding.Findings;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Whatever stands in a file, reading ends without a crash, and each value that is handed on stands
 * where its place says. What a value is, the YAML library alone decides.
 */
class YamlTextProperties {
  private static final List<String> PIECES =
      List.of(
          "a",
          "b",
          "key",
          "12",
          "-",
          "- ",
          "-5",
          ":",
          ": ",
          " ",
          "  ",
          "#",
          " # c",
          "'",
          "\"",
          "[",
          "]",
          "{",
          "}",
          ",",
          ", ",
          "|",
          ">",
          "&x",
          "*x",
          "!t",
          "%",
          "@",
          "`",
          "?",
          "? ",
          "é",
          "\u00a0",
          "a: b",
          "- a: 1",
          "x y",
          "''",
          "\"\"",
          "\\",
          "~",
          "null",
          "<<",
          "---",
          "...",
          "=",
          "a:b",
          "12:30",
          "[a, b]",
          "{a: 1}",
          "{a: b, c: d}",
          "[]",
          "{}",
          "\n",
          "\n  ",
          "\n    ",
          "\n- ",
          "\n  - ",
          "\n\n",
          "\nk: ",
          "\n  k: ",
          ",\n  ",
          "\r\n",
          "\t",
          "\u0085",
          "\u2028",
          "\ufeff",
          "\ud83d\ude00",
          "_",
          "/");

  @Property(tries = 4_000)
  void linesInAnyOrder(@ForAll("lines") String text, @ForAll boolean itemByItem) {
    holds(text, itemByItem);
  }

  @Property(tries = 3_000)
  void piecesInAnyOrder(@ForAll("pieces") String text, @ForAll boolean itemByItem) {
    holds(text, itemByItem);
  }

  @Property(tries = 2_000)
  void filesOfTheDemonstrationWithACharacterChanged(
      @ForAll("damaged") String text, @ForAll boolean itemByItem) {
    holds(text, itemByItem);
  }

  @Property(tries = 200)
  void deepNesting(@ForAll("nests") String text, @ForAll boolean itemByItem) {
    holds(text, itemByItem);
  }

  /** What stands right behind a value, and below one that is finished. */
  @Property
  void edges(@ForAll("edges") String text, @ForAll boolean itemByItem) {
    holds(text, itemByItem);
  }

  private static int holds(String text, boolean itemByItem) {
    List<String> lines = List.of(text.split("\\r\\n|\\r|\\n", -1));
    Findings faults = new Findings();
    int[] values = {0};
    BiConsumer<Node.Scalar, Node> taker =
        (key, value) -> {
          values[0]++;
          stands(key, lines);
          stands(value, lines);
        };
    if (itemByItem) {
      YamlText.read("x.yaml", text, new Recall(), taker, faults);
    } else {
      YamlText.readOne("x.yaml", text, 0, new Recall(), taker, faults);
    }
    return values[0];
  }

  /** The properties above see values: these texts, made of their pieces, hand some on. */
  @Example
  void whatIsSaidOfValuesIsSaidOfSome() {
    assertThat(holds("a: b\nkey: [a, b]", false)).isEqualTo(2);
    assertThat(holds("a: b\nkey: {a: 1}", true)).isEqualTo(2);
  }

  private static void stands(Node node, List<String> lines) {
    if (node instanceof Node.Mapping mapping) {
      mapping.entries().forEach(entry -> stands(entry.key(), lines));
      mapping.entries().forEach(entry -> stands(entry.value(), lines));
    } else if (node instanceof Node.Listing list) {
      list.items().forEach(item -> stands(item, lines));
    } else if (node instanceof Node.Scalar scalar
        && !scalar.quoted()
        && scalar.line() == scalar.endLine()
        && !lines.get(scalar.line() - 1).contains("\ufeff")) { // which the library does not count
      String line = lines.get(scalar.line() - 1); // an anchor or a tag may stand before the value
      int from = line.offsetByCodePoints(0, scalar.column() - 1);
      int to = line.offsetByCodePoints(0, scalar.endColumn() - 1);
      assertThat(line.substring(from, to).strip()).endsWith(scalar.text().strip());
    }
  }

  @Provide
  Arbitrary<String> pieces() {
    return Arbitraries.of(PIECES).list().ofMaxSize(14).map(each -> String.join("", each));
  }

  @Provide
  Arbitrary<String> edges() {
    Arbitrary<String> value = Arbitraries.of("'q'", "\"q\"", "[x]", "{x: y}", "[]", "x", "");
    Arbitrary<String> behind =
        Arbitraries.of("", "b: 1", " b: 1", "# c", " # c", ": 1", "'", "\n  b", "\n b: 1", "\n- b");
    Arbitrary<String> before = Arbitraries.of("a: ", "- ", "a:\n  - ", "a:\n- b: ", "a: [1, ");
    return Combinators.combine(before, value, behind).as((a, b, c) -> a + b + c);
  }

  @Provide
  Arbitrary<String> nests() {
    Arbitrary<Integer> depth = Arbitraries.integers().between(1, 40);
    return Combinators.combine(depth, Arbitraries.integers().between(0, 3))
        .as(
            (deep, kind) ->
                switch (kind) {
                  case 0 -> "a: " + "[".repeat(deep) + "]".repeat(deep);
                  case 1 -> "a: " + "{b: ".repeat(deep) + "c" + "}".repeat(deep);
                  case 2 -> stairs(deep, "b:");
                  default -> stairs(deep, "- b:");
                });
  }

  private static String stairs(int deep, String step) {
    return "a:\n"
        + IntStream.rangeClosed(1, deep)
            .mapToObj(each -> "    ".repeat(each) + step + "\n")
            .collect(Collectors.joining());
  }

  @Provide
  Arbitrary<String> lines() {
    Arbitrary<String> before = Arbitraries.of("", "", "y:\n  - {a: 1}\n  - b: 2\nz: 1\n");
    Arbitrary<String> indent = Arbitraries.of("", "", "", "  ", "  ", "    ", "   ");
    Arbitrary<String> dash = Arbitraries.of("", "", "", "- ", "- ", "- - ");
    Arbitrary<String> key = Arbitraries.of("a: ", "b: ", "c: ", "d: ", "e:", "f :", "g:", "");
    Arbitrary<String> odd =
        Arbitraries.of(PIECES).list().ofMaxSize(2).map(each -> String.join("", each));
    Arbitrary<String> value =
        Arbitraries.oneOf(Arbitraries.of("", "x y", "'q'", "[a, {b: 1}] # c"), odd);
    Arbitrary<List<String>> lines =
        Combinators.combine(indent, dash, key, value)
            .as((a, b, c, d) -> a + b + c + d)
            .list()
            .ofMinSize(1)
            .ofMaxSize(5);
    return Combinators.combine(before, lines).as((a, b) -> a + String.join("\n", b).stripLeading());
  }

  @Provide
  Arbitrary<String> damaged() {
    Arbitrary<Character> put =
        Arbitraries.of(
            " \n:-#'\"[]{},|>&*!%@`?a1\\\t\u0085\r".chars().mapToObj(each -> (char) each).toList());
    return Combinators.combine(
            Arbitraries.of(demonstration()), Arbitraries.doubles().between(0, 1), put)
        .as(
            (text, where, with) -> {
              int place = (int) (where * (text.length() - 1));
              return text.substring(0, place) + with + text.substring(place + 1);
            });
  }

  private static List<String> demonstration() {
    try (Stream<Path> files = Files.walk(Path.of("ledger"))) {
      List<String> texts = new ArrayList<>();
      for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).sorted().toList()) {
        texts.add(Files.readString(file));
      }
      return texts;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
