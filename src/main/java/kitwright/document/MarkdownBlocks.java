package kitwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import kitwright.value.Visible;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.ListBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Text;
import org.commonmark.node.ThematicBreak;
import org.jspecify.annotations.Nullable;

/** Blocks as commonmark nodes; none where a block would show nothing. */
final class MarkdownBlocks implements Block.Cases<List<Node>> {
  private static final MarkdownBlocks CASES = new MarkdownBlocks();

  private MarkdownBlocks() {}

  /** A fresh tree. */
  static Node tree(List<Block> blocks) {
    var root = new org.commonmark.node.Document();
    appendAll(root, blocks);
    return root;
  }

  /** Appends blocks; lists that follow each other get different signs, or they would join. */
  private static void appendAll(Node parent, List<Block> blocks) {
    for (Block block : blocks) {
      for (Node node : block.match(CASES)) {
        keepApart(parent.getLastChild(), node);
        parent.appendChild(node);
      }
    }
  }

  @Override
  public List<Node> heading(Block.Heading heading) {
    var node = new org.commonmark.node.Heading();
    node.setLevel(heading.level());
    Flow.append(node, heading.text(), Flow.Breaks.AS_STROKES);
    return Flow.unlessEmpty(node);
  }

  @Override
  public List<Node> paragraph(Block.Paragraph paragraph) {
    var node = new org.commonmark.node.Paragraph();
    Flow.append(node, paragraph.text(), Flow.Breaks.KEPT);
    return Flow.unlessEmpty(node);
  }

  @Override
  public List<Node> code(Block.Code code) {
    var node = new FencedCodeBlock();
    node.setLiteral(Visible.lines(code.text().replace("\r\n", "\n").replace('\r', '\n')));
    return List.of(node);
  }

  @Override
  public List<Node> quote(Block.Quote quote) {
    var node = new BlockQuote();
    appendAll(node, quote.blocks());
    return Flow.unlessEmpty(node);
  }

  @Override
  public List<Node> rule() {
    return List.of(new ThematicBreak());
  }

  @Override
  public List<Node> prose(Prose prose) {
    return Flow.children(prose.tree());
  }

  @Override
  public List<Node> items(Items items) {
    ListBlock list = items.kind() == Items.Kind.DOTS ? new BulletList() : new OrderedList();
    list.setTight(items.isTight());
    for (List<Block> blocks : items.items()) {
      var item = new ListItem();
      appendAll(item, blocks);
      list.appendChild(item);
    }
    return Flow.unlessEmpty(list);
  }

  /** Gives {@code next} another sign than {@code before}, where both are lists of one kind. */
  private static void keepApart(@Nullable Node before, Node next) {
    if (before instanceof BulletList upper && next instanceof BulletList lower) {
      lower.setMarker("*".equals(upper.getMarker()) ? "-" : "*");
    }
    if (before instanceof OrderedList upper && next instanceof OrderedList lower) {
      lower.setMarkerDelimiter(")".equals(upper.getMarkerDelimiter()) ? "." : ")");
    }
  }

  @Override
  public List<Node> table(Table table) {
    Table shown = table.shown();
    var node = new TableBlock();
    var head = new TableHead();
    List<Inline> titles = new ArrayList<>();
    shown.columns().forEach(column -> titles.add(Inline.text(column.title())));
    head.appendChild(line(titles, shown.columns(), Kind.HEAD));
    node.appendChild(head);
    if (!shown.rows().isEmpty()) {
      var body = new TableBody();
      for (Row row : shown.rows()) {
        List<Inline> cells = new ArrayList<>();
        row.cells().forEach(cell -> cells.add(cell.shown()));
        body.appendChild(line(cells, shown.columns(), Kind.BODY));
      }
      node.appendChild(body);
    }
    return List.of(node);
  }

  private enum Kind {
    HEAD,
    BODY
  }

  private static Node line(List<Inline> cells, List<Column> columns, Kind kind) {
    var line = new TableRow();
    for (int i = 0; i < cells.size(); i++) {
      var cell = new TableCell();
      cell.setHeader(kind == Kind.HEAD);
      cell.setAlignment(alignment(columns.get(i)));
      Flow.append(cell, List.of(cells.get(i)), Flow.Breaks.AS_STROKES);
      cell.accept(new WholeDays());
      line.appendChild(cell);
    }
    return line;
  }

  /**
   * A narrow column breaks a day at its hyphens, as browsers do; the hyphen of Unicode that joins
   * keeps it whole. What is shown as code, as an id, is to be copied and stays as it is.
   */
  private static final class WholeDays extends AbstractVisitor {
    private static final Pattern DAY =
        Pattern.compile("(?<![\\p{L}\\p{N}-])(\\d{4})-(\\d{2})-(\\d{2})(?![\\p{L}\\p{N}-])");

    @Override
    public void visit(Text text) {
      text.setLiteral(DAY.matcher(text.getLiteral()).replaceAll("$1\u2011$2\u2011$3"));
    }
  }

  private static TableCell.Alignment alignment(Column column) {
    return switch (column.align()) {
      case LEFT -> TableCell.Alignment.LEFT;
      case RIGHT -> TableCell.Alignment.RIGHT;
      case MIDDLE -> TableCell.Alignment.CENTER;
    };
  }
}
