package kitwright.cutting;

import java.util.Optional;
import kitwright.ledger.Cut;

/** What a part is sawn to: its own size and what is planed off. */
final class Sawn {
  private Sawn() {}

  static long length(Cut.Part part) {
    return Tenths.atLeast(part.length()) + over(part);
  }

  /** Empty where it is as wide as its board. */
  static Optional<Long> width(Cut.Part part) {
    return part.width().map(width -> Tenths.atLeast(width) + over(part));
  }

  private static long over(Cut.Part part) {
    return part.oversize().map(Tenths::atLeast).orElse(0L);
  }
}
