package kitwright.check;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Key;
import kitwright.value.Quantity;

/**
 * Fires where a measure lies outside what its key plausibly holds: most often a slip of the unit.
 */
public final class MeasureImplausible extends KeyRule {
  @Override
  void examine(Seen seen, Facts day, Findings out) {
    if (seen.value() instanceof Quantity measure) {
      seen.key()
          .band()
          .filter(band -> measure.convertsTo(band.low()))
          .filter(band -> isOutside(measure, band))
          .ifPresent(band -> out.add(implausible(seen, measure, band)));
    }
  }

  private static boolean isOutside(Quantity measure, Key.Band band) {
    return measure.compareAmount(band.low()) < 0 || measure.compareAmount(band.high()) > 0;
  }

  private Finding implausible(Seen seen, Quantity measure, Key.Band band) {
    return warn(
        seen.at().of(seen.key().name()),
        seen.told(measure)
            + " is outside what it plausibly is, "
            + band.low()
            + " to "
            + band.high()
            + ".",
        "It is reckoned with as it stands; a slip of the unit makes all that follows from it"
            + " wrong.",
        "Look the measure up, and check its unit; where it is right, nothing is to be done.",
        List.of(seen.entry().named()));
  }
}
