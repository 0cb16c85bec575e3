package kitwright.shortage;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import kitwright.kit.Awaited;
import kitwright.kit.Position;
import kitwright.ledger.Delivery;
import kitwright.ledger.Spend;
import kitwright.value.Quantity;

/**
 * The whole account of an item of the kit: promised − counted good − covered = open. Every quantity
 * is in the unit of the promise.
 *
 * @param shortages of this item, in the order found
 * @param hidden good pieces that turned out useless after the count, or were used up: recorded
 *     shortages that no count can show
 * @param spare bought beyond every shortage, and here
 * @param spareToCome ordered beyond every shortage
 */
public record Balance(
    Position position,
    List<ShortageStanding> shortages,
    Quantity hidden,
    List<Cover> spare,
    List<Coming> spareToCome) {
  public Balance {
    shortages = List.copyOf(shortages);
    spare = List.copyOf(spare);
    spareToCome = List.copyOf(spareToCome);
  }

  /** What has to be had in all: the promise, and what has to be had once more. */
  public Quantity needed() {
    return position.promised().plus(hidden);
  }

  /** Needed and not counted good. */
  public Quantity missing() {
    return needed().less(position.good());
  }

  /** Recorded as short. */
  public Quantity recorded() {
    return sum(standing -> standing.shortage().qty());
  }

  /** Counted good later, in answer to a shortage. */
  public Quantity delivered() {
    return sum(ShortageStanding::arrived);
  }

  /** Covered otherwise than by a count: substituted, bought without a delivery, done without. */
  public Quantity covered() {
    return sum(
        standing ->
            standing.covers().stream()
                .filter(cover -> !(cover.by() instanceof Delivery))
                .map(Cover::qty)
                .reduce(Quantity.none(standing.shortage().qty().unit()), Quantity::plus));
  }

  /** Bought and here without a delivery that was counted, beyond every shortage too. */
  public Quantity bought() {
    Quantity dealt =
        sum(
            standing ->
                standing.covers().stream()
                    .filter(cover -> cover.by() instanceof Spend)
                    .map(Cover::qty)
                    .reduce(Quantity.none(standing.shortage().qty().unit()), Quantity::plus));
    return spare.stream().map(Cover::qty).reduce(dealt, Quantity::plus);
  }

  /**
   * On its way by delivery notes, orders, standing promises and decisions for a day that still
   * stands, each once.
   */
  public Quantity coming(LocalDate today) {
    return onWay(each -> each.on(today).isPresent(), each -> each.on().isPresent());
  }

  /** Sent or ordered, and nobody knows when it comes: the day has passed, or none was said. */
  public Quantity ofNoDay(LocalDate today) {
    return onWay(
        each -> each.on(today).isEmpty(), each -> each.on().isEmpty() && each.isUnderWay());
  }

  private Quantity onWay(Predicate<Awaited> sent, Predicate<Coming> others) {
    Quantity sum =
        sum(
            standing ->
                standing.coming().stream()
                    .filter(part -> part.how() != Coming.How.SENT)
                    .filter(others)
                    .map(Coming::qty)
                    .reduce(Quantity.none(standing.shortage().qty().unit()), Quantity::plus));
    sum = spareToCome.stream().filter(others).map(Coming::qty).reduce(sum, Quantity::plus);
    return position.awaited().stream().filter(sent).map(Awaited::qty).reduce(sum, Quantity::plus);
  }

  /** Missing, and covered by nothing. */
  public Quantity open() {
    return missing().less(covered());
  }

  /** Missing by the count beyond what deliveries on their way hold and what is recorded. */
  public Quantity unrecorded() {
    Quantity openRecorded = recorded().less(delivered());
    return missing().less(position.onItsWay()).less(openRecorded);
  }

  private Quantity sum(Function<ShortageStanding, Quantity> amount) {
    Quantity sum = Quantity.none(position.promised().unit());
    for (ShortageStanding standing : shortages) {
      Quantity part = amount.apply(standing);
      sum = part.convertsTo(sum) ? sum.plus(part) : sum;
    }
    return sum;
  }
}
