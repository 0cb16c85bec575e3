package kitwright.ledger;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The keys of a kind of record, or of a group in one, in the order in which they are asked. */
public final class Layout {
  private final List<Key> keys = new ArrayList<>();
  private final Map<String, Integer> slots = new HashMap<>();

  private Layout() {}

  /** Learns a form by reading nothing with it. */
  public static Layout of(Function<Keys, ?> form) {
    Layout layout = new Layout();
    Object unused = form.apply(Keys.learning(layout));
    return layout;
  }

  void note(Key key) {
    if (slots.putIfAbsent(key.name(), keys.size()) != null) {
      throw new IllegalStateException("the key “" + key.name() + "” is declared twice");
    }
    keys.add(key);
  }

  /** The keys as they are declared. */
  public List<Key> keys() {
    return Collections.unmodifiableList(keys);
  }

  Key key(int slot) {
    return keys.get(slot);
  }

  int size() {
    return keys.size();
  }

  /** Where a key stands; below zero where there is none. */
  int slotOf(String name) {
    Integer slot = slots.get(name);
    return slot == null ? -1 : slot;
  }

  /** Whether one of the keys tells from when on the record is there. */
  boolean opens() {
    return keys.stream().anyMatch(key -> key.traits().contains(Key.Trait.OPENS));
  }

  List<String> names() {
    return keys.stream().map(Key::name).toList();
  }
}
