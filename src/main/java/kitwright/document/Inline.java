package kitwright.document;

import java.util.List;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Image;
import org.commonmark.node.Node;

/** A part of a line of text. */
public sealed interface Inline {
  /** The commonmark nodes that show it; none where it is empty. */
  List<Node> nodes();

  /** Words, from a ledger or from the program; whatever they hold is shown and never obeyed. */
  static Inline text(String text) {
    return new Text(text);
  }

  /** Words that weigh more. */
  static Inline strong(String text) {
    return new Strong(List.of(text(text)));
  }

  /** Words that weigh more. */
  static Inline strong(Inline... inside) {
    return new Strong(List.of(inside));
  }

  /** Words that are stressed. */
  static Inline emphasis(String text) {
    return new Emphasis(List.of(text(text)));
  }

  /** Words that are stressed. */
  static Inline emphasis(Inline... inside) {
    return new Emphasis(List.of(inside));
  }

  /** A name or value in letters of one width. */
  static Inline code(String text) {
    return new Code(text);
  }

  /** A link. */
  static Inline link(Destination to, String text) {
    return new Link(to, List.of(text(text)));
  }

  /** A picture, with the words that stand for it where it cannot be seen. */
  static Inline picture(Destination from, String instead) {
    return new Picture(from, instead);
  }

  /** Several parts as one, for a cell or an item. */
  static Inline together(Inline... parts) {
    return new Together(List.of(parts));
  }

  /** A new line within a paragraph; a stroke within a heading or a cell. */
  static Inline newLine() {
    return new NewLine();
  }

  /**
   * Words.
   *
   * @param text as the ledger has them
   */
  record Text(String text) implements Inline {
    @Override
    public List<Node> nodes() {
      return Wording.nodes(text);
    }
  }

  /**
   * Words that weigh more.
   *
   * @param inside what weighs more
   */
  record Strong(List<Inline> inside) implements Inline {
    public Strong {
      inside = List.copyOf(inside);
    }

    @Override
    public List<Node> nodes() {
      return Flow.filled(new org.commonmark.node.StrongEmphasis(), inside);
    }
  }

  /**
   * Words that are stressed.
   *
   * @param inside what is stressed
   */
  record Emphasis(List<Inline> inside) implements Inline {
    public Emphasis {
      inside = List.copyOf(inside);
    }

    @Override
    public List<Node> nodes() {
      return Flow.filled(new org.commonmark.node.Emphasis(), inside);
    }
  }

  /**
   * A name or value.
   *
   * @param text what is shown
   */
  record Code(String text) implements Inline {
    @Override
    public List<Node> nodes() {
      return Wording.code(text);
    }
  }

  /**
   * A link.
   *
   * @param to where it leads
   * @param inside what it says
   */
  record Link(Destination to, List<Inline> inside) implements Inline {
    public Link {
      inside = List.copyOf(inside);
    }

    @Override
    public List<Node> nodes() {
      return Flow.filled(new org.commonmark.node.Link(to.reference(), null), inside);
    }
  }

  /**
   * A picture.
   *
   * @param from where it lies
   * @param instead words in its place
   */
  record Picture(Destination from, String instead) implements Inline {
    @Override
    public List<Node> nodes() {
      var image = new Image(from.reference(), null);
      Wording.plain(instead).forEach(image::appendChild);
      return List.of(image);
    }
  }

  /**
   * Several parts as one.
   *
   * @param parts in their order
   */
  record Together(List<Inline> parts) implements Inline {
    public Together {
      parts = List.copyOf(parts);
    }

    @Override
    public List<Node> nodes() {
      return parts.stream().flatMap(part -> part.nodes().stream()).toList();
    }
  }

  /** A new line. */
  record NewLine() implements Inline {
    @Override
    public List<Node> nodes() {
      return List.of(new HardLineBreak());
    }
  }
}
