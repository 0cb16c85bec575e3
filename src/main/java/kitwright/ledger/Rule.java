package kitwright.ledger;

import java.time.LocalDate;
import kitwright.finding.Findings;

/**
 * Something that must hold of a ledger. The rule's page {@code kitwright/rules/NAME.md} among the
 * resources says what it protects against and shows a ledger that fires it and one that does not.
 */
public interface Rule {
  /** The fault, in kebab-case words. */
  String name();

  /** Adds a finding for each place where it does not hold on that day. */
  void examine(Ledger ledger, LocalDate today, Findings out);
}
