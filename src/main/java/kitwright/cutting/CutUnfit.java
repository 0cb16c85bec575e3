package kitwright.cutting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kitwright.cutting.solve.Effort;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/** Fires where the stock that a cut may draw on no longer yields all its parts. */
public final class CutUnfit implements Rule {
  /** Enough to be sure in plain cases; “kitwright cut” searches longer. */
  private static final Effort QUICK = Effort.steps(1_000_000);

  @Override
  public void examine(Facts day, Findings out) {
    CutPlan.Planning planning = new CutPlan.Planning(day, QUICK);
    for (Cut cut : day.ledger().cutsToMake()) {
      if (cut.done().isEmpty() && CutFaults.spoiling(cut, day.ledger()).isEmpty()) {
        CutPlan plan = planning.partsOf(cut);
        Map<String, Integer> missing = missing(plan);
        if (!missing.isEmpty()) {
          out.add(finding(cut, plan, missing));
        }
      }
    }
  }

  /** Parts that no piece suits are told by {@code cut-impossible}. */
  private static Map<String, Integer> missing(CutPlan plan) {
    Map<String, Integer> missing = new LinkedHashMap<>(plan.missing());
    plan.refused().keySet().forEach(missing::remove);
    return missing;
  }

  private Finding finding(Cut cut, CutPlan plan, Map<String, Integer> missing) {
    boolean proved = plan.outcome().mostParts();
    // How many are wanting is said only where no longer search can find fewer.
    String wanting =
        missing.entrySet().stream()
            .map(
                each -> (proved ? each.getValue() : "all") + " of the part “" + each.getKey() + "”")
            .collect(Collectors.joining(", "));
    String held =
        plan.rack().withheld().isEmpty() ? "" : " " + String.join(" ", plan.rack().withheld());
    return warn(
        cut.at().record(),
        (proved ? "The stock of the cut " : "No plan was found by which the stock of the cut ")
            + cut.id()
            + (proved ? " does not yield " : " yields ")
            + wanting
            + (proved && !plan.pieces().isEmpty() ? ", " + plan.manner().words() : "")
            + "."
            + held,
        "The saw would run out of wood with parts still wanted.",
        "See “kitwright cut "
            + cut.id()
            + "”; draw on more stock, permit joints, take out what is sawn already, or record the"
            + " rest as a shortage.",
        List.of(cut.named()));
  }
}
