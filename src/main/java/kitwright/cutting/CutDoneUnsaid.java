package kitwright.cutting;

import java.util.List;
import kitwright.finding.Findings;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/** Fires where a cut is done, but neither it nor the log says which pieces it took. */
public final class CutDoneUnsaid implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    OpenCuts cuts = new OpenCuts(day.ledger());
    for (Cut cut : day.ledger().cuts()) {
      if (cuts.isUnsaid(cut) && !cut.from().isEmpty()) {
        out.add(
            warn(
                cut.at().of("done"),
                "The cut " + cut.id() + " is done, but nobody wrote which pieces it took.",
                "Nobody knows whether they still lie on the rack; other cuts are planned as if it"
                    + " had taken what its plan takes.",
                "Add “used: [{stock: "
                    + cut.from().get(0).id()
                    + ", pieces: 1}]” to it with what it took, or “used: []” where the stock’s"
                    + " “pieces” were lowered already.",
                List.of(cut.named())));
      }
    }
  }
}
