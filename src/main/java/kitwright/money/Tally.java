package kitwright.money;

import kitwright.value.Money;

/** Running sums of what counts on one line, so that each spend is looked at once. Starts empty. */
final class Tally {
  private Money paid;
  private Money ordered;
  private Money refunded;
  private Money tax;
  private Money duty;
  private Money byRate;
  private Money unforeseen;

  Tally(Money zero) {
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

  /** Paid, less what came back. */
  Money spent() {
    return paid.minus(refunded);
  }

  /**
   * Of what is paid and ordered, what shortages and damage brought about; the budget did not
   * foresee it.
   */
  Money unforeseen() {
    return unforeseen;
  }

  /**
   * A line before anything is known of what remains.
   *
   * @param waysOut what open shortages of the line are still going to cost
   * @param repairs what making borrowed tools good is
   */
  LineState line(String id, String title, Money budget, Money waysOut, Money repairs) {
    Remaining nothing = Remaining.fixed(Money.zero(budget.currency()), Remaining.Basis.BUDGET);
    return new LineState(
        id, title, budget, paid, ordered, refunded, nothing, waysOut, repairs, tax, duty, byRate);
  }
}
