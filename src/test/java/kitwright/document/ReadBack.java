package kitwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.commonmark.ext.autolink.AutolinkExtension;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** Reads Markdown back as a forge would: with tables, and with bare addresses made into links. */
final class ReadBack {
  private static final Parser PARSER =
      Parser.builder()
          .extensions(List.of(TablesExtension.create(), AutolinkExtension.create()))
          .build();

  private ReadBack() {}

  /** The tree. */
  static Node tree(String markdown) {
    return PARSER.parse(markdown);
  }

  /** The kinds of all nodes, in order, without those that only carry words. */
  static List<String> kinds(String markdown) {
    return below(tree(markdown))
        .filter(node -> !(node instanceof Text || node instanceof Code))
        .map(node -> node.getClass().getSimpleName())
        .toList();
  }

  /** What a person sees, without the layout. */
  static String words(Node node) {
    var out = new StringBuilder();
    below(node)
        .forEach(
            inner -> {
              if (inner instanceof Text text) {
                out.append(text.getLiteral());
              } else if (inner instanceof Code code) {
                out.append(code.getLiteral());
              } else if (inner instanceof FencedCodeBlock code) {
                out.append(code.getLiteral());
              } else if (inner instanceof SoftLineBreak || inner instanceof HardLineBreak) {
                out.append('\n');
              }
            });
    return out.toString();
  }

  /** The cells of the only block, which must be a table; its head first. */
  static List<List<String>> cells(String markdown) {
    Node table = tree(markdown).getFirstChild();
    if (!(table instanceof TableBlock) || table.getNext() != null) {
      throw new AssertionError("not one table: " + kinds(markdown));
    }
    return children(table).stream()
        .flatMap(part -> children(part).stream())
        .map(row -> children(row).stream().map(ReadBack::words).toList())
        .toList();
  }

  static List<Node> children(Node parent) {
    var out = new ArrayList<Node>();
    for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
      out.add(child);
    }
    return out;
  }

  private static Stream<Node> below(Node node) {
    return children(node).stream().flatMap(child -> Stream.concat(Stream.of(child), below(child)));
  }
}
