package kitwright.kit;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Cut;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Substitution;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * What a done cut says it took, and the log of that day, or of its own work on another, says again.
 * The cut’s record is the one: of the log only what goes beyond it counts.
 */
final class SameWood {
  /** So much of a stock that a cut took, and what of it no line of the log has told again. */
  private static final class Sawn {
    private final Cut cut;
    private final Optional<String> work;
    private final Ref stock;
    private final LocalDate on;
    private Quantity left;

    Sawn(Cut cut, Optional<Ref> work, Cut.Taken taken, LocalDate on) {
      this.cut = cut;
      this.work = work.map(Ref::id);
      this.stock = taken.stock();
      this.on = on;
      left = new Quantity(BigDecimal.valueOf(taken.pieces()), Unit.EACH);
    }

    private boolean isToldBy(LogDay log, LogDay.Used used) {
      boolean sameStock = used.stock().filter(ref -> ref.id().equals(stock.id())).isPresent();
      Optional<String> task = used.task().map(Ref::id);
      boolean sameWork = task.isPresent() && task.equals(work);
      boolean sameDay = log.day().equals(on) && (task.isEmpty() || work.isEmpty());
      return sameStock && (sameWork || sameDay) && used.qty().convertsTo(left);
    }
  }

  /** A line of the log that tells again what a cut tells. */
  record Again(Cut cut, LocalDate on, LogDay log, LogDay.Used used, Quantity qty) {}

  private final List<Sawn> sawn = new ArrayList<>();
  private final List<Again> again = new ArrayList<>();

  SameWood(Ledger ledger) {
    for (Cut cut : ledger.cuts()) {
      Optional<LocalDate> done = cut.done();
      done.ifPresent(
          day ->
              cut.used().forEach(taken -> sawn.add(new Sawn(cut, work(cut, ledger), taken, day))));
    }
  }

  /** The task of a cut; where it names none, that of the substitution whose parts it makes. */
  static Optional<Ref> work(Cut cut, Ledger ledger) {
    return cut.task()
        .or(() -> cut.instead().flatMap(ledger::substitution).flatMap(Substitution::hold));
  }

  /** What a line of the log uses beyond what cuts of that day or work took of the same stock. */
  Quantity beyond(LogDay log, LogDay.Used used) {
    Quantity left = used.qty();
    for (Sawn each : sawn) {
      if (each.isToldBy(log, used)) {
        Quantity part = left.min(each.left);
        left = left.less(part);
        each.left = each.left.less(part);
        if (!part.isNone()) {
          again.add(new Again(each.cut, each.on, log, used, part));
        }
      }
    }
    return left;
  }

  /** Every line of the log that tells again what a cut tells. */
  static List<Again> all(Ledger ledger) {
    SameWood wood = new SameWood(ledger);
    ledger.log().stream().forEach(log -> log.used().forEach(used -> wood.beyond(log, used)));
    return wood.again;
  }
}
