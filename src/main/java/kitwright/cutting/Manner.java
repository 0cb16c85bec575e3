package kitwright.cutting;

/** The kinds of cutting among which a plan was looked for. */
public enum Manner {
  LENGTHS("by cross-cuts of whole boards"),
  STRIPS("in strips"),
  ANY("by any straight cuts from edge to edge");

  private final String words;

  Manner(String words) {
    this.words = words;
  }

  /** As it goes on after “no plan”. */
  public String words() {
    return words;
  }
}
