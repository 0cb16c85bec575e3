package kitwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.node.ThematicBreak;

/**
 * A parsed tree as blocks, for renderers that know nothing of Markdown. HTML is passed over: where
 * it may stand at all it is a remark, and where a person wrote it, {@link SafeTree} has made it
 * words.
 */
final class ReadMarkdown {
  private final Function<String, List<Block>> slots;

  /**
   * A reading of one tree.
   *
   * @param slots the blocks that stand where a paragraph names them between {@link Filled#SEAM}s
   */
  ReadMarkdown(Function<String, List<Block>> slots) {
    this.slots = slots;
  }

  /** A tree in which no slot is named. */
  ReadMarkdown() {
    this(name -> List.of());
  }

  List<Block> blocks(Node parent) {
    List<Block> blocks = new ArrayList<>();
    for (Node node : Flow.children(parent)) {
      add(node, blocks);
    }
    return blocks;
  }

  private void add(Node node, List<Block> blocks) {
    if (node instanceof Heading heading) {
      blocks.add(new Block.Heading(heading.getLevel(), parts(node)));
    } else if (node instanceof Paragraph) {
      paragraph(parts(node), blocks);
    } else if (node instanceof BlockQuote) {
      blocks.add(new Block.Quote(blocks(node)));
    } else if (node instanceof ListBlock) {
      List<List<Block>> items = new ArrayList<>();
      Flow.children(node).forEach(item -> items.add(blocks(item)));
      blocks.add(
          new Items(node instanceof BulletList ? Items.Kind.DOTS : Items.Kind.NUMBERS, items));
    } else if (node instanceof FencedCodeBlock code) {
      blocks.add(new Block.Code(code.getLiteral()));
    } else if (node instanceof IndentedCodeBlock code) {
      blocks.add(new Block.Code(code.getLiteral()));
    } else if (node instanceof ThematicBreak) {
      blocks.add(new Block.Rule());
    } else if (node instanceof TableBlock) {
      blocks.add(table(node));
    }
  }

  /** A paragraph without the slots it names, then their blocks. */
  private void paragraph(List<Inline> parts, List<Block> blocks) {
    String[] seams = PlainWords.of(parts).split(Filled.SEAM, -1);
    if (seams.length == 1) {
      blocks.add(new Block.Paragraph(parts));
      return;
    }
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < seams.length; i += 2) {
      words.append(seams[i]);
    }
    if (!words.toString().isBlank()) {
      blocks.add(Block.paragraph(words.toString()));
    }
    for (int i = 1; i < seams.length; i += 2) {
      blocks.addAll(slots.apply(seams[i]));
    }
  }

  private static Table table(Node table) {
    List<Column> columns = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    for (Node part : Flow.children(table)) {
      for (Node line : Flow.children(part)) {
        List<Cell> cells = new ArrayList<>();
        for (Node cell : Flow.children(line)) {
          if (columns.size() < Flow.children(line).size() && rows.isEmpty() && isHead(cell)) {
            columns.add(column((TableCell) cell));
          }
          cells.add(Cell.of(Inline.together(parts(cell).toArray(Inline[]::new))));
        }
        if (!isHead(line.getFirstChild())) {
          rows.add(new Row(cells));
        }
      }
    }
    return new Table("", columns, rows);
  }

  private static boolean isHead(Node cell) {
    return cell instanceof TableCell one && one.isHeader();
  }

  private static Column column(TableCell cell) {
    String title = TerminalBlocks.words(parts(cell));
    TableCell.Alignment align = cell.getAlignment();
    return align == TableCell.Alignment.RIGHT
        ? Column.right(title)
        : align == TableCell.Alignment.CENTER ? Column.middle(title) : Column.left(title);
  }

  static List<Inline> parts(Node parent) {
    List<Inline> parts = new ArrayList<>();
    for (Node node : Flow.children(parent)) {
      add(node, parts, parts(node));
    }
    return parts;
  }

  private static void add(Node node, List<Inline> parts, List<Inline> inside) {
    if (node instanceof Text text) {
      parts.add(new Inline.Text(text.getLiteral()));
    } else if (node instanceof Code code) {
      parts.add(new Inline.Code(code.getLiteral()));
    } else if (node instanceof StrongEmphasis) {
      parts.add(new Inline.Strong(inside));
    } else if (node instanceof Emphasis) {
      parts.add(new Inline.Emphasis(inside));
    } else if (node instanceof SoftLineBreak) {
      parts.add(new Inline.Text(" "));
    } else if (node instanceof HardLineBreak) {
      parts.add(new Inline.NewLine());
    } else if (node instanceof Link link) {
      address(link.getDestination(), inside)
          .ifPresentOrElse(parts::add, () -> parts.addAll(inside));
    } else if (node instanceof Image image) {
      Destination.written(image.getDestination())
          .ifPresentOrElse(
              from -> parts.add(new Inline.Picture(from, PlainWords.of(inside))),
              () -> parts.addAll(inside));
    }
  }

  private static Optional<Inline> address(String to, List<Inline> inside) {
    return Destination.written(to).map(where -> new Inline.Link(where, inside));
  }
}
