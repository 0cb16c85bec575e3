package kitwright.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Currency;
import java.util.Optional;
import kitwright.value.Money;

/**
 * Earned value of a line or of the whole. Amounts are kept unrounded, and no index is rounded
 * before it is used; money that is shown is rounded half up at the end.
 *
 * @param budget budget at completion (BAC)
 * @param planned planned value (PV): what the work planned by the day was to cost
 * @param earned earned value (EV): what the work done by the day was to cost
 * @param actual actual cost (AC): what it has cost
 * @see "NASA performance-management reference card (November 2015); terms as in ISO 21508:2018"
 */
public record EarnedValue(
    Currency currency,
    BigDecimal budget,
    BigDecimal planned,
    BigDecimal earned,
    BigDecimal actual) {
  private static final MathContext EXACT = MathContext.DECIMAL128;

  private Money money(BigDecimal amount) {
    return Money.rounded(amount, currency);
  }

  private static Optional<BigDecimal> ratio(BigDecimal part, BigDecimal of) {
    return of.signum() == 0 ? Optional.empty() : Optional.of(part.divide(of, EXACT));
  }

  /** What is still to be earned: BAC − EV. */
  private BigDecimal left() {
    return budget.subtract(earned);
  }

  /** CV = EV − AC; above zero is cheaper than planned. */
  public Money costVariance() {
    return money(earned.subtract(actual));
  }

  /** SV = EV − PV; above zero is more done than planned. */
  public Money scheduleVariance() {
    return money(earned.subtract(planned));
  }

  /** CPI = EV / AC; empty before anything is spent. */
  public Optional<BigDecimal> costIndex() {
    return ratio(earned, actual);
  }

  /** SPI = EV / PV; empty before anything was planned to be done. */
  public Optional<BigDecimal> scheduleIndex() {
    return ratio(earned, planned);
  }

  /** EAC = BAC / CPI, as BAC · AC / EV; empty before anything is earned. */
  public Optional<Money> endAtCostIndex() {
    return earned.signum() == 0
        ? Optional.empty()
        : Optional.of(money(budget.multiply(actual).divide(earned, EXACT)));
  }

  /** EAC = AC + (BAC − EV): what went otherwise so far does not go on. */
  public Money endAtBudgetRate() {
    return money(actual.add(left()));
  }

  /** EAC = AC + (BAC − EV) / (CPI · SPI); empty where one of the indices is, or is zero. */
  public Optional<Money> endAtBothIndices() {
    if (earned.signum() == 0 || actual.signum() == 0 || planned.signum() == 0) {
      return Optional.empty();
    }
    BigDecimal rest =
        left().multiply(actual).multiply(planned).divide(earned.multiply(earned), EXACT);
    return Optional.of(money(actual.add(rest)));
  }

  /** ETC = EAC − AC. */
  public Money toComplete(Money end) {
    return money(end.amount().subtract(actual));
  }

  /** VAC = BAC − EAC; above zero ends under the budget. */
  public Money varianceAtCompletion(Money end) {
    return money(budget.subtract(end.amount()));
  }

  /**
   * TCPI = (BAC − EV) / (target − AC): how much work each unit of money left must buy.
   *
   * @return empty where the target is spent already, so that no way of working reaches it
   */
  public Optional<BigDecimal> toCompleteIndex(Money target) {
    BigDecimal money = target.amount().subtract(actual);
    return money.signum() <= 0 ? Optional.empty() : ratio(left(), money);
  }

  /** The budget as money. */
  public Money atCompletion() {
    return money(budget);
  }

  public Money plannedValue() {
    return money(planned);
  }

  public Money earnedValue() {
    return money(earned);
  }

  public Money actualCost() {
    return money(actual);
  }

  /** Both together. */
  EarnedValue plus(EarnedValue other) {
    return new EarnedValue(
        currency,
        budget.add(other.budget),
        planned.add(other.planned),
        earned.add(other.earned),
        actual.add(other.actual));
  }
}
