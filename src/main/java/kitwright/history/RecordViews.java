package kitwright.history;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.At;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Layout;
import kitwright.ledger.Layouts;
import kitwright.ledger.Ledger;

/** Records that are new, gone or say something else; where they stand does not matter. */
final class RecordViews {
  private RecordViews() {}

  /** The changes, kind by kind, in the order of the newer ledger, what is gone last. */
  static List<Change> changes(Facts before, Facts now, Hands hands) {
    List<Change> changes = new ArrayList<>();
    Layouts layouts = new Layouts();
    for (Kind kind : Kind.values()) {
      Map<String, Entry> old = byId(before.ledger(), kind);
      Map<String, Entry> young = byId(now.ledger(), kind);
      young.forEach(
          (id, entry) -> {
            Entry other = old.get(id);
            if (other == null) {
              Held was = absent(before, entry, new Held.Nothing());
              changes.add(change(entry, was, Held.Told.of("new"), hands));
            } else {
              Layout layout = layouts.of(kind);
              List<String> keys = differing(values(other, layout), values(entry, layout));
              if (!keys.isEmpty()) {
                changes.add(change(entry, Held.Told.of("there"), new Held.Changed(keys), hands));
              }
            }
          });
      old.forEach(
          (id, entry) -> {
            if (!young.containsKey(id)) {
              Held is = absent(now, entry, Held.Told.of("gone"));
              changes.add(change(entry, Held.Told.of("there"), is, hands));
            }
          });
    }
    return changes;
  }

  /** What is written and cannot be read is not gone. */
  private static Held absent(Facts day, Entry entry, Held gone) {
    return day.written().isUnread(entry.kind(), entry.id()) ? Held.Told.of("cannot be read") : gone;
  }

  private static Change change(Entry entry, Held before, Held now, Hands hands) {
    return new Change(
        Matter.RECORDS,
        entry.kind().word(),
        entry.id(),
        before,
        now,
        hands.on(entry.at().record().file()));
  }

  private static Map<String, Entry> byId(Ledger ledger, Kind kind) {
    Map<String, Entry> all = new LinkedHashMap<>();
    ledger.entries(kind).forEach(entry -> all.putIfAbsent(entry.id(), entry));
    return all;
  }

  /** Everything written in a record, in the order of its keys: the key’s path and the value. */
  private static List<String[]> values(Entry entry, Layout layout) {
    List<String[]> all = new ArrayList<>();
    values(entry.at(), layout, "", all);
    return all;
  }

  @SuppressWarnings("unchecked") // the value of a key with keys inside is their places
  private static void values(At at, Layout layout, String path, List<String[]> all) {
    for (Key key : layout.keys()) {
      Optional<Object> value = at.value(key.name());
      if (value.isPresent() && key.inner().isPresent()) {
        for (At inner : (List<At>) value.get()) {
          values(inner, key.inner().get(), path + key.name() + " → ", all);
        }
      } else {
        value.ifPresent(v -> all.add(new String[] {path + key.name(), String.valueOf(v)}));
      }
    }
  }

  private static List<String> differing(List<String[]> before, List<String[]> now) {
    Map<String, List<String>> old = byKey(before);
    Map<String, List<String>> young = byKey(now);
    Set<String> keys = new LinkedHashSet<>(young.keySet());
    keys.addAll(old.keySet());
    return keys.stream()
        .filter(key -> !old.getOrDefault(key, List.of()).equals(young.getOrDefault(key, List.of())))
        .toList();
  }

  private static Map<String, List<String>> byKey(List<String[]> values) {
    Map<String, List<String>> all = new LinkedHashMap<>();
    values.forEach(value -> all.computeIfAbsent(value[0], any -> new ArrayList<>()).add(value[1]));
    return all;
  }
}
