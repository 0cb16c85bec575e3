package kitwright.money;

import java.time.LocalDate;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.value.Money;

/** Fires where more is spent and ordered in all than the whole budget allows. */
public final class BuildOverBudget implements Rule {
  private final Account account;

  public BuildOverBudget(Account account) {
    this.account = account;
  }

  @Override
  public String name() {
    return "build-over-budget";
  }

  @Override
  public void examine(Ledger ledger, LocalDate today, Findings out) {
    if (!ledger.budget().isEmpty() && account.whole().isOver()) {
      out.add(over(ledger));
    }
  }

  private Finding over(Ledger ledger) {
    LineState whole = account.whole();
    Money over = whole.committed().minus(whole.budget());
    Money kept = account.contingency().orElse(Money.zero(over.currency()));
    boolean within = over.compareAmount(kept) <= 0;
    return new Finding(
        name(),
        within ? Severity.WARN : Severity.STOP,
        ledger.build().at().of(within ? "contingency" : "currency"),
        "Spent and ordered are "
            + whole.committed()
            + " in all, "
            + over
            + " over the budget of "
            + whole.budget()
            + ".",
        within
            ? "It eats " + over + " of the contingency of " + kept + "."
            : "The contingency of " + kept + " does not cover it.",
        "Stop what can be stopped, claim what is owed, and find the money before the next order.",
        List.of(ledger.build().named()));
  }
}
