package kitwright.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import kitwright.value.Money;

/** Parts of an amount, to the minor unit. */
final class Share {
  private Share() {}

  /** Of an amount, as much as {@code part} is of {@code all}; rounded half up. */
  static Money of(Money amount, Money part, Money all) {
    return of(amount, part.amount(), all.amount());
  }

  /** Of an amount, as much as {@code part} is of {@code all}; the whole of it where all is none. */
  static Money of(Money amount, BigDecimal part, BigDecimal all) {
    if (part.compareTo(all) == 0 || all.signum() == 0) {
      return amount;
    }
    int digits = amount.amount().scale();
    return new Money(
        amount.amount().multiply(part).divide(all, digits, RoundingMode.HALF_UP),
        amount.currency());
  }

  /**
   * An amount spread by weights, so that the parts add up to it to the minor unit: each part is the
   * step between two rounded running sums.
   *
   * @param weights none below zero; where all are zero, everything falls on the last
   */
  static List<Money> spread(Money amount, List<BigDecimal> weights) {
    BigDecimal all = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    List<Money> parts = new ArrayList<>();
    Money before = Money.zero(amount.currency());
    BigDecimal running = BigDecimal.ZERO;
    for (int i = 0; i < weights.size(); i++) {
      running = running.add(weights.get(i));
      boolean last = i == weights.size() - 1;
      Money upTo =
          last
              ? amount
              : all.signum() == 0 ? Money.zero(amount.currency()) : of(amount, running, all);
      parts.add(upTo.minus(before));
      before = upTo;
    }
    return parts;
  }
}
