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
   * One value. Its place is kept as numbers and made when asked for: a large ledger holds a million
   * values and tells the places of a few.
   *
   * @param text as written, without quotes
   * @param quoted whether quotes stood round it, so that an empty text is meant
   */
  record Scalar(
      String text, boolean quoted, String file, int line, int column, int endLine, int endColumn)
      implements Node {
    /** A value at a place. */
    static Scalar at(Place at, String text) {
      return new Scalar(
          text, false, at.file(), at.line(), at.column(), at.endLine(), at.endColumn());
    }

    @Override
    public Place at() {
      return new Place(file, line, column, endLine, endColumn);
    }

    /** Whether nothing was written: empty, {@code ~} or {@code null}. */
    public boolean isEmpty() {
      return !quoted && (text.isEmpty() || text.equals("~") || text.equals("null"));
    }

    @Override
    public String word() {
      return "a plain value";
    }
  }

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

    /** A group of one key, for which its value alone was written. */
    public static Mapping ofOne(String key, Scalar value) {
      return new Mapping(List.of(new Entry(Scalar.at(value.at(), key), value)), value.at());
    }

    /** The value of a key. */
    public Optional<Node> get(String key) {
      int index = indexOf(key);
      return index < 0 ? Optional.empty() : Optional.of(entries.get(index).value());
    }

    /** Which entry has a key; below zero where none has. A record has few keys, so no map. */
    int indexOf(String key) {
      for (int i = 0; i < entries.size(); i++) {
        if (entries.get(i).key().text().equals(key)) {
          return i;
        }
      }
      return -1;
    }
  }

  record Entry(Scalar key, Node value) {}

  /**
   * Something that has been reported already and carries no value.
   *
   * @param lost what stands there all the same
   */
  record Unreadable(Place at, List<Node> lost) implements Node {
    public Unreadable {
      lost = List.copyOf(lost);
    }

    public Unreadable(Place at) {
      this(at, List.of());
    }

    @Override
    public String word() {
      return "unreadable";
    }
  }
}
