package kitwright.ledger;

import java.math.BigDecimal;
import java.util.Optional;
import kitwright.value.Money;
import kitwright.value.ThreePoint;
import kitwright.yaml.Fields;

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

  static BudgetLine read(Fields f) {
    return new BudgetLine(
        f.need("line", text -> text, ""),
        f.text("title"),
        f.money("amount"),
        f.maybeThreePoint("remaining", text -> Money.parse(text, f.currency())),
        f.maybeShare("together"),
        At.of(f));
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
