package kitwright.shortage;

import java.util.List;
import kitwright.kit.Position;
import kitwright.ledger.Shortage;
import kitwright.value.Quantity;

/**
 * Shortages that no count shows: what was counted good and later used up, or found undersize, has
 * to be had once more.
 */
final class Hidden {
  private Hidden() {}

  static Quantity of(Position position, List<Shortage> shortages) {
    Quantity undersize = sum(position, shortages, Shortage.Cause.UNDERSIZE);
    Quantity wrong = sum(position, shortages, Shortage.Cause.WRONG);
    // An undersize piece may have been counted among the wrong ones: then the count does show it.
    Quantity shown = undersize.min(position.undersize().plus(position.wrong().less(wrong)));
    return undersize.less(shown).plus(sum(position, shortages, Shortage.Cause.USED_UP));
  }

  private static Quantity sum(Position position, List<Shortage> shortages, Shortage.Cause cause) {
    return shortages.stream()
        .filter(shortage -> shortage.cause() == cause)
        .map(Shortage::qty)
        .filter(qty -> qty.convertsTo(position.promised()))
        .reduce(Quantity.none(position.promised().unit()), Quantity::plus);
  }
}
