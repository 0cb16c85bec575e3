package kitwright.shortage;

import java.util.ArrayList;
import java.util.List;
import kitwright.kit.Count;
import kitwright.kit.Position;
import kitwright.ledger.Shortage;
import kitwright.value.Quantity;

/**
 * Deals out to the shortages of an item, oldest first, what was counted good after they were found.
 * No more is dealt out than the recorded shortages exceed what is still missing: a second crate
 * that was always meant to come covers nothing that the first one lacked.
 */
final class Arrivals {
  private final List<Count> counts;
  private final List<Quantity> left = new ArrayList<>();
  private Quantity excess;

  Arrivals(Position position, List<Shortage> shortages, Quantity hidden) {
    counts = position.counts();
    counts.forEach(count -> left.add(count.good()));
    Quantity recorded =
        shortages.stream()
            .map(Shortage::qty)
            .filter(qty -> qty.convertsTo(position.promised()))
            .reduce(Quantity.none(position.promised().unit()), Quantity::plus);
    excess = recorded.less(position.promised().plus(hidden).less(position.good()));
  }

  /** What covers this shortage; to be asked for in the order in which they were found. */
  List<Cover> cover(Shortage shortage) {
    List<Cover> covers = new ArrayList<>();
    if (!shortage.qty().convertsTo(excess)) {
      return covers;
    }
    Quantity open = shortage.qty().in(excess.unit());
    for (int i = 0; i < counts.size(); i++) {
      Count count = counts.get(i);
      Quantity part = open.min(left.get(i)).min(excess);
      if (count.on().isAfter(shortage.found()) && !part.isNone()) {
        covers.add(new Cover(Cover.How.DELIVERED, part, count.delivery(), count.on()));
        open = open.less(part);
        excess = excess.less(part);
        left.set(i, left.get(i).less(part));
      }
    }
    return covers;
  }
}
