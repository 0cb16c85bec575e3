package kitwright.check;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Rule;

/** Fires where two records of one kind have the same id. */
public final class IdTwice implements Rule {
  /** What nobody gave an id; two of a day have rules of their own. */
  private static final Set<Kind> TOLD_ELSEWHERE = EnumSet.of(Kind.BUILD, Kind.RATES, Kind.FORECAST);

  @Override
  public void examine(Facts day, Findings out) {
    for (Kind kind : Kind.values()) {
      if (!TOLD_ELSEWHERE.contains(kind) && day.written().hasSameIds(kind)) {
        examine(day.written().entries(kind), out);
      }
    }
  }

  private void examine(List<Entry> entries, Findings out) {
    Map<String, Entry> seen = new HashMap<>();
    for (Entry entry : entries) {
      Entry first = seen.putIfAbsent(entry.id(), entry);
      if (first != null) {
        out.add(twice(entry, first));
      }
    }
  }

  private Finding twice(Entry entry, Entry first) {
    return stop(
        entry.at().record(),
        "The "
            + entry.named()
            + " stands here for the second time; the first is at "
            + first.at().record()
            + ".",
        "Whatever refers to it gets the first; sums count both.",
        entry.kind() == Kind.LOG
            ? "Correct the day of one of them, write both into one file, or delete one if it was"
                + " recorded twice."
            : "Give one of them another id, or delete it if it was recorded twice.",
        List.of(entry.named()));
  }
}
