package kitwright.yaml;

import java.util.List;
import java.util.Optional;
import kitwright.value.Place;

/** A piece of YAML with its place. Nothing is typed yet: every scalar is its text. */
public sealed interface Node {
  /** Where it stands. */
  Place at();

  /** What a person calls it: a value, a list, a group of keys. */
  String word();

  /**
   * One value.
   *
   * @param text as written, without quotes
   * @param quoted whether quotes stood round it, so that an empty text is meant
   */
  record Scalar(String text, boolean quoted, Place at) implements Node {
    /** Whether nothing was written: empty, {@code ~} or {@code null}. */
    public boolean isEmpty() {
      return !quoted && (text.isEmpty() || text.equals("~") || text.equals("null"));
    }

    @Override
    public String word() {
      return "a plain value";
    }
  }

  /** A list. */
  record Listing(List<Node> items, Place at) implements Node {
    public Listing {
      items = List.copyOf(items);
    }

    @Override
    public String word() {
      return "a list";
    }
  }

  /** Keys and their values, each key once, in the order written. */
  record Mapping(List<Entry> entries, Place at) implements Node {
    public Mapping {
      entries = List.copyOf(entries);
    }

    @Override
    public String word() {
      return "a group of keys";
    }

    /** The value of a key. */
    public Optional<Node> get(String key) {
      for (Entry entry : entries) {
        if (entry.key().text().equals(key)) {
          return Optional.of(entry.value());
        }
      }
      return Optional.empty();
    }
  }

  /** A key with its value. */
  record Entry(Scalar key, Node value) {}

  /** Something that has been reported already and carries no value. */
  record Unreadable(Place at) implements Node {
    @Override
    public String word() {
      return "unreadable";
    }
  }
}
