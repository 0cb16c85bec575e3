package kitwright.money;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.stream.IntStream;
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

  /** Every end, each as what its share of the runs stayed within. */
  private static double[] ends(CostRange range) {
    return IntStream.range(0, range.runs())
        .mapToDouble(i -> range.within((i + 0.5) / range.runs()).amount())
        .toArray();
  }

  static double mean(CostRange range) {
    return Arrays.stream(ends(range)).average().orElseThrow();
  }

  static double deviation(CostRange range) {
    double mean = mean(range);
    double squares = Arrays.stream(ends(range)).map(end -> (end - mean) * (end - mean)).sum();
    return Math.sqrt(squares / (range.runs() - 1));
  }
}
