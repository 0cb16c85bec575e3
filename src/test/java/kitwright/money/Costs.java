package kitwright.money;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/** Uncertain costs for tests. */
final class Costs {
  private Costs() {}

  static Money euro(double amount) {
    return Money.rounded(BigDecimal.valueOf(amount), Currency.getInstance("EUR"));
  }

  static ThreePoint<Money> range(double low, double likely, double high) {
    return new ThreePoint<>(euro(low), euro(likely), euro(high));
  }

  static CostItem item(String what, String line, double low, double likely, double high) {
    return new CostItem(what, line, List.of(range(low, likely, high)));
  }
}
