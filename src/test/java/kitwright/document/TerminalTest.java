package kitwright.document;

import static kitwright.document.Block.bullets;
import static kitwright.document.Block.heading;
import static kitwright.document.Block.numbered;
import static kitwright.document.Block.paragraph;
import static kitwright.document.Block.quote;
import static kitwright.document.Column.columns;
import static kitwright.document.Column.head;
import static kitwright.document.Column.left;
import static kitwright.document.Column.middle;
import static kitwright.document.Column.right;
import static kitwright.document.Inline.code;
import static kitwright.document.Inline.newLine;
import static kitwright.document.Inline.picture;
import static kitwright.document.Inline.strong;
import static kitwright.document.Inline.text;
import static kitwright.document.Row.row;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TerminalTest {
  private static final Block TABLE =
      Block.table(
          columns(left("From"), head("Work"), right("Float").named("float-days")),
          List.of(
              row("2026-03-30", "Cut the half bulkheads and berth webs", "31 days"),
              row("2026-04-02", "Oil", "–")));

  private static String at(int width, Block... blocks) {
    return Document.of(blocks).text(width);
  }

  @Test
  void whatStandsUnderAHeadingIsSetInBelowIt() {
    assertThat(
            at(
                40,
                heading(1, "Week 9"),
                paragraph(text("The "), strong("starboard"), text(" side is closed.")),
                heading(2, "Day by day"),
                paragraph(text("one"), newLine(), text("two")),
                heading(3, "Monday"),
                numbered(List.of(text("saw"), text("plane"))),
                heading(2, "Photos"),
                bullets(List.of(picture(Destination.file("a.png"), "the hull"))),
                quote(paragraph("Mind the dust."), paragraph("And the saw.")),
                Block.code("a  b"),
                new Block.Rule(),
                paragraph("The end.")))
        .isEqualTo(
            """
            Week 9

            The starboard side is closed.

            Day by day
              one
              two

              Monday
                1. saw
                2. plane

            Photos
              - the hull (a.png)

              | Mind the dust.
              |
              | And the saw.

              a  b

              --------------------------------------

              The end.
            """);
  }

  @Test
  void aTableThatFitsStandsAsItIs() {
    assertThat(at(60, TABLE))
        .isEqualTo(
            """
            From        Work                                     Float
            2026-03-30  Cut the half bulkheads and berth webs  31 days
            2026-04-02  Oil                                          –
            """);
  }

  @Test
  void aTableThatIsTooWideBreaksItsWordsButNoDayAndNoFigure() {
    assertThat(at(40, TABLE))
        .isEqualTo(
            """
            From        Work                   Float
            2026-03-30  Cut the half         31 days
                        bulkheads and berth
                        webs
            2026-04-02  Oil                        –
            """);
  }

  @Test
  void aTableThatStillDoesNotFitBecomesLabelsAndValuesUnderItsHead() {
    assertThat(at(30, TABLE))
        .isEqualTo(
            """
            Cut the half bulkheads and
            berth webs
              From   2026-03-30
              Float  31 days

            Oil
              From   2026-04-02
            """);
    assertThat(at(12, TABLE))
        .startsWith(
            """
            Cut the half
            bulkheads
            and berth
            webs
              From
                2026-03-30
            """);
  }

  @Test
  void onlyOtherProgramsReadADataColumn() {
    Table table =
        new Table(
            "",
            columns(Column.data("task"), left("Work"), middle("Done")),
            List.of(Row.row(Cell.id("t-1"), Cell.text("Oil"), Cell.yes("x", true))));
    assertThat(at(60, table)).isEqualTo("Work  Done\nOil    x\n");
    assertThat(Document.of(table).markdown()).doesNotContain("t-1");
    assertThat(Slots.none().table("rows", table).json())
        .contains("\"task\": \"t-1\"")
        .contains("\"done\": true");
  }

  @Test
  void hiddenSignsOfARecordReachNoTerminal() {
    String hostile = "\u001b[31mred\u0007\u202e\u0001";
    assertThat(
            at(
                60,
                heading(1, hostile),
                paragraph(hostile),
                Block.code(hostile),
                Block.prose(hostile, 1),
                bullets(List.of(code(hostile))),
                Block.table(columns(left(hostile)), List.of(row(hostile)))))
        .doesNotContain("\u001b", "\u0007", "\u202e", "\u0001")
        .contains("\\u001b[31mred\\u0007\\u202e\\u0001");
  }

  @Test
  void proseOfTheLogKeepsItsForm() {
    assertThat(
            at(
                50,
                Block.prose(
                    """
                    # Glue
                    A *soft*
                    line\\
                    and a [link](https://a.example/b).

                    | a | b |
                    |--:|:-:|
                    | 1 | 2 |

                    > said

                    - x
                      1. y

                    <b>bold</b>
                    """,
                    2)))
        .isEqualTo(
            """
              Glue
                A soft line
                and a link (https://a.example/b).

                a  b
                1  2

                | said

                - x
                  1. y

                <b>bold</b>
            """);
  }

  @Test
  void aLinkThatSaysWhereItLeadsSaysItOnce() {
    assertThat(
            at(
                60,
                paragraph(
                    new Inline.Link(Destination.file("ahead.svg"), List.of(text("ahead.svg"))),
                    text("."))))
        .isEqualTo("ahead.svg.\n");
  }
}
