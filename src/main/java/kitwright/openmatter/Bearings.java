package kitwright.openmatter;

import java.time.LocalDate;
import java.util.List;
import kitwright.assessment.Judging;
import kitwright.kit.Positions;
import kitwright.ledger.Ledger;
import kitwright.loan.Standing;
import kitwright.network.Plan;
import kitwright.network.Schedule;
import kitwright.shortage.Late;
import kitwright.shortage.LookAhead;
import kitwright.weather.Forecast;
import kitwright.weather.Outlook;

/**
 * Where the build stands on a day: every fact that the open matters follow from, worked out once.
 *
 * @param plan tasks and dates by work alone
 * @param lookAhead material against need
 * @param paced dates with every task held until its materials can be there
 */
public record Bearings(
    Ledger ledger,
    LocalDate today,
    Plan plan,
    Positions positions,
    kitwright.substitution.Standings substitutions,
    kitwright.shortage.Standings shortages,
    kitwright.claim.Standings claims,
    List<Standing> loans,
    LookAhead lookAhead,
    Schedule paced,
    Forecast forecast) {

  /** Works everything out. */
  public static Bearings of(Ledger ledger, LocalDate today) {
    return of(ledger, today, Plan.of(ledger, today), Judging.of(ledger));
  }

  /** The same, with a plan and a judge that others use too. */
  public static Bearings of(Ledger ledger, LocalDate today, Plan plan, Judging judging) {
    Positions positions = Positions.of(ledger, today);
    kitwright.substitution.Standings substitutions =
        kitwright.substitution.Standings.of(ledger, judging, today);
    kitwright.shortage.Standings shortages =
        kitwright.shortage.Standings.of(ledger, positions, substitutions);
    LookAhead lookAhead = LookAhead.of(ledger, plan, positions, shortages, substitutions);
    return new Bearings(
        ledger,
        today,
        plan,
        positions,
        substitutions,
        shortages,
        kitwright.claim.Standings.of(ledger, shortages, today),
        Standing.all(ledger, today),
        lookAhead,
        lookAhead.paced(),
        Outlook.of(ledger));
  }

  /** The look-ahead if some goods come later than said. */
  public LookAhead lookAhead(Late late) {
    return LookAhead.of(ledger, plan, positions, shortages, substitutions, late);
  }
}
