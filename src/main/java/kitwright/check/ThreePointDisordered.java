package kitwright.check;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.ThreePoint;

/** Fires where low, likely and high do not rise. */
public final class ThreePointDisordered extends KeyRule {
  @Override
  void examine(Seen seen, Facts day, Findings out) {
    if (seen.value() instanceof ThreePoint<?> range
        && !(rises(range.low(), range.likely()) && rises(range.likely(), range.high()))) {
      out.add(disordered(seen, range));
    }
  }

  private static boolean rises(Object low, Object high) {
    if (low instanceof Money one && high instanceof Money other) {
      return one.currency().equals(other.currency()) && one.compareAmount(other) <= 0;
    }
    return !(low instanceof Quantity one && high instanceof Quantity other)
        || one.compareAmount(other) <= 0;
  }

  private Finding disordered(Seen seen, ThreePoint<?> range) {
    return stop(
        seen.at().of(seen.key().name()),
        "“"
            + seen.key().name()
            + "” of the "
            + seen.entry().named()
            + " does not rise: "
            + range.low()
            + ", "
            + range.likely()
            + ", "
            + range.high()
            + ".",
        "No range can be worked out from it; the middle value alone is used.",
        "Write [low, likely, high] in one unit or currency, each at least as much as the one"
            + " before.",
        List.of(seen.entry().named()));
  }
}
