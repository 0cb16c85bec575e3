package kitwright.ledger;

import java.math.BigDecimal;
import java.util.Optional;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/**
 * A line of the budget.
 *
 * @param line its id
 * @param remaining what is still to be spent beyond what is paid and ordered, where the builder
 *     says so
 * @param together how strongly the costs left on this line move together, 0 to 1
 */
public record BudgetLine(
    String line,
    String title,
    Money amount,
    Optional<ThreePoint<Money>> remaining,
    Optional<BigDecimal> together,
    At at)
    implements Entry {

  static BudgetLine read(Keys k) {
    return new BudgetLine(
        k.key("line", "the name you give it, without spaces, unique among the lines", "timber")
            .begins("ID")
            .need(Sorts.WORD, ""),
        k.key("title", "what it is for, in a few words", "Timber beyond the kit").text(),
        k.key("amount", "what may be spent on it", "1450 EUR").money(),
        k.key(
                "remaining",
                "what is still to be spent beyond what is paid and ordered: one amount, or low,"
                    + " likely, high",
                "[50, 90, 160]")
            .maybeGuess(),
        k.key(
                "together",
                "how strongly the costs left on this line move together, from none to wholly",
                "60 %")
            .maybeShare(),
        k.at());
  }

  @Override
  public String id() {
    return line;
  }

  @Override
  public Kind kind() {
    return Kind.BUDGET;
  }
}
