package kitwright.report;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.stream.Collectors;
import kitwright.assessment.Judging;
import kitwright.kit.Positions;
import kitwright.ledger.Ledger;
import kitwright.money.Account;
import kitwright.money.Spent;

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
    Account account) {

  /** Works it out. */
  public static Situation of(Ledger ledger, LocalDate today) {
    Positions positions = Positions.of(ledger, today);
    kitwright.substitution.Standings substitutions =
        kitwright.substitution.Standings.of(ledger, Judging.of(ledger), today);
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
        Spent.asOf(
            ledger,
            today,
            shortages.all().stream()
                .filter(each -> !each.isOpen())
                .map(each -> each.shortage().id())
                .collect(Collectors.toSet())));
  }

  /** The currency in which everything is summed. */
  Currency home() {
    return ledger.build().currency();
  }
}
