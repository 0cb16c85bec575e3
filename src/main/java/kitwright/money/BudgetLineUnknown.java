package kitwright.money;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.value.Nearest;

/** Fires where money is spent on a line that the budget does not have. */
public final class BudgetLineUnknown implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    day.written().spending().stream()
        .filter(spend -> !day.written().knows(Kind.BUDGET, spend.line().id()))
        .forEach(spend -> out.add(unknown(spend, day.written())));
  }

  private Finding unknown(Spend spend, Ledger ledger) {
    String line = spend.line().id();
    return stop(
        spend.line().at(),
        "The budget has no line “" + line + "”.",
        spend.amount() + " for “" + spend.what() + "” count in the whole, but on no line.",
        Nearest.to(line, ledger.ids(Kind.BUDGET))
            .map(near -> "Did you mean “" + near + "”?")
            .orElse("Name a line of the budget, or add the line to it."),
        List.of(spend.named()));
  }
}
