package kitwright.document;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Image;
import org.commonmark.node.Node;

/** Parts of a line as commonmark nodes; none where a part is empty. */
final class MarkdownInlines implements Inline.Cases<List<Node>> {
  private static final MarkdownInlines CASES = new MarkdownInlines();

  private MarkdownInlines() {}

  static List<Node> of(Inline part) {
    return part.match(CASES);
  }

  @Override
  public List<Node> text(String text) {
    return Wording.nodes(text);
  }

  @Override
  public List<Node> strong(List<Inline> inside) {
    return Flow.filled(new org.commonmark.node.StrongEmphasis(), inside);
  }

  @Override
  public List<Node> emphasis(List<Inline> inside) {
    return Flow.filled(new org.commonmark.node.Emphasis(), inside);
  }

  @Override
  public List<Node> code(String text) {
    return Wording.code(text);
  }

  @Override
  public List<Node> link(Destination to, List<Inline> inside) {
    return Flow.filled(new org.commonmark.node.Link(to.reference(), null), inside);
  }

  @Override
  public List<Node> picture(Destination from, String instead) {
    var image = new Image(from.reference(), null);
    Wording.plain(instead).forEach(image::appendChild);
    return List.of(image);
  }

  @Override
  public List<Node> named(String what, String id) {
    return together(List.of(Inline.text(what + " "), Inline.code(id)));
  }

  @Override
  public List<Node> together(List<Inline> parts) {
    List<Node> nodes = new ArrayList<>();
    parts.forEach(part -> nodes.addAll(of(part)));
    return nodes;
  }

  @Override
  public List<Node> newLine() {
    return List.of(new HardLineBreak());
  }
}
