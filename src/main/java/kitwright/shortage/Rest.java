package kitwright.shortage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Entry;
import kitwright.ledger.Shortage;
import kitwright.value.Quantity;

/** What is left of one shortage while covers are taken off it, none beyond what is left. */
final class Rest {
  private final Shortage shortage;
  private Quantity left;
  private final List<Cover> covers = new ArrayList<>();
  private final List<Coming> coming = new ArrayList<>();

  Rest(Shortage shortage) {
    this.shortage = shortage;
    left = shortage.qty();
  }

  Shortage shortage() {
    return shortage;
  }

  /** Takes what it can use of something that is here; tells how much that was, in its own unit. */
  Quantity take(Cover.How how, Quantity offered, Entry by, LocalDate on) {
    Quantity part = take(offered);
    if (!part.isNone()) {
      covers.add(new Cover(how, part, by, on));
    }
    return part;
  }

  /** Takes what it can use of something that is on its way. */
  Quantity expect(
      Coming.How how, Quantity offered, Entry by, Optional<LocalDate> said, LocalDate today) {
    Quantity part = take(offered);
    if (!part.isNone()) {
      coming.add(Coming.said(how, part, by, said, today));
    }
    return part;
  }

  private Quantity take(Quantity offered) {
    if (!offered.convertsTo(left)) {
      return Quantity.none(offered.unit());
    }
    Quantity fits = offered.in(left.unit());
    Quantity part = Tiny.is(left.less(fits), shortage.qty()) ? left : fits;
    left = left.less(part);
    return part;
  }

  Quantity left() {
    return left;
  }

  List<Cover> covers() {
    return List.copyOf(covers);
  }

  List<Coming> coming() {
    return List.copyOf(coming);
  }

  /** What one record brings of it. */
  Quantity comingBy(Coming.How how) {
    return coming.stream()
        .filter(each -> each.how() == how)
        .map(Coming::qty)
        .reduce(Quantity.none(shortage.qty().unit()), Quantity::plus);
  }
}
