package kitwright.money;

import java.util.List;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/**
 * What is still to be spent on a line beyond what is paid and ordered, and how that is known.
 *
 * @param range low, likely, high; all equal where nobody gave a range
 * @param unpriced needs that nobody knows a price of, so that the amount is “at least”
 */
public record Remaining(ThreePoint<Money> range, Basis basis, List<String> unpriced) {
  /** How the amount is known; the first that holds for a line is taken. */
  public enum Basis {
    /** The budget line says it in {@code remaining}. */
    STATED,
    /**
     * Tasks of the line need things that nobody has bought: at the last price paid, or the kit's.
     */
    NEEDS,
    /** Tasks of the line are under way: the share of the budget that their work has not earned. */
    EARNED,
    /** Nothing else is known: what is left of the budget. */
    BUDGET,
    /** Of the whole: the sum of the lines, each by its own basis. */
    SUM;
  }

  public Remaining {
    unpriced = List.copyOf(unpriced);
  }

  static Remaining fixed(Money amount, Basis basis) {
    return new Remaining(ThreePoint.fixed(amount), basis, List.of());
  }

  /** The amount that the forecast takes. */
  public Money likely() {
    return range.likely();
  }
}
