package kitwright.report;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import kitwright.assessment.Assessments;
import kitwright.assessment.Judging;
import kitwright.kit.Positions;
import kitwright.ledger.Ledger;
import kitwright.money.Account;
import kitwright.money.Spent;
import kitwright.network.Plan;
import kitwright.openmatter.Bearings;

/**
 * The ledger and everything that follows from it on a day, worked out once for all documents.
 *
 * @param loans every tool borrowed up to that day
 */
public record Situation(
    Ledger ledger,
    LocalDate today,
    Positions positions,
    kitwright.substitution.Standings substitutions,
    kitwright.shortage.Standings shortages,
    kitwright.claim.Standings claims,
    List<kitwright.loan.Standing> loans,
    Account account,
    Assessments assessments) {

  /** Works it out. */
  public static Situation of(Ledger ledger, LocalDate today) {
    Assessments assessments = Assessments.of(ledger);
    Positions positions = Positions.of(ledger, today);
    kitwright.substitution.Standings substitutions =
        kitwright.substitution.Standings.of(ledger, Judging.of(ledger, assessments), today);
    kitwright.shortage.Standings shortages =
        kitwright.shortage.Standings.of(ledger, positions, substitutions);
    return new Situation(
        ledger,
        today,
        positions,
        substitutions,
        shortages,
        kitwright.claim.Standings.of(ledger, shortages, today),
        kitwright.loan.Standing.all(ledger, today),
        Spent.asOf(ledger, today, shortages),
        assessments);
  }

  /** The same with the network: tasks, dates and material against need. */
  Bearings bearings() {
    return Bearings.of(ledger, today, Plan.of(ledger, today), Judging.of(ledger, assessments));
  }

  /** The currency in which everything is summed. */
  Currency home() {
    return ledger.build().currency();
  }
}
