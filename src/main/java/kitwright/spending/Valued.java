package kitwright.spending;

import java.util.Optional;
import java.util.function.Function;
import kitwright.ledger.Spend;
import kitwright.value.Money;
import kitwright.value.Ref;

/**
 * A spend and what of it counts on a day, all in the build's currency: a payment whole, of an order
 * what is still to be paid, of a refund no more than was paid.
 *
 * @param origin what it pays or gives back, if that is in the ledger; it tells the cause where the
 *     spend itself does not
 * @param answers the shortage that it answers, itself or through a substitution made for it
 * @param line the budget line that it counts on; empty text where the budget has none of that name
 * @param counted never below zero; the spend's state says which way it went
 * @param planned the same at the rate that the budget was made with
 * @param tax of {@code counted}
 * @param duty of {@code counted}
 * @param quote the rate that it was converted by
 */
public record Valued(
    Spend spend,
    Optional<Spend> origin,
    Optional<Ref> answers,
    String line,
    Money counted,
    Money planned,
    Money tax,
    Money duty,
    Quote quote) {

  /** What the rate has added since the budget was made; below zero where it has saved. */
  public Money byRate() {
    return counted.equals(planned) ? Money.zero(counted.currency()) : counted.minus(planned);
  }

  /** The shortage that caused it. */
  public Optional<Ref> because() {
    return own(Spend::because);
  }

  /** The substitution that caused it. */
  public Optional<Ref> substitution() {
    return own(Spend::substitution);
  }

  /** The borrowed tool that it makes good. */
  public Optional<Ref> repairs() {
    return own(Spend::repairs);
  }

  /** Whether no budget foresaw it: something missing, or damaged, brought it about. */
  public boolean isUnforeseen() {
    return answers.isPresent() || repairs().isPresent();
  }

  /** Why it was more than planned. */
  public Optional<Spend.Cause> cause() {
    return own(Spend::cause);
  }

  private <T> Optional<T> own(Function<Spend, Optional<T>> what) {
    return what.apply(spend).or(() -> origin.flatMap(what));
  }

  /** Whether it came back. */
  public boolean isBack() {
    return spend.state() == Spend.State.REFUNDED;
  }

  /** An amount as this changes sums: below zero for a refund. */
  public Money signed(Money amount) {
    return isBack() ? amount.negated() : amount;
  }

  /** As it changes what is spent and ordered: a refund counts below zero. */
  public Money signed() {
    return signed(counted);
  }

  /** The same on another line. */
  Valued on(String other) {
    return new Valued(spend, origin, answers, other, counted, planned, tax, duty, quote);
  }

  /** The same with less of it counted. */
  Valued counting(Money less) {
    Money most = less.max(Money.zero(less.currency()));
    return new Valued(
        spend,
        origin,
        answers,
        line,
        most,
        Share.of(planned, most, counted),
        Share.of(tax, most, counted),
        Share.of(duty, most, counted),
        quote);
  }
}
