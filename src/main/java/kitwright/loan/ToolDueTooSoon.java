package kitwright.loan;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Party;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.value.Days;

/** Fires where a borrowed tool shall be back before the work that needs it can be finished. */
public final class ToolDueTooSoon implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Plan plan = Plan.on(day);
    for (LoanStanding standing : LoanStanding.on(day)) {
      if (standing.state() == LoanStanding.State.WITH_US) {
        List<Planned> late =
            Need.of(standing, plan).tasks().stream()
                .map(plan.schedule()::of)
                .filter(task -> isCutShort(task, standing, day))
                .toList();
        if (!late.isEmpty()) {
          out.add(finding(standing, late.get(0), day));
        }
      }
    }
  }

  private static boolean isCutShort(Planned planned, LoanStanding standing, Facts day) {
    Task task = Plan.on(day).task(planned.id()).orElseThrow();
    return AtHand.backBefore(planned.lastDay(), task, day).stream()
        .anyMatch(back -> back.loan().equals(standing.loan()));
  }

  private Finding finding(LoanStanding standing, Planned first, Facts day) {
    String lender = standing.lender().map(Party::name).orElse("the lender");
    boolean near = !standing.loan().due().orElseThrow().isAfter(Plan.on(day).horizon());
    return new Finding(
        name(),
        near ? Severity.WARN : Severity.NOTE,
        standing.loan().at().of("due"),
        "The "
            + standing.loan().tool()
            + " is due back with "
            + lender
            + " on "
            + Days.named(standing.loan().due().orElseThrow())
            + ", and “"
            + Plan.on(day).name(first.id())
            + "” needs it until "
            + Days.named(first.lastDay())
            + " at the earliest.",
        "The work stops where the tool goes back.",
        "Agree on "
            + Days.named(first.lastDay())
            + " or later and write it under “due”, borrow another, or do the work sooner.",
        List.of(standing.loan().named(), "task " + first.id()));
  }
}
