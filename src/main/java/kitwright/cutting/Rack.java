package kitwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.kit.Positions;
import kitwright.kit.Promise;
import kitwright.kit.StockPosition;
import kitwright.ledger.Cut;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.value.Decimal;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * The pieces that a cut may draw on.
 *
 * @param pieces with how many of each are free
 * @param withheld why others, or some of these, are not: one sentence each
 */
public record Rack(List<Free> pieces, List<String> withheld) {
  public Rack {
    pieces = List.copyOf(pieces);
    withheld = List.copyOf(withheld);
  }

  /**
   * Stock with so many pieces free for this cut.
   *
   * @param at where the cut names it
   */
  public record Free(Stock stock, int count, Ref at) {}

  /** What is free for a cut: not used, and not promised to other work. */
  public static Rack of(Cut cut, Ledger ledger, Positions positions) {
    List<Free> pieces = new ArrayList<>();
    List<String> withheld = new ArrayList<>();
    for (Ref ref : cut.from()) {
      Optional<StockPosition> position = positions.ofStock(ref);
      if (position.isPresent() && position.get().stock().size().isPresent()) {
        pieces.add(new Free(position.get().stock(), free(position.get(), cut, withheld), ref));
      }
    }
    return new Rack(pieces, withheld);
  }

  private static int free(StockPosition position, Cut cut, List<String> withheld) {
    String name = position.stock().id();
    Quantity left = position.left();
    if (!position.used().isNone()) {
      withheld.add(Decimal.print(position.used().amount()) + " of " + name + " are used already.");
    }
    for (Promise promise : position.promises()) {
      if (!isToOthers(promise, cut)) {
        continue;
      }
      String to = promise.to().named();
      if (promise.qty().isPresent()) {
        left = left.less(promise.qty().get());
        withheld.add(
            Decimal.print(promise.qty().get().amount())
                + " of "
                + name
                + " are promised to the "
                + to
                + ".");
      } else if (promise.to().kind() == Kind.TASKS) {
        withheld.add(name + " is kept for the " + to + ".");
        left = Quantity.none(left.unit());
      } else {
        withheld.add("The " + to + " draws on " + name + " too; whoever cuts first has it.");
      }
    }
    return left.amount().intValue();
  }

  /** What is used up already stands in what is left; a withdrawn substitution asks for nothing. */
  private static boolean isToOthers(Promise promise, Cut cut) {
    boolean ours =
        promise.to().equals(cut)
            || (promise.task().isPresent()
                && cut.task().isPresent()
                && promise.task().get().id().equals(cut.task().get().id()))
            || (promise.to().kind() == Kind.TASKS
                && cut.task().isPresent()
                && promise.to().id().equals(cut.task().get().id()));
    boolean over =
        (promise.to() instanceof Substitution substitution && substitution.withdrawn().isPresent())
            || (promise.to() instanceof Cut other && other.done().isPresent());
    return !ours && !over;
  }
}
