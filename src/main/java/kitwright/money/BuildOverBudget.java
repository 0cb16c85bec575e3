package kitwright.money;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.ledger.Unread;
import kitwright.value.Money;

/** Fires where more is spent and ordered in all than the whole budget allows. */
public final class BuildOverBudget implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    if (day.ledger().budget().isEmpty() || !Account.on(day).whole().isOver()) {
      return;
    }
    List<String> unread = unread(day.ledger());
    out.add(
        unread.isEmpty()
            ? over(day.ledger(), Account.on(day), Lacks.on(day))
            : unknown(day.ledger(), Account.on(day).whole(), unread));
  }

  /** What cannot be read and is, or may hold, a part of the budget. */
  static List<String> unread(Ledger ledger) {
    return ledger.unread().stream()
        .filter(each -> each.mayBe(Kind.BUDGET))
        .map(Unread::named)
        .toList();
  }

  private Finding unknown(Ledger ledger, LineState whole, List<String> unread) {
    return warn(
        ledger.build().at().of("currency"),
        "Whether the build is over its budget nobody can tell: spent and ordered are "
            + whole.committed().told()
            + " in all, and "
            + String.join(", ", unread)
            + " cannot be read.",
        "The lines that can be read allow " + whole.budget().told() + "; the rest is not known.",
        "Mend what cannot be read, and run “kitwright check” again.",
        List.of(ledger.build().named()));
  }

  private Finding over(Ledger ledger, Account account, List<String> lacks) {
    LineState whole = account.whole();
    Money over = whole.committed().minus(whole.budget());
    Money kept = account.contingency().orElse(Money.zero(over.currency()));
    boolean within = over.compareAmount(kept) <= 0;
    return new Finding(
        name(),
        within ? Severity.WARN : Severity.STOP,
        ledger.build().at().of(within ? "contingency" : "currency"),
        (lacks.isEmpty() ? "Spent" : Lacks.asFar(lacks) + "spent")
            + " and ordered are "
            + whole.committed().told()
            + " in all, "
            + over.told()
            + " over the budget of "
            + whole.budget().told()
            + ".",
        (within
                ? "It eats " + over.told() + " of the contingency of " + kept.told() + "."
                : "The contingency of " + kept.told() + " does not cover it.")
            + Lacks.why(lacks),
        "Stop what can be stopped, claim what is owed, and find the money before the next order;"
            + " what was found goes into the budget.",
        List.of(ledger.build().named()));
  }
}
