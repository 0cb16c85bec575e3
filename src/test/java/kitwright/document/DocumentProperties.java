package kitwright.document;

import static kitwright.document.Block.bullets;
import static kitwright.document.Block.heading;
import static kitwright.document.Block.paragraph;
import static kitwright.document.Block.table;
import static kitwright.document.Column.columns;
import static kitwright.document.Column.left;
import static kitwright.document.Column.right;
import static kitwright.document.Inline.code;
import static kitwright.document.Inline.emphasis;
import static kitwright.document.Inline.newLine;
import static kitwright.document.Inline.strong;
import static kitwright.document.Inline.text;
import static kitwright.document.Row.row;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import kitwright.value.Visible;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.domains.Domain;

@Domain(NastyText.class)
@Domain(net.jqwik.api.domains.DomainContext.Global.class)
class DocumentProperties {
  @Property(tries = 1000, seed = "1")
  void aParagraphReadsBackAsItsWordsAlone(@ForAll String words) {
    String markdown = Document.of(paragraph(words)).markdown();
    assertThat(ReadBack.words(ReadBack.tree(markdown))).isEqualTo(seen(words));
    assertThat(ReadBack.kinds(markdown))
        .isEqualTo(seen(words).isEmpty() ? List.of() : List.of("Paragraph"));
    assertThat(markdown.lines().count()).isLessThanOrEqualTo(1);
    assertThat(markdown.codePoints().filter(c -> c != '\n')).noneMatch(Visible::isHidden);
  }

  @Property(tries = 700, seed = "2")
  void aHeadingReadsBackAsItsWordsAlone(@ForAll String words) {
    String markdown = Document.of(heading(2, words)).markdown();
    assertThat(ReadBack.words(ReadBack.tree(markdown))).isEqualTo(seen(words));
    assertThat(ReadBack.kinds(markdown))
        .isEqualTo(seen(words).isEmpty() ? List.of() : List.of("Heading"));
  }

  @Property(tries = 1000, seed = "3")
  void everyCellReadsBackAsItsWords(
      @ForAll String head, @ForAll @Size(max = 4) List<@Size(2) List<String>> cells) {
    String markdown =
        Document.of(
                table(
                    columns(left(head), right("Qty")),
                    cells.stream().map(c -> row(c.get(0), c.get(1))).toList()))
            .markdown();
    var expected = new ArrayList<List<String>>();
    expected.add(List.of(seen(head), "Qty"));
    cells.forEach(c -> expected.add(c.stream().map(DocumentProperties::seen).toList()));
    assertThat(ReadBack.cells(markdown)).isEqualTo(expected);
    assertThat(ReadBack.kinds(markdown)).doesNotContain("Link", "Image", "HtmlInline", "Emphasis");
  }

  @Property(tries = 700, seed = "4")
  void codeInACellReadsBackAsItsText(@ForAll String words) {
    String markdown =
        Document.of(table(columns(left("a"), left("b")), List.of(row(code(words), text("x")))))
            .markdown();
    assertThat(ReadBack.cells(markdown).get(1)).isEqualTo(List.of(seen(words), "x"));
  }

  @Property(tries = 700, seed = "5")
  void itemsReadBackAsTheirWords(@ForAll @Size(min = 1, max = 4) List<String> words) {
    Assume.that(words.stream().noneMatch(w -> seen(w).isEmpty()));
    String markdown = Document.of(bullets(words.stream().map(Inline::text).toList())).markdown();
    List<String> items =
        ReadBack.children(ReadBack.tree(markdown).getFirstChild()).stream()
            .map(ReadBack::words)
            .toList();
    assertThat(items).isEqualTo(words.stream().map(DocumentProperties::seen).toList());
    assertThat(ReadBack.kinds(markdown)).doesNotContain("Link", "Image", "HtmlInline", "HtmlBlock");
  }

  @Property(tries = 1500, seed = "6")
  void anyMixtureOfPartsReadsBackAsItsWords(
      @ForAll @Size(max = 6) List<String> words,
      @ForAll @Size(6) List<@IntRange(max = 5) Integer> kinds) {
    var parts = new ArrayList<Inline>();
    for (int i = 0; i < words.size(); i++) {
      parts.add(part(kinds.get(i), words.get(i)));
    }
    String markdown = Document.of(paragraph(parts.toArray(Inline[]::new))).markdown();
    assertThat(squeezed(ReadBack.words(ReadBack.tree(markdown))))
        .isEqualTo(squeezed(String.join("", words)));
    assertThat(ReadBack.kinds(markdown))
        .isSubsetOf("Paragraph", "StrongEmphasis", "Emphasis", "HardLineBreak");
  }

  private static Inline part(int kind, String words) {
    return switch (kind) {
      case 0 -> strong(words);
      case 1 -> emphasis(words);
      case 2 -> code(words);
      case 3 -> Inline.together(text(words), newLine());
      default -> text(words);
    };
  }

  private static String seen(String words) {
    return Wording.withoutFirstBlanks(Wording.withoutLastBlanks(Wording.shown(words)));
  }

  /** Where parts meet, a space may come in; so spaces do not count. */
  private static String squeezed(String words) {
    return Wording.shown(words).replaceAll("\\p{Z}", "");
  }
}
