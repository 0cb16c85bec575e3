package kitwright.drawing;

import kitwright.value.Word;

/** What an area is filled with. Each can be told from the others on a black-and-white print. */
public enum Shade {
  NONE("none"),
  WHITE("#ffffff"),
  PALE("#ececec"),
  MIDDLE("#b4b4b4"),
  DARK("#5a5a5a"),
  BLACK("#1a1a1a"),
  /** For what stops work: dark on a print without colour. */
  RUST("#9a3412"),
  /** Fine lines that rise to the right. */
  SLANTED("<path d=\"M-1 5L5 -1M3 9L9 3\" stroke=\"#1a1a1a\" stroke-width=\"0.9\"/>"),
  /** Fine lines both ways. */
  CROSSED("<path d=\"M0 0L8 8M8 0L0 8\" stroke=\"#1a1a1a\" stroke-width=\"0.7\"/>"),
  /** Fine upright lines. */
  UPRIGHT("<path d=\"M2 0V8M6 0V8\" stroke=\"#1a1a1a\" stroke-width=\"0.8\"/>"),
  /** Dots. */
  DOTTED("<circle cx=\"2\" cy=\"2\" r=\"0.9\"/><circle cx=\"6\" cy=\"6\" r=\"0.9\"/>");

  private final String drawn;

  Shade(String drawn) {
    this.drawn = drawn;
  }

  private boolean isPattern() {
    return drawn.startsWith("<");
  }

  private String id() {
    return Word.key(this);
  }

  /** As an attribute's value. */
  String paint() {
    return isPattern() ? "url(#" + id() + ")" : drawn;
  }

  /** The pattern that the paint refers to; empty for a plain colour. */
  String pattern() {
    return isPattern()
        ? "<pattern id=\""
            + id()
            + "\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\">"
            + "<rect width=\"8\" height=\"8\" fill=\"#ffffff\"/>"
            + drawn
            + "</pattern>\n"
        : "";
  }
}
