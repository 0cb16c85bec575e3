package kitwright.history;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Facts;

/**
 * What is otherwise than it was: the facts of two ledgers, each on its own day, side by side.
 *
 * @param all matter by matter, in the newer ledger's order
 */
public record Changes(List<Change> all) {
  private static final View.Thing ABSENT = new View.Thing("", new Held.Nothing(), Optional.empty());

  public Changes {
    all = List.copyOf(all);
  }

  /** Compares. */
  public static Changes between(Facts before, Facts now, Hands hands) {
    List<Change> all = new ArrayList<>();
    for (View view : Views.all()) {
      all.addAll(changes(view, before, now, hands));
    }
    all.addAll(RecordViews.changes(before, now, hands));
    return new Changes(all);
  }

  private static List<Change> changes(View view, Facts before, Facts now, Hands hands) {
    Map<String, View.Thing> old = seen(view, before);
    Map<String, View.Thing> young = seen(view, now);
    Set<String> ids = new LinkedHashSet<>(young.keySet());
    ids.addAll(old.keySet());
    List<Change> changes = new ArrayList<>();
    for (String id : ids) {
      View.Thing was = old.getOrDefault(id, ABSENT);
      View.Thing is = young.getOrDefault(id, ABSENT);
      if (!was.held().equals(is.held()) && view.tells(was.held(), is.held())) {
        View.Thing named = young.containsKey(id) ? is : was;
        Set<String> by = named.file().map(hands::on).orElse(Set.of());
        changes.add(new Change(view.matter(), named.what(), id, was.held(), is.held(), by));
      }
    }
    return changes;
  }

  private static Map<String, View.Thing> seen(View view, Facts day) {
    View.Seen seen = new View.Seen();
    view.look(day, seen);
    return seen.things();
  }

  /** Those of one matter. */
  public List<Change> of(Matter matter) {
    return all.stream().filter(change -> change.matter() == matter).toList();
  }
}
