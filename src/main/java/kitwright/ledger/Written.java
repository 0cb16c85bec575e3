package kitwright.ledger;

import java.util.Comparator;
import java.util.Set;
import java.util.regex.Pattern;
import kitwright.yaml.Node;
import org.jspecify.annotations.Nullable;

/** Where a record that can be signed for stands, and what was written there. */
public final class Written extends At {
  private static final Pattern WHITE_SPACE = Pattern.compile("\\s+");

  private final Node.Mapping source;

  Written(Node.Mapping source, Layout layout, int[] slots, @Nullable Object[] bySlot) {
    super(source, layout, slots, bySlot);
    this.source = source;
  }

  /**
   * The record in a canonical form, for fingerprints: keys in alphabetical order, runs of white
   * space as one space, quotes and comments gone. Lists keep their order, since it may mean
   * something.
   *
   * @param without top keys that are left out
   */
  public String canonical(Set<String> without) {
    Node.Mapping kept =
        new Node.Mapping(
            source.entries().stream()
                .filter(entry -> !without.contains(entry.key().text()))
                .toList(),
            source.at());
    StringBuilder out = new StringBuilder();
    write(kept, out);
    return out.toString();
  }

  private static void write(Node node, StringBuilder out) {
    if (node instanceof Node.Scalar scalar) {
      String text = scalar.isEmpty() ? "" : spaced(scalar.text().strip());
      out.append(text.length()).append(':').append(text);
    } else if (node instanceof Node.Listing list) {
      out.append('[');
      list.items().forEach(item -> write(item, out));
      out.append(']');
    } else if (node instanceof Node.Mapping mapping) {
      out.append('{');
      mapping.entries().stream()
          .sorted(Comparator.comparing(entry -> entry.key().text()))
          .forEach(
              entry -> {
                write(entry.key(), out);
                write(entry.value(), out);
              });
      out.append('}');
    }
  }

  /** The text with each run of white space as one space. */
  private static String spaced(String text) {
    return text.indexOf("  ") < 0 && text.chars().noneMatch(c -> c < ' ')
        ? text
        : WHITE_SPACE.matcher(text).replaceAll(" ");
  }
}
