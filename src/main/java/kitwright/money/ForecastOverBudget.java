package kitwright.money;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.BudgetLine;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.value.Money;

/** Fires where a line, or the whole build, is forecast to end over its budget. */
public final class ForecastOverBudget implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (BudgetLine line : day.ledger().budget()) {
      Account.on(day)
          .line(line.line())
          .filter(state -> !state.isOver() && state.over().signum() > 0)
          .ifPresent(state -> out.add(line(line, state, Lacks.ofForecast(line.line(), day))));
    }
    boolean isKnown =
        !day.ledger().budget().isEmpty() && BuildOverBudget.unread(day.ledger()).isEmpty();
    if (isKnown && Account.on(day).whole().over().signum() > 0) {
      whole(day, out);
    }
  }

  private Finding line(BudgetLine line, LineState state, List<String> lacks) {
    boolean guessed = state.remaining().basis() == Remaining.Basis.EARNED;
    return new Finding(
        name(),
        guessed ? Severity.NOTE : Severity.WARN,
        line.at().of("amount"),
        Lacks.asFar(lacks)
            + "“"
            + line.title()
            + "” is forecast to end at "
            + state.forecast().told()
            + ", "
            + state.over().told()
            + " over its budget of "
            + state.budget().told()
            + ".",
        "Spent and ordered are "
            + state.committed().told()
            + "; "
            + state.toCome().told()
            + " are to come."
            + Lacks.why(lacks),
        guessed
            ? "What is to come is guessed from the work left; if its material is bought already,"
                + " say so with “remaining: …”."
            : "Look where it can be made cheaper while it is not yet ordered.",
        List.of(line.named()));
  }

  private void whole(Facts day, Findings out) {
    Ledger ledger = day.ledger();
    Account account = Account.on(day);
    List<String> lacks = Lacks.ofForecast(day);
    LineState whole = account.whole();
    Money kept = account.contingency().orElse(Money.zero(whole.budget().currency()));
    Money means = whole.budget().plus(kept);
    boolean beyond = whole.forecast().compareAmount(means) > 0;
    if (beyond ? whole.committed().compareAmount(means) > 0 : whole.isOver()) {
      return; // told by build-over-budget
    }
    out.add(
        new Finding(
            name(),
            beyond ? Severity.WARN : Severity.NOTE,
            ledger.build().at().of("currency"),
            (lacks.isEmpty() ? "The build" : Lacks.asFar(lacks) + "the build")
                + " is forecast to end at "
                + whole.forecast().told()
                + ", "
                + whole.over().told()
                + " over the budget of "
                + whole.budget().told()
                + ".",
            (beyond
                    ? "That is "
                        + whole.forecast().minus(means).told()
                        + " more than the budget and the contingency of "
                        + kept.told()
                        + " together."
                    : "The contingency of " + kept.told() + " would pay for it.")
                + Lacks.why(lacks),
            "See with “kitwright budget” which lines bring it about, and decide before ordering.",
            List.of(ledger.build().named())));
  }
}
