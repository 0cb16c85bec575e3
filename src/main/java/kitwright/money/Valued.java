package kitwright.money;

import kitwright.ledger.Spend;
import kitwright.value.Money;

/**
 * A spend and what of it counts on a day, all in the build's currency: a payment whole, of an order
 * what is still to be paid, of a refund no more than was paid.
 *
 * @param line the budget line that it counts on; empty text where the budget has none of that name
 * @param counted never below zero; the spend's state says which way it went
 * @param planned the same at the rate that the budget was made with
 * @param tax of {@code counted}
 * @param duty of {@code counted}
 */
public record Valued(
    Spend spend, String line, Money counted, Money planned, Money tax, Money duty) {

  /** What the rate has added since the budget was made; below zero where it has saved. */
  public Money byRate() {
    return counted.minus(planned);
  }

  /** As it changes what is spent and ordered: a refund counts below zero. */
  public Money signed() {
    return spend.state() == Spend.State.REFUNDED ? counted.negated() : counted;
  }
}
