package kitwright.cutting;

import java.util.List;
import java.util.stream.Collectors;
import kitwright.cutting.solve.Effort;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.kit.Positions;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/** Fires where the stock that a cut may draw on no longer yields all its parts. */
public final class CutUnfit implements Rule {
  /** Enough to be sure in plain cases; “kitwright cut” searches longer. */
  private static final Effort QUICK = Effort.steps(500_000);

  @Override
  public String name() {
    return "cut-unfit";
  }

  @Override
  public void examine(Facts day, Findings out) {
    for (Cut cut : day.ledger().cuts()) {
      if (cut.done().isEmpty() && CutFaults.of(cut, day.ledger(), Positions.on(day)).isEmpty()) {
        CutPlan plan = CutPlan.of(cut, day.ledger(), Positions.on(day), QUICK);
        if (!plan.missing().isEmpty()) {
          out.add(finding(cut, plan));
        }
      }
    }
  }

  private Finding finding(Cut cut, CutPlan plan) {
    boolean proved = plan.outcome().mostParts();
    // How many are wanting is said only where no longer search can find fewer.
    String wanting =
        plan.missing().stream()
            .map(each -> (proved ? each.missing() : "all") + " of " + each.mark())
            .collect(Collectors.joining(", "));
    String held =
        plan.rack().withheld().isEmpty() ? "" : " " + String.join(" ", plan.rack().withheld());
    return new Finding(
        name(),
        Severity.WARN,
        cut.at().record(),
        "The stock of the cut "
            + cut.id()
            + (proved ? " does not yield " : " was not found to yield ")
            + wanting
            + "."
            + held,
        "The saw would run out of wood with parts still wanted.",
        "See “kitwright cut "
            + cut.id()
            + "”; draw on more stock, permit joints, or record the rest as a shortage.",
        List.of(cut.named()));
  }
}
