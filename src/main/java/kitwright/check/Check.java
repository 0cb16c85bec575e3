package kitwright.check;

import java.time.LocalDate;
import java.util.List;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Judges a ledger by every rule there is. */
public final class Check {
  private Check() {}

  /**
   * Every rule, in the order in which their pages are best read. Facts that several rules need are
   * worked out here once and handed to their constructors.
   */
  public static List<Rule> rules(Ledger ledger, LocalDate today) {
    return List.of(
        // Form: ids, references, dates, evidence.
        new IdTwice(),
        new ReferenceDangling(),
        new DatesDisordered(),
        new DateImpossible(),
        new EvidenceAbsent(),
        new EvidenceAltered());
  }

  /** Adds what every rule finds on that day. */
  public static void examine(Ledger ledger, LocalDate today, Findings out) {
    rules(ledger, today).forEach(rule -> rule.examine(ledger, today, out));
  }
}
