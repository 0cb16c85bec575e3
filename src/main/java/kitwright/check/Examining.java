package kitwright.check;

import java.util.HashSet;
import java.util.Set;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Fault;
import kitwright.ledger.RecordRule;
import kitwright.ledger.Rule;

/**
 * Runs rules one after another. One that breaks inside becomes a finding of its own, keeps what it
 * had found, and silences no other.
 */
final class Examining {
  static final String RULE = "rule-broken";

  private final Facts day;
  private final Findings out;
  private final Set<String> brokenFacts = new HashSet<>();

  Examining(Facts day, Findings out) {
    this.day = day;
    this.out = out;
  }

  void run(Rule rule) {
    if (rule instanceof RecordRule<?> each) {
      eachRecord(each);
    } else {
      try {
        rule.examine(day, out);
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError thrown) {
        tell(rule, Fault.of(thrown));
      }
    }
  }

  private <E extends Entry> void eachRecord(RecordRule<E> rule) {
    for (E entry : rule.records(day)) {
      try {
        rule.examine(entry, day, out);
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError thrown) {
        Fault fault = Fault.of(thrown);
        tell(rule, fault.fact().isPresent() ? fault : fault.at(entry));
      }
    }
  }

  /** A fact that breaks is told once, however many rules lean on it. */
  private void tell(Rule rule, Fault fault) {
    if (fault.fact().isEmpty()) {
      out.add(
          fault.finding(
              RULE,
              "The rule " + rule.name() + " breaks inside",
              "What it would have said further is not told.",
              day.written().build()));
    } else if (brokenFacts.add(fault.fact().get())) {
      out.add(
          fault.finding(
              RULE,
              "What follows from the records cannot be worked out (" + fault.fact().get() + ")",
              "Every rule, report and list that leans on it is silent or lacks it.",
              day.written().build()));
    }
  }
}
