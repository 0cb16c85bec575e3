package kitwright.kit;

import java.util.List;
import java.util.Optional;
import kitwright.ledger.Stock;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * How stock or an off-cut stands: how much there was, to whom it is promised, what was used. Every
 * quantity is in the unit of the stock; pieces of a size are counted.
 *
 * @param promises with and without an amount, in the ledger's order
 * @param ahead the same, without what is told twice and what its work has used already
 * @param keptFor the work that it is kept for, and that has not ended
 * @param uses by day, from the log and from cuts that are done
 * @param doubts why nobody can say how much is left, each a clause after “since”; none where the
 *     records tell
 */
public record StockPosition(
    Stock stock,
    List<Promise> promises,
    List<Promise> ahead,
    List<Ref> keptFor,
    List<Use> uses,
    List<String> doubts) {
  public StockPosition {
    promises = List.copyOf(promises);
    ahead = List.copyOf(ahead);
    keptFor = List.copyOf(keptFor);
    uses = List.copyOf(uses);
    doubts = List.copyOf(doubts);
  }

  /** How much there was before any was used. */
  public Quantity amount() {
    return stock.amount();
  }

  public Quantity used() {
    return uses.stream().map(Use::qty).reduce(nothing(), Quantity::plus);
  }

  /** What is at hand now. */
  public Quantity left() {
    return amount().less(used());
  }

  /** What is promised with an amount, used already or not. */
  public Quantity promised() {
    return sum(promises);
  }

  /** What nobody has used and nobody has asked for. */
  public Quantity free() {
    return left().less(sum(ahead));
  }

  private Quantity sum(List<Promise> all) {
    return all.stream()
        .map(Promise::qty)
        .flatMap(Optional::stream)
        .reduce(nothing(), Quantity::plus);
  }

  private Quantity nothing() {
    return Quantity.none(amount().unit());
  }
}
