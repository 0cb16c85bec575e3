package kitwright.document;

import java.util.List;

/** Parts of a line as bare words: for JSON, and for a terminal. A new line becomes a stroke. */
final class PlainWords implements Inline.Cases<String> {
  private static final PlainWords CASES = new PlainWords();

  private PlainWords() {}

  static String of(Inline part) {
    return part.match(CASES);
  }

  /** The words of several parts, with blanks drawn together. */
  static String of(List<Inline> parts) {
    StringBuilder out = new StringBuilder();
    for (Inline part : parts) {
      out.append(of(part));
    }
    return out.toString();
  }

  @Override
  public String text(String text) {
    return text;
  }

  @Override
  public String strong(List<Inline> inside) {
    return of(inside);
  }

  @Override
  public String emphasis(List<Inline> inside) {
    return of(inside);
  }

  @Override
  public String code(String text) {
    return text;
  }

  @Override
  public String link(Destination to, List<Inline> inside) {
    String words = of(inside);
    return to.reference().startsWith("#") || words.contains(to.reference())
        ? words
        : words + " (" + to.reference() + ")";
  }

  @Override
  public String picture(Destination from, String instead) {
    return instead + " (" + from.reference() + ")";
  }

  @Override
  public String named(String what, String id) {
    return what + " (" + id + ")";
  }

  @Override
  public String together(List<Inline> parts) {
    return of(parts);
  }

  @Override
  public String newLine() {
    return " / ";
  }
}
