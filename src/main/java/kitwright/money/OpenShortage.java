package kitwright.money;

import java.util.List;
import kitwright.ledger.Shortage;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/**
 * What an open shortage is still going to cost, in the build's currency.
 *
 * @param line the budget line that it falls on; empty text where nothing tells
 * @param costs of each way out that may be taken, one where the builder has chosen, each low,
 *     likely, high, less what is paid and ordered because of the shortage already; at least one
 */
public record OpenShortage(Shortage shortage, String line, List<ThreePoint<Money>> costs) {

  public OpenShortage {
    costs = List.copyOf(costs);
  }

  /** The least that any way out may cost. */
  public Money least() {
    return costs.stream().map(ThreePoint::low).min(Money::compareAmount).orElseThrow();
  }

  /** The most that any way out may cost. */
  public Money most() {
    return costs.stream().map(ThreePoint::high).max(Money::compareAmount).orElseThrow();
  }

  /** What the forecast takes: the way out decided on, or else the cheapest. */
  public Money likely() {
    return costs.stream().map(ThreePoint::likely).min(Money::compareAmount).orElseThrow();
  }
}
