package kitwright.money;

import kitwright.value.Money;

/**
 * A line of the budget on a day, all in the build's currency.
 *
 * @param line its id; empty text for what stands on no line of the budget
 * @param paid before anything came back
 * @param ordered promised and not yet paid
 * @param refunded come back; never more than was paid
 * @param remaining still to be spent beyond that
 * @param waysOut cost of getting round open shortages that is neither paid nor ordered yet: the way
 *     out decided on, or else the cheapest
 * @param repairs cost of making borrowed tools good that is neither paid nor ordered yet
 * @param tax within paid and ordered, less what came back
 * @param duty likewise
 * @param byRate what rates have added to paid and ordered since the budget was made
 */
public record LineState(
    String line,
    String title,
    Money budget,
    Money paid,
    Money ordered,
    Money refunded,
    Remaining remaining,
    Money waysOut,
    Money repairs,
    Money tax,
    Money duty,
    Money byRate) {

  /** The same with another remainder. */
  LineState leaving(Remaining left) {
    return new LineState(
        line, title, budget, paid, ordered, refunded, left, waysOut, repairs, tax, duty, byRate);
  }

  /** Paid, less what came back. */
  public Money spent() {
    return paid.minus(refunded);
  }

  /** Spent and ordered: what cannot be undone without asking somebody. */
  public Money committed() {
    return spent().plus(ordered);
  }

  /** Still to be spent beyond what is committed. */
  public Money toCome() {
    return remaining.likely().plus(waysOut).plus(repairs);
  }

  /** Where the line will end. */
  public Money forecast() {
    return committed().plus(toCome());
  }

  /** Forecast beyond the budget; below zero where it ends under. */
  public Money over() {
    return forecast().minus(budget);
  }

  /** Whether what is committed already is beyond the budget. */
  public boolean isOver() {
    return committed().compareAmount(budget) > 0;
  }
}
