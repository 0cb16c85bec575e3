package kitwright.shortage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import kitwright.kit.Awaited;
import kitwright.kit.Count;
import kitwright.kit.Position;
import kitwright.ledger.Delivery;
import kitwright.ledger.Shortage;
import kitwright.value.Quantity;

/**
 * What deliveries bring for the shortages of an item, oldest first: what was counted good after
 * they were found. No more than the recorded shortages exceed what is then still missing: a second
 * crate that was always meant to come covers nothing that the first one lacked.
 */
final class Arrivals {
  static final Arrivals NONE = new Arrivals();

  /** So much of a count that answers shortages. */
  record Part(Delivery delivery, LocalDate on, Quantity qty, String shortage) {}

  /** So much of a delivery on its way that answers shortages. */
  record ToCome(Delivery delivery, Quantity qty) {}

  private final List<Shortage> shortages;
  private final List<Part> parts = new ArrayList<>();
  private final Map<String, Quantity> left = new HashMap<>();

  private Arrivals() {
    shortages = List.of();
  }

  /**
   * Deals out the counts.
   *
   * @param shortages in the order found
   * @param whose which deliveries are looked at
   */
  Arrivals(Position position, List<Shortage> shortages, Predicate<Delivery> whose) {
    this.shortages =
        shortages.stream().filter(each -> each.qty().convertsTo(position.promised())).toList();
    Quantity none = Quantity.none(position.promised().unit());
    this.shortages.forEach(each -> left.put(each.id(), each.qty().in(none.unit())));
    Quantity good = none;
    Quantity dealt = none;
    for (Count count : position.counts()) {
      if (whose.test(count.delivery())) {
        good = good.plus(count.good());
        Quantity most = excess(position, count.on(), good).less(dealt).min(count.good());
        dealt = dealt.plus(deal(count, most));
      }
    }
  }

  /** How much more is recorded by the end of a day than is missing then. */
  private Quantity excess(Position position, LocalDate day, Quantity good) {
    List<Shortage> found = shortages.stream().filter(each -> !each.found().isAfter(day)).toList();
    Quantity recorded =
        found.stream().map(Shortage::qty).reduce(Quantity.none(good.unit()), Quantity::plus);
    Quantity needed = position.promised().plus(Hidden.of(position.on(day), found));
    return recorded.less(needed.less(good));
  }

  private Quantity deal(Count count, Quantity most) {
    Quantity open = most;
    for (Shortage shortage : shortages) {
      if (shortage.found().isBefore(count.on())) {
        Quantity lacking = left.getOrDefault(shortage.id(), Quantity.none(open.unit()));
        Quantity part = open.min(lacking);
        if (!part.isNone()) {
          parts.add(new Part(count.delivery(), count.on(), part, shortage.id()));
          left.put(shortage.id(), lacking.less(part));
          open = open.less(part);
        }
      }
    }
    return most.less(open);
  }

  List<Part> parts() {
    return parts;
  }

  /** What was dealt to a shortage from counts after a day, in the shortage's own unit. */
  Quantity of(Shortage shortage, LocalDate after) {
    return parts.stream()
        .filter(part -> part.shortage().equals(shortage.id()) && part.on().isAfter(after))
        .map(Part::qty)
        .reduce(Quantity.none(shortage.qty().unit()), Quantity::plus);
  }

  /** All that was dealt to a shortage, in its own unit. */
  Quantity of(Shortage shortage) {
    return of(shortage, LocalDate.MIN);
  }

  /**
   * What deliveries on their way bring for shortages, the first to come first; what was said for a
   * day that has passed, or for none, after all others.
   */
  List<ToCome> toCome(Position position, LocalDate today) {
    List<ToCome> all = new ArrayList<>();
    Quantity none = Quantity.none(position.promised().unit());
    Quantity there = position.isCounted() ? position.good() : unlacking(position);
    Quantity dealt = parts.stream().map(Part::qty).reduce(none, Quantity::plus);
    for (Awaited awaited :
        position.awaited().stream()
            .sorted(Comparator.comparing(each -> each.on(today).orElse(LocalDate.MAX)))
            .toList()) {
      there = there.plus(awaited.qty());
      Quantity part = excess(position, LocalDate.MAX, there).less(dealt).min(awaited.qty());
      if (!part.isNone()) {
        all.add(new ToCome(awaited.delivery(), part));
        dealt = dealt.plus(part);
      }
    }
    return all;
  }

  /** What nobody has counted is taken to be there, but for what is recorded as short. */
  private Quantity unlacking(Position position) {
    return shortages.stream().map(Shortage::qty).reduce(position.promised(), Quantity::less);
  }
}
