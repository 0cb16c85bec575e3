package kitwright.document;

import java.util.Arrays;
import java.util.List;
import kitwright.value.Visible;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.ThematicBreak;

/** A part of a document that stands on lines of its own. */
public sealed interface Block
    permits Block.Heading,
        Block.Paragraph,
        Block.Code,
        Block.Quote,
        Block.Rule,
        Table,
        Items,
        Prose {

  /** The commonmark nodes that show it; none where it would show nothing. */
  List<Node> nodes();

  /** A heading of level 1 (the title) to 6. */
  static Block heading(int level, String text) {
    return new Heading(level, List.of(Inline.text(text)));
  }

  /** A heading of level 1 (the title) to 6. */
  static Block heading(int level, Inline... text) {
    return new Heading(level, List.of(text));
  }

  /** A paragraph. */
  static Block paragraph(String text) {
    return new Paragraph(List.of(Inline.text(text)));
  }

  /** A paragraph. */
  static Block paragraph(Inline... text) {
    return new Paragraph(List.of(text));
  }

  /** A table; every row has a cell for every column. */
  static Block table(List<Column> columns, List<Row> rows) {
    return new Table(columns, rows);
  }

  /** A list with a dot before each item. */
  static Block bullets(Inline... items) {
    return bullets(Arrays.stream(items).toList());
  }

  /** A list with a dot before each item. */
  static Block bullets(List<? extends Inline> items) {
    return new Items(Items.Kind.DOTS, Items.each(items));
  }

  /** A list numbered from 1. */
  static Block numbered(List<? extends Inline> items) {
    return new Items(Items.Kind.NUMBERS, Items.each(items));
  }

  /** Lines to be shown as they are, in letters of one width. */
  static Block code(String text) {
    return new Code(text);
  }

  /** Blocks set apart as somebody else's words or as a caution. */
  static Block quote(Block... blocks) {
    return new Quote(List.of(blocks));
  }

  /** A line across the page. */
  static Block rule() {
    return new Rule();
  }

  /** Markdown that a person wrote, made safe: see {@link Prose}. */
  static Block prose(String markdown, int headingsBelow) {
    return new Prose(markdown, headingsBelow);
  }

  /**
   * Appends {@code blocks}; lists that follow each other get different signs, or they would join.
   */
  static void appendAll(Node parent, List<Block> blocks) {
    for (Block block : blocks) {
      for (Node node : block.nodes()) {
        Items.keepApart(parent.getLastChild(), node);
        parent.appendChild(node);
      }
    }
  }

  /**
   * A heading.
   *
   * @param level 1 to 6
   * @param text what it says
   */
  record Heading(int level, List<Inline> text) implements Block {
    public Heading {
      if (level < 1 || level > 6) {
        throw new IllegalArgumentException("a heading has level 1 to 6: " + level);
      }
      text = List.copyOf(text);
    }

    @Override
    public List<Node> nodes() {
      var heading = new org.commonmark.node.Heading();
      heading.setLevel(level);
      Flow.append(heading, text, Flow.Breaks.AS_STROKES);
      return Flow.unlessEmpty(heading);
    }
  }

  /**
   * A paragraph.
   *
   * @param text what it says
   */
  record Paragraph(List<Inline> text) implements Block {
    public Paragraph {
      text = List.copyOf(text);
    }

    @Override
    public List<Node> nodes() {
      var paragraph = new org.commonmark.node.Paragraph();
      Flow.append(paragraph, text, Flow.Breaks.KEPT);
      return Flow.unlessEmpty(paragraph);
    }
  }

  /**
   * Lines in letters of one width.
   *
   * @param text the lines; other hidden characters are written out
   */
  record Code(String text) implements Block {
    @Override
    public List<Node> nodes() {
      var code = new FencedCodeBlock();
      code.setLiteral(Visible.lines(text.replace("\r\n", "\n").replace('\r', '\n')));
      return List.of(code);
    }
  }

  /**
   * Blocks set apart.
   *
   * @param blocks at least one that shows something, or nothing is shown
   */
  record Quote(List<Block> blocks) implements Block {
    public Quote {
      blocks = List.copyOf(blocks);
    }

    @Override
    public List<Node> nodes() {
      var quote = new BlockQuote();
      appendAll(quote, blocks);
      return Flow.unlessEmpty(quote);
    }
  }

  /** A line across the page. */
  record Rule() implements Block {
    @Override
    public List<Node> nodes() {
      return List.of(new ThematicBreak());
    }
  }
}
