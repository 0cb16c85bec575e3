package kitwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableCell.Alignment;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.markdown.MarkdownNodeRendererContext;
import org.commonmark.renderer.markdown.MarkdownWriter;
import org.jspecify.annotations.Nullable;

/**
 * Tables whose source reads as a table too: cells padded to the width of their column, as long as
 * that stays below 40, and never a backslash or other sign against a stroke.
 */
final class TableWriting implements NodeRenderer {
  private static final int WIDEST_PADDED = 40;
  private static final int NARROWEST = 3;

  private final MarkdownWriter writer;

  TableWriting(MarkdownNodeRendererContext context) {
    this.writer = context.getWriter();
  }

  @Override
  public Set<Class<? extends Node>> getNodeTypes() {
    return Set.of(TableBlock.class);
  }

  @Override
  public void render(Node table) {
    List<List<String>> lines = new ArrayList<>();
    List<@Nullable Alignment> columns = new ArrayList<>();
    for (Node part : Flow.children(table)) {
      for (Node row : Flow.children(part)) {
        List<Node> cells = Flow.children(row);
        if (lines.isEmpty()) {
          cells.forEach(cell -> columns.add(((TableCell) cell).getAlignment()));
        }
        lines.add(cells.stream().map(TableWriting::cell).toList());
      }
    }
    write(lines, columns);
  }

  private void write(List<List<String>> lines, List<@Nullable Alignment> columns) {
    int[] widths = widths(lines, columns.size());
    writer.pushTight(true);
    for (int i = 0; i < lines.size(); i++) {
      writer.raw(line(lines.get(i), columns, widths));
      writer.block();
      if (i == 0) {
        writer.raw(dashes(columns, widths));
        writer.block();
      }
    }
    writer.popTight();
    writer.block();
  }

  /** The cell's children as Markdown. The empty first node says that no line starts here. */
  private static String cell(Node cell) {
    var paragraph = new Paragraph();
    var nothing = new HtmlInline();
    nothing.setLiteral("");
    paragraph.appendChild(nothing);
    Flow.children(cell).forEach(paragraph::appendChild);
    var root = new org.commonmark.node.Document();
    root.appendChild(paragraph);
    // Text is escaped already, code is not, and a table asks for it there too.
    return MarkdownText.of(root).strip().replaceAll("(?<!\\\\)\\|", "\\\\|");
  }

  private static int[] widths(List<List<String>> lines, int columns) {
    int[] widths = new int[columns];
    for (int i = 0; i < columns; i++) {
      int at = i;
      int widest = lines.stream().mapToInt(line -> length(line.get(at))).max().orElse(0);
      widths[i] = Math.max(NARROWEST, Math.min(widest, WIDEST_PADDED));
    }
    return widths;
  }

  private static String line(List<String> cells, List<@Nullable Alignment> columns, int[] widths) {
    var out = new StringBuilder("|");
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      int gap = Math.max(0, widths[i] - length(cell));
      int before =
          columns.get(i) == Alignment.RIGHT
              ? gap
              : columns.get(i) == Alignment.CENTER ? gap / 2 : 0;
      out.append(' ')
          .append(" ".repeat(before))
          .append(cell)
          .append(" ".repeat(gap - before))
          .append(" |");
    }
    return out.toString();
  }

  private static String dashes(List<@Nullable Alignment> columns, int[] widths) {
    var out = new StringBuilder("|");
    for (int i = 0; i < widths.length; i++) {
      Alignment align = columns.get(i);
      String left = align == Alignment.LEFT || align == Alignment.CENTER ? ":" : "-";
      String right = align == Alignment.RIGHT || align == Alignment.CENTER ? ":" : "-";
      out.append(left).append("-".repeat(widths[i])).append(right).append('|');
    }
    return out.toString();
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
