package kitwright.document;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.value.Visible;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;

/** Takes out of a parsed tree what a person could not see or would not expect. */
final class SafeTree extends AbstractVisitor {
  private static final int DEEPEST = 6;
  private final int headingsBelow;
  private final Map<String, String> pictures;

  /**
   * What cleans a tree.
   *
   * @param pictures by their address as it was written, the file that lies beside the page
   */
  SafeTree(int headingsBelow, Map<String, String> pictures) {
    this.headingsBelow = headingsBelow;
    this.pictures = pictures;
  }

  @Override
  public void visit(Heading heading) {
    heading.setLevel(Math.min(DEEPEST, heading.getLevel() + headingsBelow));
    visitChildren(heading);
  }

  @Override
  public void visit(Text text) {
    text.setLiteral(Visible.line(text.getLiteral()));
  }

  @Override
  public void visit(Code code) {
    code.setLiteral(Visible.line(code.getLiteral()));
  }

  @Override
  public void visit(FencedCodeBlock code) {
    code.setLiteral(Visible.lines(code.getLiteral()));
    code.setInfo("");
  }

  @Override
  public void visit(IndentedCodeBlock code) {
    code.setLiteral(Visible.lines(code.getLiteral()));
  }

  @Override
  public void visit(HtmlInline html) {
    replace(html, Wording.nodes(html.getLiteral()));
  }

  @Override
  public void visit(HtmlBlock html) {
    var paragraph = new Paragraph();
    Wording.nodes(html.getLiteral()).forEach(paragraph::appendChild);
    replace(html, List.of(paragraph));
  }

  @Override
  public void visit(LinkReferenceDefinition definition) {
    definition.unlink();
  }

  @Override
  public void visit(Link link) {
    visitChildren(link);
    link.setTitle(null);
    Destination.written(link.getDestination())
        .filter(to -> to.reference().matches("(?s)[#?].*|[A-Za-z][^/]*:.*"))
        .ifPresentOrElse(to -> link.setDestination(to.reference()), () -> unwrap(link));
  }

  @Override
  public void visit(Image image) {
    visitChildren(image);
    image.setTitle(null);
    Optional<Destination> from = Destination.written(image.getDestination());
    String beside = pictures.get(image.getDestination());
    if (beside != null) {
      image.setDestination(Destination.file(beside).reference());
    } else if (from.isEmpty() || !image.getDestination().contains(":")) {
      unwrap(image);
    } else {
      var link = new Link(from.get().reference(), null);
      moveChildren(image, link);
      replace(image, List.of(link));
    }
  }

  /** Leaves what stands in a node in its place. */
  static void unwrap(Node node) {
    while (node.getFirstChild() != null) {
      node.insertBefore(node.getFirstChild());
    }
    node.unlink();
  }

  private static void moveChildren(Node from, Node to) {
    while (from.getFirstChild() != null) {
      to.appendChild(from.getFirstChild());
    }
  }

  private static void replace(Node old, List<? extends Node> with) {
    with.forEach(old::insertBefore);
    old.unlink();
  }
}
