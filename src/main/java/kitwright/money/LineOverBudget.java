package kitwright.money;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.BudgetLine;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/** Fires where more is spent and ordered on a line than the budget allows. */
public final class LineOverBudget implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (BudgetLine line : day.ledger().budget()) {
      Account.on(day)
          .line(line.line())
          .filter(LineState::isOver)
          .ifPresent(state -> out.add(over(line, state, Lacks.ofLine(line.line(), day))));
    }
  }

  private Finding over(BudgetLine line, LineState state, List<String> lacks) {
    return warn(
        line.at().of("amount"),
        Lacks.asFar(lacks)
            + "“"
            + line.title()
            + "” stands at "
            + state.committed().told()
            + " spent and ordered, "
            + state.committed().minus(state.budget()).told()
            + " over its budget of "
            + state.budget().told()
            + ".",
        "It is forecast to end at "
            + state.forecast().told()
            + "; the difference comes out of other lines or the contingency."
            + Lacks.why(lacks),
        "Look up why with “kitwright budget --line "
            + line.line()
            + "”, claim what the supplier owes, and set the line’s “amount” anew only together"
            + " with the line that pays for it.",
        List.of(line.named()));
  }
}
