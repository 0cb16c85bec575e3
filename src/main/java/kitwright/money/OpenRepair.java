package kitwright.money;

import java.util.Optional;
import kitwright.ledger.Loan;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/**
 * What making a borrowed tool good is still going to cost, in the build's currency.
 *
 * @param line the budget line that it falls on; empty text where nothing tells
 * @param cost less what is paid and ordered for it already; empty where nobody wrote it down or a
 *     rate is missing: it is in no sum, which is then “at least”
 */
public record OpenRepair(Loan loan, String line, Optional<ThreePoint<Money>> cost) {
  /** What the forecast takes; nothing where nobody knows. */
  public Optional<Money> likely() {
    return cost.map(ThreePoint::likely);
  }
}
