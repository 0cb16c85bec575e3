package kitwright.loan;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Party;
import kitwright.ledger.Rule;
import kitwright.value.Days;

/** Fires where a borrowed tool is still here after the day it was due. */
public final class ToolOverdue implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    LoanStanding.on(day).stream()
        .filter(standing -> standing.state() == LoanStanding.State.OVERDUE)
        .forEach(standing -> out.add(finding(standing)));
  }

  private Finding finding(LoanStanding standing) {
    String lender = standing.lender().map(Party::name).orElse(standing.loan().from().id());
    long late = -standing.daysLeft().orElseThrow();
    return warn(
        standing.loan().at().of("due"),
        "The "
            + standing.loan().tool()
            + " was due back with "
            + lender
            + " on "
            + Days.named(standing.loan().due().orElseThrow())
            + ", "
            + Days.told(late)
            + " ago.",
        "The next tool is lent less gladly.",
        "Give it back and write “returned”, or agree on another day and write it under “due”.",
        List.of(standing.loan().named()));
  }
}
