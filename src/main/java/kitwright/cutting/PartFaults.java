package kitwright.cutting;

import java.util.Optional;
import kitwright.ledger.Cut;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/** What makes a part impossible whatever the stock. */
final class PartFaults {
  /** Thirty metres of plank are a slip of a unit. */
  private static final Quantity LONGEST = Quantity.of("30", Unit.M);

  private PartFaults() {}

  /** What is wrong with it, in a sentence. */
  static Optional<String> of(Cut.Part part, Cut cut) {
    if (part.qty() == 0) {
      return Optional.of("None of “" + part.mark() + "” are wanted.");
    }
    if (part.priority().filter(priority -> priority < 1).isPresent()) {
      return Optional.of("“" + part.mark() + "” has a priority of 0; 1 is what is wanted first.");
    }
    return side(part, "length", part.length(), cut)
        .or(() -> part.width().flatMap(width -> side(part, "width", width, cut)));
  }

  private static Optional<String> side(Cut.Part part, String key, Quantity side, Cut cut) {
    if (side.isNone()) {
      return Optional.of("The " + key + " of “" + part.mark() + "” is zero.");
    }
    if (side.compareAmount(LONGEST) > 0) {
      return Optional.of(
          "A " + key + " of " + side + " for “" + part.mark() + "” is beyond any boat’s bench.");
    }
    return side.compareAmount(cut.kerf()) < 0
        ? Optional.of(
            "The "
                + key
                + " of “"
                + part.mark()
                + "”, "
                + side
                + ", is less than the kerf of "
                + cut.kerf()
                + ": the saw would turn the part into dust.")
        : Optional.empty();
  }
}
