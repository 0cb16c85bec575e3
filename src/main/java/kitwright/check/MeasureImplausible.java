package kitwright.check;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;
import kitwright.ledger.Facts;
import kitwright.ledger.Section;

/**
 * Fires where a measure lies outside what its key plausibly holds: most often a slip of the unit.
 */
public final class MeasureImplausible extends KeyRule {
  @Override
  void examine(Seen seen, Facts day, Findings out) {
    seen.key().implausible(seen.value()).ifPresent(why -> out.add(implausible(seen, why)));
  }

  private Finding implausible(Seen seen, String why) {
    return warn(
        seen.at().of(seen.key().name()),
        seen.told(seen.value()) + " " + why + ".",
        seen.entry() instanceof Section || seen.entry() instanceof Assessment
            ? "No assessment that leans on it passes."
            : "It is reckoned with as it stands; a slip of the unit makes all that follows from it"
                + " wrong.",
        "Look the measure up, and check its unit; where it is right, "
            + (seen.entry() instanceof Section || seen.entry() instanceof Assessment
                ? "the part is beyond what is worked out here: ask the designer."
                : "nothing is to be done."),
        List.of(seen.entry().named()));
  }
}
