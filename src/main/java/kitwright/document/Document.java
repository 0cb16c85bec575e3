package kitwright.document;

import java.util.List;
import java.util.stream.Stream;
import org.commonmark.node.Node;

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

  /** A fresh commonmark tree, for a renderer of another kind. */
  public Node tree() {
    var root = new org.commonmark.node.Document();
    Block.appendAll(root, blocks);
    return root;
  }

  /**
   * CommonMark 0.31.2 with the tables of GitHub Flavored Markdown, ended by a line feed; empty
   * where there is no block. What a text says is kept; that it stood on several lines, or had two
   * spaces in a row, is not.
   */
  public String markdown() {
    return MarkdownText.of(tree());
  }
}
