package kitwright.ledger;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import kitwright.value.Place;
import kitwright.yaml.Node;

/**
 * A record, or a stretch of a file, that could not be read. What it says nobody knows; what it
 * names is in doubt.
 *
 * @param named how it is told: {@code log day 2026-03-24}, or where the stretch begins
 * @param kind of a record; empty of a stretch of a file, which may hold any
 * @param id of a record; empty text where it has none
 * @param at where a record, or what stands under a key, begins
 * @param text all that stands in it
 * @param isUnseen whether nobody can see what stands in it, so that it may name anything
 */
public record Unread(
    String named,
    Optional<Kind> kind,
    String id,
    Optional<Place> at,
    String text,
    boolean isUnseen) {
  /** Whoever takes of what is there, or sends it back; of the others a lost one leaves less. */
  private static final Set<Kind> TAKERS =
      EnumSet.of(Kind.LOG, Kind.CUTS, Kind.TASKS, Kind.SUBSTITUTIONS, Kind.DELIVERIES);

  static Unread record(Kind kind, Entry entry, Node node) {
    String named = entry.id().isEmpty() ? "the " + kind.word() + at(node.at()) : entry.named();
    return new Unread(
        named, Optional.of(kind), entry.id(), Optional.of(node.at()), words(node), false);
  }

  /** What stands under a key that names no kind of record, or is no record. */
  static Unread under(Node.Scalar key, Node node) {
    return new Unread(
        "“" + key.text() + "”" + at(key.at()),
        Optional.empty(),
        "",
        Optional.of(key.at()),
        words(node),
        false);
  }

  /** A file from a line on. */
  static Unread from(SourceFile file, int line) {
    String rest = String.join("\n", file.text().lines().skip(line - 1L).toList());
    String named = line < 2 ? file.path() : file.path() + " from line " + line + " on";
    return new Unread(named, Optional.empty(), "", Optional.empty(), Sorts.composed(rest), false);
  }

  /** A file that could not be opened. */
  static Unread unopened(SourceFile file) {
    return new Unread(
        file.path(),
        Optional.empty(),
        "",
        Optional.empty(),
        Sorts.composed(file.text()),
        file.text().isEmpty());
  }

  private static String at(Place at) {
    return " in " + at.file() + " on line " + at.line();
  }

  private static String words(Node node) {
    StringBuilder words = new StringBuilder();
    gather(node, words);
    return Sorts.composed(words.toString());
  }

  private static void gather(Node node, StringBuilder words) {
    if (node instanceof Node.Scalar scalar) {
      words.append(scalar.text()).append('\n');
    } else if (node instanceof Node.Listing list) {
      list.items().forEach(item -> gather(item, words));
    } else if (node instanceof Node.Unreadable lost) {
      lost.lost().forEach(item -> gather(item, words));
    } else if (node instanceof Node.Mapping mapping) {
      for (Node.Entry entry : mapping.entries()) {
        gather(entry.key(), words);
        gather(entry.value(), words);
      }
    }
  }

  /** Whether it may take something that is there, or promise it to somebody. */
  public boolean mayTake() {
    return kind.isEmpty() || TAKERS.contains(kind.get());
  }

  /** Whether it may be a record of a kind. */
  public boolean mayBe(Kind other) {
    return kind.isEmpty() || kind.get() == other;
  }

  /** Whether it is the record of a kind with an id. */
  boolean is(Kind other, String name) {
    return kind.filter(other::equals).isPresent() && id.equals(name);
  }

  /** {@code stands at tasks.yaml:12 but cannot be read}, or which stretch may hold it. */
  String whyNot() {
    return kind.isPresent()
        ? "stands"
            + at.map(place -> " at " + place.file() + ":" + place.line()).orElse("")
            + " but"
            + " cannot be read"
        : "may stand in " + named + ", which cannot be read";
  }

  /** Whether an id stands in it, by itself, or may. */
  public boolean names(String id) {
    if (isUnseen) {
      return true;
    }
    int at = text.indexOf(id);
    while (at >= 0) {
      if (isEnd(at - 1) && isEnd(at + id.length())) {
        return true;
      }
      at = text.indexOf(id, at + 1);
    }
    return false;
  }

  private boolean isEnd(int at) {
    return at < 0
        || at >= text.length()
        || !(Character.isLetterOrDigit(text.charAt(at)) || "-_".indexOf(text.charAt(at)) >= 0);
  }
}
