package kitwright.document;

import java.util.List;

/** A part of a line of text. */
public sealed interface Inline {
  /** Answers with the case at hand. */
  <R> R match(Cases<R> cases);

  /** An answer for each sort of part. */
  interface Cases<R> {
    R text(String text);

    R strong(List<Inline> inside);

    R emphasis(List<Inline> inside);

    R code(String text);

    R link(Destination to, List<Inline> inside);

    R picture(Destination from, String instead);

    R named(String what, String id);

    R together(List<Inline> parts);

    R newLine();
  }

  /** Words, from a ledger or from the program; whatever they hold is shown and never obeyed. */
  static Inline text(String text) {
    return new Text(text);
  }

  /** The same of each. */
  static List<Inline> texts(List<String> texts) {
    return texts.stream().map(Inline::text).toList();
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

  /** A name or value in letters of one width. */
  static Inline code(String text) {
    return new Code(text);
  }

  /** A picture, with the words that stand for it where it cannot be seen. */
  static Inline picture(Destination from, String instead) {
    return new Picture(from, instead);
  }

  /** What a record is called, with its id, by which the builder finds it. */
  static Inline named(String what, String id) {
    return new Named(what, id);
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
    public <R> R match(Cases<R> cases) {
      return cases.text(text);
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
    public <R> R match(Cases<R> cases) {
      return cases.strong(inside);
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
    public <R> R match(Cases<R> cases) {
      return cases.emphasis(inside);
    }
  }

  /**
   * A name or value.
   *
   * @param text what is shown
   */
  record Code(String text) implements Inline {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.code(text);
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
    public <R> R match(Cases<R> cases) {
      return cases.link(to, inside);
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
    public <R> R match(Cases<R> cases) {
      return cases.picture(from, instead);
    }
  }

  /**
   * What a record is called, with its id.
   *
   * @param what its name
   */
  record Named(String what, String id) implements Inline {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.named(what, id);
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
    public <R> R match(Cases<R> cases) {
      return cases.together(parts);
    }
  }

  record NewLine() implements Inline {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.newLine();
    }
  }
}
