package kitwright.history;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;

/** What holds, on a day, of each thing that a matter is about: the same question for two days. */
abstract class View {
  private final Matter matter;

  View(Matter matter) {
    this.matter = matter;
  }

  final Matter matter() {
    return matter;
  }

  /** Tells what holds of each thing. */
  abstract void look(Facts day, Seen seen);

  /** Whether it is worth telling that one became the other. */
  boolean tells(Held was, Held is) {
    return true;
  }

  /**
   * A thing.
   *
   * @param file in which its record stands; empty where it has none of its own
   */
  record Thing(String what, Held held, Optional<String> file) {}

  /** The things of a matter by id, in their order. */
  static final class Seen {
    private final Map<String, Thing> things = new LinkedHashMap<>();

    void add(Entry entry, String what, Held held) {
      String file = entry.at().record().file();
      things.putIfAbsent(entry.id(), new Thing(what, held, Optional.of(file)));
    }

    void add(String id, String what, Held held) {
      things.putIfAbsent(id, new Thing(what, held, Optional.empty()));
    }

    Map<String, Thing> things() {
      return things;
    }
  }
}
