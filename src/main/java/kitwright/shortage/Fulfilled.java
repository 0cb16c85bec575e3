package kitwright.shortage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.kit.Awaited;
import kitwright.kit.Count;
import kitwright.kit.Position;
import kitwright.ledger.Delivery;
import kitwright.ledger.KitItem;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Sets purchases of an item against what their sellers delivered: what was counted, or stands on a
 * delivery note, is the same goods as the order, and counts once.
 */
final class Fulfilled {
  private final Map<String, Quantity> counted = new HashMap<>();
  private final Map<String, Quantity> underWay = new HashMap<>();
  private final Map<String, Ref> sellers = new HashMap<>();
  private final List<Purchase> left = new ArrayList<>();

  Fulfilled(Position position, Maker maker, Purchases purchases) {
    KitItem item = position.item();
    List<Purchase> all =
        purchases.of(item.id()).stream()
            .filter(purchase -> purchase.qty().convertsTo(position.promised()))
            .sorted(Comparator.comparing(Purchase::on))
            .toList();
    if (all.isEmpty()) {
      return;
    }
    for (Count count : position.counts()) {
      if (!maker.sends(count.delivery(), item)) {
        note(counted, count.delivery(), count.found());
      }
    }
    for (Awaited awaited : position.awaited()) {
      if (!maker.sends(awaited.delivery(), item)) {
        note(underWay, awaited.delivery(), awaited.qty());
      }
    }
    all.forEach(purchase -> take(purchase, purchases));
  }

  private void note(Map<String, Quantity> of, Delivery delivery, Quantity qty) {
    sellers.put(delivery.from().id(), delivery.from());
    of.merge(delivery.from().id(), qty, Quantity::plus);
  }

  private void take(Purchase purchase, Purchases purchases) {
    Optional<String> seller =
        sellers.values().stream()
            .filter(firm -> purchases.isAt(firm, purchase))
            .map(Ref::id)
            .findFirst();
    if (seller.isEmpty()) {
      left.add(purchase);
      return;
    }
    Quantity rest = lessen(counted, seller.get(), purchase.qty());
    boolean wasCounted = rest.compareAmount(purchase.qty()) < 0;
    rest = lessen(underWay, seller.get(), rest);
    if (!rest.isNone()) {
      // A seller whose goods are counted has not delivered what the count lacks, paid or not.
      left.add(wasCounted ? purchase.of(rest).notHere() : purchase.of(rest));
    }
  }

  private static Quantity lessen(Map<String, Quantity> of, String seller, Quantity qty) {
    Quantity there = of.get(seller);
    if (there == null) {
      return qty;
    }
    Quantity part = qty.min(there);
    of.put(seller, there.less(part));
    return qty.less(part);
  }

  /** What of the purchases no delivery note and no count shows, in the order bought. */
  List<Purchase> stillToCount() {
    return left;
  }
}
