package kitwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;

/**
 * Markdown that a person wrote, as in the daily log: it keeps its headings, lists, tables and
 * links, but HTML is shown as words, links lead only to other hosts and where {@link
 * Destination#written} allows, pictures from other hosts become links, a file that does not lie
 * beside the page is told in words, and hidden characters are written out.
 *
 * @param markdown as it was written
 * @param headingsBelow how many levels its headings sink, so that they stand below ours
 * @param pictures by their address as it was written, the file that lies beside the page
 */
public record Prose(String markdown, int headingsBelow, Map<String, String> pictures)
    implements Block {
  private static final Parser PARSER =
      Parser.builder()
          .extensions(List.of(TablesExtension.create()))
          .maxOpenBlockParsers(50)
          .build();

  public Prose {
    pictures = Map.copyOf(pictures);
  }

  /** The addresses of its pictures, as they were written. */
  public List<String> pictureAddresses() {
    List<String> all = new ArrayList<>();
    parsed()
        .accept(
            new AbstractVisitor() {
              @Override
              public void visit(Image image) {
                all.add(image.getDestination());
                visitChildren(image);
              }
            });
    return all;
  }

  @Override
  public <R> R match(Block.Cases<R> cases) {
    return cases.prose(this);
  }

  /** Markdown as it stands: for what the program or a template says. */
  static Node parse(String markdown) {
    return PARSER.parse(markdown);
  }

  /** What no reader could follow, as a table of a million cells, stands as it was written. */
  private Node parsed() {
    try {
      return parse(markdown);
    } catch (IllegalArgumentException beyond) {
      FencedCodeBlock asWritten = new FencedCodeBlock();
      asWritten.setLiteral(markdown);
      Node root = new org.commonmark.node.Document();
      root.appendChild(asWritten);
      return root;
    }
  }

  /** Every text of it, seen or not: words, code, HTML, addresses, titles. */
  public List<String> everyText() {
    return EveryText.in(parsed());
  }

  /** A fresh commonmark tree, made safe. */
  Node tree() {
    Node root = parsed();
    root.accept(new SafeTree(headingsBelow, pictures));
    return root;
  }
}
