package kitwright.document;

import java.util.List;
import java.util.stream.Stream;

/**
 * A document for people.
 *
 * @param blocks from top to bottom
 */
public record Document(List<Block> blocks) {
  public Document {
    blocks = List.copyOf(blocks);
  }

  /** The blocks in their order. */
  public static Document of(Block... blocks) {
    return new Document(List.of(blocks));
  }

  /** This document, then {@code more}. */
  public Document plus(Block... more) {
    return new Document(Stream.concat(blocks.stream(), Stream.of(more)).toList());
  }

  /**
   * CommonMark 0.31.2 with the tables of GitHub Flavored Markdown, ended by a line feed; empty
   * where there is no block. What a text says is kept; that it stood on several lines, or had two
   * spaces in a row, is not.
   */
  public String markdown() {
    return MarkdownText.of(MarkdownBlocks.tree(blocks));
  }

  /** Lines for a terminal of so many cells, none wider unless one word is. */
  public String text(int width) {
    return TerminalBlocks.text(blocks, width);
  }
}
