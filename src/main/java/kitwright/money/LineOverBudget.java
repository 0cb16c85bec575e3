package kitwright.money;

import java.time.LocalDate;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.BudgetLine;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where more is spent and ordered on a line than the budget allows. */
public final class LineOverBudget implements Rule {
  private final Account account;

  public LineOverBudget(Account account) {
    this.account = account;
  }

  @Override
  public String name() {
    return "line-over-budget";
  }

  @Override
  public void examine(Ledger ledger, LocalDate today, Findings out) {
    for (BudgetLine line : ledger.budget()) {
      account
          .line(line.line())
          .filter(LineState::isOver)
          .ifPresent(state -> out.add(over(line, state)));
    }
  }

  private Finding over(BudgetLine line, LineState state) {
    return new Finding(
        name(),
        Severity.WARN,
        line.at().of("amount"),
        "“"
            + line.title()
            + "” stands at "
            + state.committed()
            + " spent and ordered, "
            + state.committed().minus(state.budget())
            + " over its budget of "
            + state.budget()
            + ".",
        "It is forecast to end at "
            + state.forecast()
            + "; the difference comes out of other lines or the contingency.",
        "Look up why with “kitwright budget --line "
            + line.line()
            + "”, claim what the supplier owes, and set the line's “amount” anew only together"
            + " with the line that pays for it.",
        List.of(line.named()));
  }
}
