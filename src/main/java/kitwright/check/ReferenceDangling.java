package kitwright.check;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.value.Nearest;
import kitwright.value.Ref;

/** Fires where a record names another that is not there. */
public final class ReferenceDangling extends KeyRule {
  @Override
  void examine(Seen seen, Facts day, Findings out) {
    if (!seen.key().kinds().isEmpty() && seen.key().toldBy().isEmpty()) {
      refs(seen.value()).forEach(ref -> examine(seen.entry(), seen.key(), ref, day.written(), out));
    }
  }

  private void examine(Entry entry, Key key, Ref ref, Ledger ledger, Findings out) {
    if (key.kinds().stream().noneMatch(kind -> ledger.knows(kind, ref.id()))) {
      out.add(dangling(entry, key, ref, ledger));
    }
  }

  /** One, several, or the names before several values. */
  private static List<Ref> refs(Object value) {
    Collection<?> all =
        value instanceof Map<?, ?> map
            ? map.keySet()
            : value instanceof Collection<?> list ? list : List.of(value);
    return all.stream().map(Ref.class::cast).toList();
  }

  private Finding dangling(Entry entry, Key key, Ref ref, Ledger ledger) {
    Kind kind = key.kinds().get(0);
    String id = ref.id();
    String word = kind.word();
    Optional<String> near = Nearest.to(id, ledger.ids(kind));
    return stop(
        ref.at(),
        "There is no " + word + " “" + id + "”.",
        key.unknown()
            .orElse(
                "The " + entry.named() + " leads nowhere here, and sums and dates leave it out."),
        near.map(found -> "Did you mean “" + found + "”?")
            .or(() -> elsewhere(id, ledger))
            .orElse(
                "Record the "
                    + word
                    + ", or correct the name."
                    + (kind == Kind.MATERIALS
                        ? " “kitwright materials” lists those that are built in."
                        : "")),
        List.of(entry.named()));
  }

  private static Optional<String> elsewhere(String id, Ledger ledger) {
    for (Kind kind : Kind.values()) {
      if (ledger.knows(kind, id)) {
        return Optional.of(
            "“" + id + "” is a " + kind.word() + "; name the right kind, or record it.");
      }
    }
    return Optional.empty();
  }
}
