package kitwright.ledger;

import java.util.List;
import kitwright.finding.Findings;

/**
 * A rule that looks at one record after another. Where it breaks inside, the record is known and
 * the others are looked at all the same.
 */
public interface RecordRule<E extends Entry> extends Rule {
  /** The records that it looks at. */
  List<E> records(Facts day);

  /** Adds a finding for each place of the record where it does not hold. */
  void examine(E entry, Facts day, Findings out);

  @Override
  default void examine(Facts day, Findings out) {
    for (E entry : records(day)) {
      examine(entry, day, out);
    }
  }
}
