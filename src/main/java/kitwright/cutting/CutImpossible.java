package kitwright.cutting;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/** Fires where a cut asks what no saw and no stock can give. */
public final class CutImpossible implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Cut cut : day.ledger().cuts()) {
      if (cut.done().isEmpty()) {
        CutFaults.of(cut, day).forEach(fault -> out.add(finding(cut, fault)));
      }
    }
  }

  private Finding finding(Cut cut, CutFaults.Fault fault) {
    String follows =
        fault.spoils()
            ? "The cut " + cut.id() + " cannot be planned."
            : fault
                .part()
                .map(mark -> "The cut " + cut.id() + " is planned without “" + mark + "”.")
                .orElse("The cut " + cut.id() + " is planned without what this says.");
    return new Finding(
        name(),
        fault.spoils() || fault.part().isPresent() ? Severity.STOP : Severity.WARN,
        fault.at(),
        fault.what(),
        follows,
        fault.mend(),
        List.of(cut.named()));
  }
}
