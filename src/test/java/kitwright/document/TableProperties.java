package kitwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import kitwright.value.Money;
import kitwright.value.ScreenWidth;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.IntRange;

/** Laws of a table in each of its forms. */
class TableProperties {
  /** A table whose words are all different, so that each can be found again. */
  @Provide
  Arbitrary<Table> tables() {
    Arbitrary<List<Integer>> lengths =
        Arbitraries.frequencyOf(
                Tuple.of(3, Arbitraries.integers().between(1, 4)),
                Tuple.of(1, Arbitraries.integers().between(0, 14)))
            .list()
            .ofMinSize(1)
            .ofMaxSize(35);
    return Combinators.combine(
            Arbitraries.integers().between(1, 7), Arbitraries.integers().between(0, 6), lengths)
        .as(TableProperties::table);
  }

  private static Table table(int width, int head, List<Integer> lengths) {
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < width; i++) {
      columns.add(
          i == head
              ? Column.head("T" + i)
              : i % 3 == 1 ? Column.right("T" + i) : Column.left("T" + i + " of it"));
    }
    List<Row> rows = new ArrayList<>();
    for (int at = 0; at + width <= lengths.size(); at += width) {
      List<Cell> cells = new ArrayList<>();
      for (int i = 0; i < width; i++) {
        int from = (at + i) * 20;
        List<String> words =
            IntStream.range(from, from + lengths.get(at + i))
                .mapToObj(n -> (n % 7 == 0 ? "木" : "") + "w" + n + "x")
                .toList();
        cells.add(Cell.text(words.isEmpty() ? Cell.NONE : String.join(" ", words)));
      }
      rows.add(new Row(cells));
    }
    return new Table("", columns, rows);
  }

  @Property(tries = 600, seed = "1", edgeCases = EdgeCasesMode.NONE)
  void noLineIsWiderThanTheTerminalUnlessOneWordIs(
      @ForAll("tables") Table table, @ForAll @IntRange(min = 8, max = 160) int width) {
    for (String line : TerminalTable.lines(table, width)) {
      assertThat(ScreenWidth.of(line) <= width || !line.strip().contains(" "))
          .as("“%s” at %d", line, width)
          .isTrue();
    }
  }

  @Property(tries = 600, seed = "2", edgeCases = EdgeCasesMode.NONE)
  void everyCellThatSaysSomethingIsShownOnceAndInOrder(
      @ForAll("tables") Table table, @ForAll @IntRange(min = 8, max = 160) int width) {
    String shown = String.join("\n", TerminalTable.lines(table, width));
    int row = -1;
    for (Row each : table.rows()) {
      int start = row;
      for (Cell cell : each.cells()) {
        int word = start;
        for (String said : PlainWords.of(cell.shown()).split(" ")) {
          if (said.equals(Cell.NONE)) {
            continue;
          }
          int at = shown.indexOf(said);
          assertThat(at).as(said).isGreaterThan(word);
          assertThat(shown.indexOf(said, at + 1)).as(said + " twice").isNegative();
          word = at;
          row = Math.max(row, at);
        }
      }
    }
  }

  private record Typed(Cell cell, String json) {}

  @Provide
  Arbitrary<Typed> cells() {
    Arbitrary<BigDecimal> cents =
        Arbitraries.integers().between(-99_999, 99_999).map(n -> BigDecimal.valueOf(n, 2));
    return Arbitraries.oneOf(
        Arbitraries.strings().alpha().ofMinLength(1).map(t -> new Typed(Cell.text(t), t)),
        Arbitraries.strings().alpha().ofMinLength(1).map(t -> new Typed(Cell.id(t), t)),
        Arbitraries.longs().map(n -> new Typed(Cell.number(n), Long.toString(n))),
        cents.map(n -> new Typed(Cell.number(n.toPlainString(), n), n.toPlainString())),
        cents.map(
            n -> {
              Money money = Money.rounded(n, Currency.getInstance("EUR"));
              return new Typed(Cell.of(money.toString(), new Value.Cash(money)), money.toString());
            }),
        Arbitraries.integers()
            .between(0, 20_000)
            .map(LocalDate::ofEpochDay)
            .map(day -> new Typed(Cell.day(day), day.toString())),
        Arbitraries.just(new Typed(Cell.none(), Cell.NONE)));
  }

  @Property(tries = 300, seed = "3", edgeCases = EdgeCasesMode.NONE)
  void jsonAndMarkdownOfATableHoldTheSameValues(
      @ForAll("cells") Typed one, @ForAll("cells") Typed two, @ForAll("cells") Typed three)
      throws IOException {
    Table table =
        new Table(
            "",
            Column.columns(Column.left("One"), Column.right("Two, kg"), Column.head("Three")),
            List.of(
                Row.row(one.cell(), two.cell(), three.cell()),
                Row.row(three.cell(), one.cell(), two.cell())));
    List<List<String>> markdown =
        ReadBack.cells(Document.of(table).markdown().replace('\u2011', '-'));
    assertThat(markdown.get(0)).containsExactly("One", "Two, kg", "Three");
    List<Map<String, String>> json = read(Slots.none().table("rows", table).json());
    assertThat(json).hasSize(2);
    for (int i = 0; i < 2; i++) {
      Map<String, String> row = json.get(i);
      assertThat(
              List.of(
                  row.getOrDefault("one", Cell.NONE),
                  row.getOrDefault("two-kg", Cell.NONE),
                  row.getOrDefault("three", Cell.NONE)))
          .isEqualTo(markdown.get(i + 1));
      for (String name : List.of("one", "two-kg", "three")) {
        if (row.containsKey(name + ".number")) {
          assertThat(row.get(name + ".number") + " " + row.get(name + ".currency"))
              .as("what is written beside the words is what they say")
              .isEqualTo(row.get(name));
        }
      }
      Set<String> names = new TreeSet<>(row.keySet());
      names.removeIf(name -> name.endsWith(".number") || name.endsWith(".currency"));
      assertThat(names).isSubsetOf("one", "two-kg", "three");
    }
    assertThat(json.get(0).getOrDefault("one", Cell.NONE)).isEqualTo(one.json());
  }

  private static List<Map<String, String>> read(String json) throws IOException {
    List<Map<String, String>> rows = new ArrayList<>();
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      Map<String, String> row = Map.of();
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token == JsonToken.START_OBJECT) {
          row = new HashMap<>();
        } else if (token.isScalarValue()) {
          row.put(parser.currentName(), parser.getText());
        } else if (token == JsonToken.END_OBJECT && parser.currentName() == null) {
          rows.add(row);
        }
      }
    }
    rows.remove(rows.size() - 1); // the object around them
    return rows;
  }

  @Example
  void noLineOfATableBreaksADay() {
    String markdown =
        Document.of(
                Block.table(
                    Column.columns(Column.left("On"), Column.left("What")),
                    List.of(
                        Row.row(
                            Cell.of(Inline.strong("2026-03-30")),
                            Cell.of(
                                Inline.together(
                                    Inline.text("from 2026-04-01, of 2026-04-022 or a-2026-04-03 "),
                                    Inline.code("claim-2026-03-28")))))))
            .markdown();
    assertThat(markdown)
        .contains(
            "| **2026\u201103\u201130** ",
            "from 2026\u201104\u201101, of 2026-04-022 or a-2026-04-03 `claim-2026-03-28`");
    assertThat(Document.of(Block.paragraph("on 2026-03-30")).markdown())
        .isEqualTo("on 2026-03-30\n");
  }
}
