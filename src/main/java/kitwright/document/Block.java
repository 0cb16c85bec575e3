package kitwright.document;

import java.util.List;
import java.util.Map;

/** A part of a document that stands on lines of its own: what it says, not how it looks. */
public sealed interface Block
    permits Block.Heading,
        Block.Paragraph,
        Block.Code,
        Block.Quote,
        Block.Rule,
        Table,
        Items,
        Prose {

  /** Answers with the case at hand. */
  <R> R match(Cases<R> cases);

  /** An answer for each sort of block: a renderer is one of these. */
  interface Cases<R> {
    R heading(Heading heading);

    R paragraph(Paragraph paragraph);

    R code(Code code);

    R quote(Quote quote);

    R rule();

    R table(Table table);

    R items(Items items);

    R prose(Prose prose);
  }

  /** A heading of level 1 (the title) to 6. */
  static Block heading(int level, String text) {
    return new Heading(level, List.of(Inline.text(text)));
  }

  /** A heading of level 1 (the title) to 6. */
  static Block heading(int level, Inline... text) {
    return new Heading(level, List.of(text));
  }

  static Block paragraph(String text) {
    return new Paragraph(List.of(Inline.text(text)));
  }

  static Block paragraph(Inline... text) {
    return new Paragraph(List.of(text));
  }

  /** A table; every row has a cell for every column. */
  static Block table(List<Column> columns, List<Row> rows) {
    return new Table("", columns, rows);
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

  /** Markdown that a person wrote, made safe: see {@link Prose}. */
  static Block prose(String markdown, int headingsBelow) {
    return new Prose(markdown, headingsBelow, Map.of());
  }

  /** The same with pictures: by their address as written, the file that lies beside the page. */
  static Block prose(String markdown, int headingsBelow, Map<String, String> pictures) {
    return new Prose(markdown, headingsBelow, pictures);
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
    public <R> R match(Cases<R> cases) {
      return cases.heading(this);
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
    public <R> R match(Cases<R> cases) {
      return cases.paragraph(this);
    }
  }

  /**
   * Lines in letters of one width.
   *
   * @param text the lines; other hidden characters are written out
   */
  record Code(String text) implements Block {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.code(this);
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
    public <R> R match(Cases<R> cases) {
      return cases.quote(this);
    }
  }

  /** A line across the page. */
  record Rule() implements Block {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.rule();
    }
  }
}
