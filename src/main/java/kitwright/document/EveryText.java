package kitwright.document;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/** Every text of a tree, seen or not: words, code, HTML, addresses, titles. */
final class EveryText extends AbstractVisitor {
  private final StringBuilder words = new StringBuilder();
  private final List<String> hidden = new ArrayList<>();

  static List<String> in(Node root) {
    EveryText all = new EveryText();
    root.accept(all);
    all.hidden.add(all.words.toString());
    return all.hidden;
  }

  static String words(Node root) {
    EveryText all = new EveryText();
    root.accept(all);
    return all.words.toString().strip();
  }

  @Override
  public void visit(Text text) {
    words.append(text.getLiteral());
  }

  @Override
  public void visit(Code code) {
    words.append(code.getLiteral());
  }

  @Override
  public void visit(SoftLineBreak line) {
    words.append(' ');
  }

  @Override
  public void visit(HardLineBreak line) {
    words.append(' ');
  }

  @Override
  public void visit(Paragraph paragraph) {
    visitChildren(paragraph);
    words.append(' ');
  }

  @Override
  public void visit(Heading heading) {
    visitChildren(heading);
    words.append(' ');
  }

  @Override
  public void visit(CustomNode cell) {
    visitChildren(cell);
    words.append(' ');
  }

  @Override
  public void visit(FencedCodeBlock code) {
    words.append(code.getInfo()).append(' ').append(code.getLiteral());
  }

  @Override
  public void visit(IndentedCodeBlock code) {
    words.append(code.getLiteral());
  }

  @Override
  public void visit(HtmlBlock html) {
    hidden.add(html.getLiteral());
  }

  @Override
  public void visit(HtmlInline html) {
    hidden.add(html.getLiteral());
  }

  @Override
  public void visit(Link link) {
    address(link.getDestination(), link.getTitle());
    visitChildren(link);
  }

  @Override
  public void visit(Image image) {
    address(image.getDestination(), image.getTitle());
    visitChildren(image);
  }

  private void address(String destination, String title) {
    hidden.add(String.valueOf(title));
    hidden.add(destination);
    hidden.add(decoded(destination));
  }

  private static String decoded(String destination) {
    try {
      return URLDecoder.decode(destination.replace("+", "%2B"), StandardCharsets.UTF_8);
    } catch (IllegalArgumentException notEncoded) {
      return destination;
    }
  }
}
