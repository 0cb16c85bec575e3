package kitwright.edit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Layout;
import kitwright.ledger.Layouts;

/**
 * Something that people do and then write down: which record it begins or changes, and which of its
 * keys tell it. How each is asked and read follows from the key’s own declaration.
 *
 * @param word of the command line
 * @param does what it records, in a line
 * @param example how it is written
 * @param begins whether it begins a record; else it changes one, which is named first
 * @param into the key of that record whose group it fills or adds to; empty for the record’s own
 * @param once the key that says that it was done already; empty where it may be done again
 * @param fixed keys that the word itself answers
 * @param given keys that words without an option answer, in their order; the last takes the rest
 * @param asked keys that must be answered though the record could do without them
 * @param offered keys that a dialogue asks as well
 */
public record Deed(
    String word,
    String does,
    String example,
    Kind kind,
    boolean begins,
    String into,
    String once,
    Map<String, String> fixed,
    List<String> given,
    List<String> asked,
    List<String> offered) {
  public Deed {
    fixed = Map.copyOf(fixed);
    given = List.copyOf(given);
    asked = List.copyOf(asked);
    offered = List.copyOf(offered);
  }

  static Deed begins(String word, Kind kind, String does, String example) {
    return new Deed(
        word, does, example, kind, true, "", "", Map.of(), List.of(), List.of(), List.of());
  }

  static Deed changes(String word, Kind kind, String does, String example) {
    return new Deed(
        word, does, example, kind, false, "", "", Map.of(), List.of(), List.of(), List.of());
  }

  Deed into(String group) {
    return new Deed(word, does, example, kind, begins, group, once, fixed, given, asked, offered);
  }

  Deed once(String key) {
    return new Deed(word, does, example, kind, begins, into, key, fixed, given, asked, offered);
  }

  Deed fixed(String key, String value) {
    return new Deed(
        word, does, example, kind, begins, into, once, Map.of(key, value), given, asked, offered);
  }

  Deed given(String... keys) {
    return new Deed(
        word, does, example, kind, begins, into, once, fixed, List.of(keys), asked, offered);
  }

  Deed asked(String... keys) {
    return new Deed(
        word, does, example, kind, begins, into, once, fixed, given, List.of(keys), offered);
  }

  Deed offered(String... keys) {
    return new Deed(
        word, does, example, kind, begins, into, once, fixed, given, asked, List.of(keys));
  }

  /** The keys that may tell it, in the order of the record. */
  public List<Key> keys() {
    Layout layout = new Layouts().of(kind);
    Layout told = into.isEmpty() ? layout : key(layout, into).flatMap(Key::inner).orElseThrow();
    boolean all = begins || !into.isEmpty();
    return told.keys().stream()
        .filter(key -> !fixed.containsKey(key.name()))
        .filter(
            key ->
                all
                    || asked.contains(key.name())
                    || offered.contains(key.name())
                    || once.equals(key.name()))
        .toList();
  }

  private static Optional<Key> key(Layout layout, String name) {
    return layout.keys().stream().filter(key -> key.name().equals(name)).findFirst();
  }

  /** Whether it cannot be told without the key. */
  public boolean needs(Key key) {
    return asked.contains(key.name())
        || (key.needed() && !isName(key) && (begins || !into.isEmpty()));
  }

  /** Whether it is the record’s own name, which is made where none is given. */
  public boolean isName(Key key) {
    String name = kind == Kind.BUDGET ? "line" : "id";
    return begins && into.isEmpty() && key.name().equals(name);
  }
}
