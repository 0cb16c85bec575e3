package kitwright.shortage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import kitwright.ledger.Entry;
import kitwright.value.Quantity;

/** What is left of one shortage while covers are taken off it, none beyond what is left. */
final class Rest {
  private final Quantity whole;
  private Quantity left;
  private final List<Cover> covers = new ArrayList<>();

  Rest(Quantity whole) {
    this.whole = whole;
    left = whole;
  }

  void take(Cover.How how, Quantity qty, Entry by, LocalDate on) {
    if (qty.convertsTo(left)) {
      Quantity offered = qty.in(left.unit());
      Quantity part = Tiny.is(left.less(offered), whole) ? left : offered;
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
