package kitwright.document;

import static kitwright.document.Block.bullets;
import static kitwright.document.Block.heading;
import static kitwright.document.Block.numbered;
import static kitwright.document.Block.paragraph;
import static kitwright.document.Block.quote;
import static kitwright.document.Block.table;
import static kitwright.document.Column.columns;
import static kitwright.document.Column.left;
import static kitwright.document.Column.middle;
import static kitwright.document.Column.right;
import static kitwright.document.Inline.code;
import static kitwright.document.Inline.emphasis;
import static kitwright.document.Inline.newLine;
import static kitwright.document.Inline.picture;
import static kitwright.document.Inline.strong;
import static kitwright.document.Inline.text;
import static kitwright.document.Inline.together;
import static kitwright.document.Row.row;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class DocumentTest {
  @Test
  void aDocumentReadsAsMarkdown() {
    assertThat(
            Document.of(
                    heading(1, "Week 9"),
                    paragraph(
                        text("The "), strong("starboard"), text(" side is "), emphasis("closed")),
                    table(
                        columns(left("Item"), right("Qty"), middle("Here")),
                        List.of(row("Larch strip", "26 m", "yes"), row("Screw", "400", ""))),
                    bullets(List.of(text("glue"), together(text("see "), code("larch-plank")))),
                    numbered(List.of(text("saw"), text("plane"))),
                    quote(paragraph("Mind the dust.")),
                    Block.code("a  b\nc"),
                    new Block.Rule())
                .markdown())
        .isEqualTo(
            """
            # Week 9

            The **starboard** side is *closed*

            | Item        |  Qty | Here |
            |:------------|-----:|:----:|
            | Larch strip | 26 m | yes  |
            | Screw       |  400 |      |

            - glue
            - see `larch-plank`

            1. saw
            2. plane

            > Mind the dust.

            ```
            a  b
            c
            ```

            ___
            """);
  }

  @Test
  void anAddressIsShownAndNeverALink() {
    assertThat(markdown("see http://a.example/x, www.a.example or mail to a@b.example."))
        .isEqualTo("see `http://a.example/x`, `www.a.example` or mail to `a@b.example`.\n");
    assertThat(markdown("20 m @ 3.20 EUR")).isEqualTo("20 m @ 3.20 EUR\n");
  }

  @Test
  void plainWordsStayPlain() {
    assertThat(markdown("Smith & Sons, 46.20 EUR (50 %) - larch_plank: 18 x 45 mm!"))
        .isEqualTo("Smith & Sons, 46.20 EUR (50 %) - larch_plank: 18 x 45 mm!\n");
  }

  @Test
  void signsThatStartNothingStayAsTheyAreSoThatTheSourceReadsNaturally() {
    for (String words :
        List.of(
            "1.3 kg of epoxy",
            "-2 °C at night",
            "+4 °C by noon",
            "#5 is the long one",
            "=25 mm",
            ":5 to one",
            "<5 mm of play and < 3 mm at the rib",
            "2 * 3 planks",
            "R&D at the yard",
            "C:\\kit\\2026",
            "larch_plank")) {
      assertThat(markdown(words)).isEqualTo(words + "\n");
      assertThat(ReadBack.words(ReadBack.tree(words))).isEqualTo(words);
      assertThat(ReadBack.kinds(words)).containsExactly("Paragraph");
    }
  }

  @Test
  void signsThatWouldStartSomethingAreEscaped() {
    assertThat(markdown("1. plank")).isEqualTo("1\\. plank\n");
    assertThat(markdown("- plank")).isEqualTo("\\- plank\n");
    assertThat(markdown("# plank")).isEqualTo("\\# plank\n");
    assertThat(markdown("<b>")).isEqualTo("\\<b>\n");
    assertThat(markdown("&amp;")).isEqualTo("\\&amp;\n");
    assertThat(markdown("a *b*")).isEqualTo("a \\*b\\*\n");
    assertThat(markdown("---")).isEqualTo("\\---\n");
    assertThat(Document.of(heading(2, "Crate #3 of ##")).markdown())
        .isEqualTo("## Crate #3 of \\##\n");
  }

  @Test
  void hiddenCharactersAreWrittenOut() {
    assertThat(markdown("a\u202eb\u0007")).isEqualTo("a\\u202eb\\u0007\n");
    assertThat(ReadBack.words(ReadBack.tree(markdown("a\u202eb")))).isEqualTo("a\\u202eb");
  }

  @Test
  void aCellHoldsOneLineWhateverItsTextHolds() {
    String markdown =
        Document.of(
                table(
                    columns(left("a"), left("b")),
                    List.of(
                        row("ends in \\", "x|y"),
                        row("lone\rreturn", "two\nlines"),
                        row(together(text("p"), newLine(), text("q")), code("r|s")))))
            .markdown();
    assertThat(ReadBack.cells(markdown))
        .containsExactly(
            List.of("a", "b"),
            List.of("ends in \\", "x|y"),
            List.of("lone return", "two lines"),
            List.of("p / q", "r|s"));
  }

  @Test
  void listsThatFollowEachOtherStayApart() {
    String markdown =
        Document.of(
                bullets(List.of(text("a"))),
                bullets(List.of(text("b"))),
                bullets(List.of(text("c"))))
            .markdown();
    assertThat(markdown).isEqualTo("- a\n\n* b\n\n- c\n");
    assertThat(ReadBack.children(ReadBack.tree(markdown))).hasSize(3);
    assertThat(Document.of(numbered(List.of(text("a"))), numbered(List.of(text("b")))).markdown())
        .isEqualTo("1. a\n\n1) b\n");
  }

  @Test
  void aListMayStandInsideAnItem() {
    Block inner = bullets(List.of(text("b"), text("c")));
    assertThat(
            Document.of(new Items(Items.Kind.NUMBERS, List.of(List.of(paragraph("a"), inner))))
                .markdown())
        .isEqualTo("1. a\n   - b\n   - c\n");
  }

  @Test
  void linksAndPicturesAreMadeByTheProgramOnly() {
    assertThat(
            Document.of(
                    paragraph(
                        new Inline.Link(
                            Destination.file("log/a b(1).md"), List.of(text("Monday [1]"))),
                        text(" "),
                        picture(Destination.file("photos/ä#1.jpg"), "hull ](x)")))
                .markdown())
        .isEqualTo("[Monday \\[1\\]](log/a%20b%281%29.md) ![hull \\](x)](photos/%C3%A4%231.jpg)\n");
  }

  @Test
  void whatShowsNothingLeavesNoTrace() {
    assertThat(
            Document.of(
                    paragraph(""),
                    paragraph(strong(" "), code(""), newLine()),
                    heading(2, "\n"),
                    bullets(List.of()),
                    quote(paragraph(" ")))
                .markdown())
        .isEmpty();
  }

  @Test
  void aRowHasACellForEveryColumn() {
    assertThatThrownBy(() -> table(columns(left("a")), List.of(row("1", "2"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a row of 2 cells under 1 columns");
  }

  @Test
  void hugeHostileTextIsEscapedWithoutDelay() {
    for (String sign : List.of("a", "@", "(", ".", "|", "`", "*", "\u00a0", "\\", "www.", "[")) {
      assertThat(markdown("x" + sign.repeat(200_000) + "y")).isNotEmpty();
    }
  }

  private static String markdown(String words) {
    return Document.of(paragraph(words)).markdown();
  }
}
