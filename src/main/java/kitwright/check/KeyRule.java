package kitwright.check;

import java.util.List;
import kitwright.finding.Findings;
import kitwright.ledger.At;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Key;
import kitwright.ledger.RecordRule;

/** A rule about every key of a sort, in records of whatever kind: their declarations say which. */
abstract class KeyRule implements RecordRule<Entry> {
  @Override
  public final List<Entry> records(Facts day) {
    return day.written().all();
  }

  @Override
  public final void examine(Entry entry, Facts day, Findings out) {
    entry.at().each(new Look(this, entry, day, out));
  }

  /** A class, not a lambda: one is made for every record and rule. */
  private record Look(KeyRule rule, Entry entry, Facts day, Findings out) implements At.Visitor {
    @Override
    public void see(List<At> within, Key key, Object value) {
      rule.examine(new Seen(entry, within, key, value), day, out);
    }
  }

  /** Adds a finding where a value is not as it must be. */
  abstract void examine(Seen seen, Facts day, Findings out);

  /**
   * A value that was written.
   *
   * @param within the group it stands in, then those around it
   */
  record Seen(Entry entry, List<At> within, Key key, Object value) {
    /** As its place is looked up. */
    At at() {
      return within.get(0);
    }

    /** As the sentence of a finding begins: “found: 2026-03-02” of the shortage keel. */
    String told(Object written) {
      return "“" + key.name() + ": " + written + "” of the " + entry.named();
    }
  }
}
