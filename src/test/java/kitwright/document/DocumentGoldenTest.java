package kitwright.document;

import static kitwright.document.Block.heading;
import static kitwright.document.Block.paragraph;
import static kitwright.document.Block.table;
import static kitwright.document.Column.columns;
import static kitwright.document.Column.left;
import static kitwright.document.Column.right;
import static kitwright.document.Row.row;

import java.util.List;
import kitwright.Golden;
import org.junit.jupiter.api.Test;

class DocumentGoldenTest {
  @Test
  void textThatWouldBreakMarkdownStillReads() {
    Golden.check(
        "document/hard-text.md",
        Document.of(
                heading(1, "Crate #3 # "),
                paragraph("+ 12 strips; see www.a.example, [drawing](javascript:x) <b>now</b>"),
                table(
                    columns(left("Note"), right("Cost")),
                    List.of(
                        row("a | b \\", "$46.20"),
                        row("two\nlines, *starred* and `quoted`", "~~12~~"),
                        row("turned \u202eround", "1.2 kg"))))
            .markdown());
  }
}
