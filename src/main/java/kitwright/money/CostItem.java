package kitwright.money;

import java.util.List;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/**
 * A cost that is not certain.
 *
 * @param what for a person to read
 * @param line the budget line, within which costs may move together
 * @param outcomes one of these comes true, each as likely as the others; at least one
 */
public record CostItem(String what, String line, List<ThreePoint<Money>> outcomes) {
  public CostItem {
    if (outcomes.isEmpty()) {
      throw new IllegalArgumentException("a cost has at least one outcome");
    }
    outcomes = List.copyOf(outcomes);
  }

  /** Whether there is nothing uncertain in it. */
  boolean isFixed() {
    return outcomes.stream()
        .allMatch(each -> each.isFixed() && each.low().equals(outcomes.get(0).low()));
  }
}
