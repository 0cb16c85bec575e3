package kitwright.shortage;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import kitwright.ledger.Entry;
import kitwright.value.Quantity;

/** What is left of one shortage while covers are taken off it, none beyond what is left. */
final class Rest {
  /** Feet to metres and back may lose the sixteenth digit; less than this share is nothing. */
  private static final BigDecimal LOST_IN_CONVERSION = new BigDecimal("1e-9");

  private final Quantity negligible;
  private Quantity left;
  private final List<Cover> covers = new ArrayList<>();

  Rest(Quantity whole) {
    left = whole;
    negligible = whole.times(LOST_IN_CONVERSION);
  }

  void take(Cover.How how, Quantity qty, Entry by, LocalDate on) {
    if (qty.convertsTo(left)) {
      Quantity offered = qty.in(left.unit());
      Quantity part = left.less(offered).compareAmount(negligible) <= 0 ? left : offered;
      if (!part.isNone()) {
        covers.add(new Cover(how, part, by, on));
        left = left.less(part);
      }
    }
  }

  Quantity qty() {
    return left;
  }

  boolean isNone() {
    return left.isNone();
  }

  List<Cover> covers() {
    return covers;
  }
}
