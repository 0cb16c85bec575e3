package kitwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;

/**
 * Parts of text set one after the other so that Markdown can say them: no blanks at the ends, and a
 * space where two signs would run into each other (CommonMark 0.31.2, section 6.2, delimiter runs).
 */
final class Flow {
  /** What becomes of a new line. */
  enum Breaks {
    KEPT,
    AS_STROKES
  }

  private Flow() {}

  /** Appends {@code parts} to {@code parent}. */
  static void append(Node parent, List<Inline> parts, Breaks breaks) {
    List<Node> nodes = new ArrayList<>();
    for (Inline part : joined(parts)) {
      for (Node node : MarkdownInlines.of(part)) {
        nodes.add(
            breaks == Breaks.AS_STROKES && node instanceof HardLineBreak ? new Text(" / ") : node);
      }
    }
    trimmed(spaced(merged(nodes))).forEach(parent::appendChild);
  }

  /** {@code parent} with {@code parts} inside, or nothing where they show nothing. */
  static List<Node> filled(Node parent, List<Inline> parts) {
    append(parent, parts, Breaks.AS_STROKES);
    return unlessEmpty(parent);
  }

  static List<Node> unlessEmpty(Node node) {
    return node.getFirstChild() == null ? List.of() : List.of(node);
  }

  static List<Node> children(Node parent) {
    List<Node> children = new ArrayList<>();
    for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
      children.add(child);
    }
    return children;
  }

  /** Neighbouring words become one, so that a web address cannot hide in the seam. */
  private static List<Inline> joined(List<Inline> parts) {
    var out = new ArrayList<Inline>();
    for (Inline part : flat(parts)) {
      int last = out.size() - 1;
      if (part instanceof Inline.Text right
          && last >= 0
          && out.get(last) instanceof Inline.Text left) {
        out.set(last, new Inline.Text(left.text() + right.text()));
      } else {
        out.add(part);
      }
    }
    return out;
  }

  private static List<Inline> flat(List<Inline> parts) {
    return parts.stream()
        .flatMap(
            part ->
                part instanceof Inline.Together together
                    ? flat(together.parts()).stream()
                    : Stream.of(part))
        .toList();
  }

  private static List<Node> merged(List<Node> nodes) {
    var out = new ArrayList<Node>();
    for (Node node : nodes) {
      int last = out.size() - 1;
      if (node instanceof Text right && last >= 0 && out.get(last) instanceof Text left) {
        out.set(last, new Text(left.getLiteral() + right.getLiteral()));
      } else {
        out.add(node);
      }
    }
    return out;
  }

  private static List<Node> spaced(List<Node> nodes) {
    var out = new ArrayList<Node>();
    for (Node node : nodes) {
      if (!out.isEmpty() && collide(out.get(out.size() - 1), node)) {
        out.add(new Text(" "));
      }
      out.add(node);
    }
    return merged(out);
  }

  private static boolean collide(Node left, Node right) {
    if (left instanceof Code || isStyled(left)) {
      if (right instanceof Code || isStyled(right)) {
        return true;
      }
    }
    if (isStyled(left) && !isBreak(right)) {
      return !isWordlike(edge(left.getLastChild(), Side.END)) && !isApart(edge(right, Side.START));
    }
    return isStyled(right)
        && !isBreak(left)
        && !isWordlike(edge(right.getFirstChild(), Side.START))
        && !isApart(edge(left, Side.END));
  }

  private static boolean isStyled(Node node) {
    return node instanceof Emphasis || node instanceof StrongEmphasis;
  }

  private static boolean isBreak(Node node) {
    return node instanceof HardLineBreak;
  }

  private enum Side {
    START,
    END
  }

  /** The sign that stands at that side of a node's Markdown. */
  private static int edge(Node node, Side side) {
    if (node instanceof Text text) {
      String literal = text.getLiteral();
      return side == Side.START
          ? literal.codePointAt(0)
          : literal.codePointBefore(literal.length());
    }
    if (node instanceof Code) {
      return '`';
    }
    if (node instanceof Link || node instanceof Image) {
      return side == Side.START ? '[' : ')';
    }
    return '*';
  }

  private static boolean isWordlike(int sign) {
    return Character.isLetterOrDigit(sign);
  }

  private static boolean isApart(int sign) {
    return Character.isSpaceChar(sign) || (sign < 0x80 && !Character.isLetterOrDigit(sign));
  }

  private static List<Node> trimmed(List<Node> nodes) {
    var out = new ArrayList<Node>();
    for (int i = 0; i < nodes.size(); i++) {
      if (nodes.get(i) instanceof Text text) {
        String literal = text.getLiteral();
        if (i == 0 || isBreak(nodes.get(i - 1))) {
          literal = Wording.withoutFirstBlanks(literal);
        }
        if (i == nodes.size() - 1 || isBreak(nodes.get(i + 1))) {
          literal = Wording.withoutLastBlanks(literal);
        }
        if (!literal.isEmpty()) {
          out.add(new Text(literal));
        }
      } else if (!isBreak(nodes.get(i)) || !out.isEmpty()) {
        out.add(nodes.get(i));
      }
    }
    while (!out.isEmpty() && isBreak(out.get(out.size() - 1))) {
      out.remove(out.size() - 1);
    }
    return out;
  }
}
