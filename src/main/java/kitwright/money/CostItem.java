package kitwright.money;

import java.math.BigDecimal;
import java.util.List;
import kitwright.spending.Share;
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

  /** What the forecast takes: the likely cost, of several outcomes that of the cheapest. */
  public Money counted() {
    return outcomes.stream().map(ThreePoint::likely).min(Money::compareAmount).orElseThrow();
  }

  /** What it costs on average, rounded half up: (low + likely + high) / 3 of each outcome. */
  public Money mean() {
    Money sum =
        outcomes.stream()
            .map(each -> each.low().plus(each.likely()).plus(each.high()))
            .reduce(Money.zero(outcomes.get(0).low().currency()), Money::plus);
    return Share.of(sum, BigDecimal.ONE, BigDecimal.valueOf(3L * outcomes.size()));
  }

  /** What it adds to the average end beyond the forecast; below zero where it takes from it. */
  public Money leaning() {
    return mean().minus(counted());
  }

  /** Whether there is nothing uncertain in it. */
  boolean isFixed() {
    return outcomes.stream()
        .allMatch(each -> each.isFixed() && each.low().equals(outcomes.get(0).low()));
  }
}
