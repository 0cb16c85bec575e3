package kitwright.shortage;

import java.math.BigDecimal;
import kitwright.value.Quantity;

/** Tells a real amount from the sixteenth digit that feet to metres and back may lose. */
final class Tiny {
  private static final BigDecimal LOST_IN_CONVERSION = new BigDecimal("1e-9");

  private Tiny() {}

  /** Whether a part is nothing beside the whole. */
  static boolean is(Quantity part, Quantity whole) {
    return part.compareAmount(whole.times(LOST_IN_CONVERSION)) <= 0;
  }
}
