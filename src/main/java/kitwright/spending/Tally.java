package kitwright.spending;

import kitwright.value.Money;

/** Sums of what counts on one line of the budget, so that each spend is looked at once. */
public final class Tally {
  private Money paid;
  private Money ordered;
  private Money refunded;
  private Money tax;
  private Money duty;
  private Money byRate;
  private Money unforeseen;

  public Tally(Money zero) {
    paid = zero;
    ordered = zero;
    refunded = zero;
    tax = zero;
    duty = zero;
    byRate = zero;
    unforeseen = zero;
  }

  void add(Valued each) {
    switch (each.spend().state()) {
      case PAID -> paid = paid.plus(each.counted());
      case ORDERED -> ordered = ordered.plus(each.counted());
      case REFUNDED -> refunded = refunded.plus(each.counted());
    }
    tax = tax.plus(each.signed(each.tax()));
    duty = duty.plus(each.signed(each.duty()));
    byRate = byRate.plus(each.signed(each.byRate()));
    if (each.isUnforeseen()) {
      unforeseen = unforeseen.plus(each.signed());
    }
  }

  /** Before anything came back. */
  public Money paid() {
    return paid;
  }

  /** Promised and not yet paid. */
  public Money ordered() {
    return ordered;
  }

  /** What came back. */
  public Money refunded() {
    return refunded;
  }

  /** Within paid and ordered, less what came back. */
  public Money tax() {
    return tax;
  }

  /** Likewise. */
  public Money duty() {
    return duty;
  }

  /** What rates have added to paid and ordered since the budget was made. */
  public Money byRate() {
    return byRate;
  }

  /** Paid, less what came back. */
  Money spent() {
    return paid.minus(refunded);
  }

  /**
   * Of what is paid and ordered, what shortages and damage brought about; the budget did not
   * foresee it.
   */
  public Money unforeseen() {
    return unforeseen;
  }
}
