package kitwright.claim;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import kitwright.value.Money;

/** Amounts of several currencies, one sum each, by their codes. */
final class Sums {
  private Sums() {}

  static List<Money> of(Stream<Money> amounts) {
    TreeMap<String, Money> all = new TreeMap<>();
    amounts.forEach(amount -> all.merge(amount.currency().getCurrencyCode(), amount, Money::plus));
    return List.copyOf(all.values());
  }

  /**
   * What is left of each sum when others are taken off, none below nothing; nothing is left out.
   */
  static List<Money> less(List<Money> all, List<Money> off) {
    return all.stream()
        .map(
            sum ->
                off.stream()
                    .filter(each -> each.currency().equals(sum.currency()))
                    .reduce(sum, Money::minus)
                    .max(Money.zero(sum.currency())))
        .filter(left -> left.signum() > 0)
        .toList();
  }
}
