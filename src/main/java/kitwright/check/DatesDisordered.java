package kitwright.check;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.At;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Key;
import kitwright.ledger.Ledger;
import kitwright.value.Days;
import kitwright.value.Ref;

/** Fires where a day lies before another that its declaration says it cannot lie before. */
public final class DatesDisordered extends KeyRule {
  @Override
  void examine(Seen seen, Facts day, Findings out) {
    if (seen.value() instanceof LocalDate when) {
      for (String path : seen.key().notBefore()) {
        earlier(seen.within(), path, day.written())
            .filter(earlier -> when.isBefore(earlier.day()))
            .forEach(earlier -> out.add(disordered(seen, when, earlier)));
      }
    }
  }

  /**
   * A day that should come first.
   *
   * @param whose where it stands, if in another record
   */
  private record Earlier(String key, LocalDate day, String whose) {
    String told() {
      return "“" + key + "”" + whose;
    }
  }

  /** The days at a path, in the first group that has its first key. */
  private static Stream<Earlier> earlier(List<At> within, String path, Ledger ledger) {
    String first = path.split("\\.", 2)[0];
    return within.stream()
        .filter(group -> group.value(first).isPresent())
        .findFirst()
        .map(group -> earlier(group, path, "", ledger))
        .orElse(Stream.empty());
  }

  private static Stream<Earlier> earlier(At group, String path, String whose, Ledger ledger) {
    String[] names = path.split("\\.", 2);
    Object value = group.value(names[0]).orElse("");
    if (names.length == 1) {
      return value instanceof LocalDate day
          ? Stream.of(new Earlier(names[0], day, whose))
          : Stream.empty();
    }
    List<Key> key = group.key(names[0]).stream().toList();
    return (value instanceof Collection<?> several ? several.stream() : Stream.of(value))
        .flatMap(
            one ->
                one instanceof At inner
                    ? earlier(inner, names[1], " under “" + names[0] + "”", ledger)
                    : records(key, one, ledger)
                        .flatMap(
                            entry ->
                                earlier(entry.at(), names[1], " of the " + entry.named(), ledger)));
  }

  private static Stream<Entry> records(List<Key> key, Object value, Ledger ledger) {
    return value instanceof Ref ref
        ? key.stream()
            .flatMap(each -> each.kinds().stream())
            .flatMap(kind -> ledger.<Entry>find(kind, ref.id()).stream())
        : Stream.empty();
  }

  private Finding disordered(Seen seen, LocalDate when, Earlier earlier) {
    return stop(
        seen.at().of(seen.key().name()),
        "The "
            + seen.entry().named()
            + " says “"
            + seen.key().name()
            + ": "
            + when
            + "”, which is before "
            + earlier.told()
            + " ("
            + Days.named(earlier.day())
            + ").",
        "Ages, deadlines and sums built on it are false.",
        "Look both dates up and correct the wrong one.",
        List.of(seen.entry().named()));
  }
}
