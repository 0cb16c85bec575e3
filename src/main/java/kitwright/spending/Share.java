package kitwright.spending;

import java.math.BigDecimal;
import java.math.RoundingMode;
import kitwright.value.Money;

/** Parts of an amount, to the minor unit. */
public final class Share {
  private Share() {}

  /** Of an amount, as much as {@code part} is of {@code all}; rounded half up. */
  public static Money of(Money amount, Money part, Money all) {
    return of(amount, part.amount(), all.amount());
  }

  /** Of an amount, as much as {@code part} is of {@code all}; the whole of it where all is none. */
  public static Money of(Money amount, BigDecimal part, BigDecimal all) {
    if (part.compareTo(all) == 0 || all.signum() == 0) {
      return amount;
    }
    int digits = amount.amount().scale();
    return new Money(
        amount.amount().multiply(part).divide(all, digits, RoundingMode.HALF_UP),
        amount.currency());
  }
}
