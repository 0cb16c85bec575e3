package kitwright.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import kitwright.ledger.KitItem;
import kitwright.value.Quantity;

/**
 * How an item of the kit stands: promised, counted over all deliveries, used. Every quantity is in
 * the unit of the promise. What covers a shortage otherwise (a substitution, a credit) is told by
 * {@code kitwright.shortage}.
 *
 * @param counts by day
 * @param uses by day, from the log
 * @param promises what substitutions and tasks still ask of it: without what is told twice and what
 *     its work has used already
 * @param back what was sent back, by day
 * @param awaited in deliveries that are still on their way
 * @param doubts why nobody can say how much is left, each a clause after “since”; none where the
 *     records tell
 */
public record Position(
    KitItem item,
    List<Count> counts,
    List<Use> uses,
    List<Promise> promises,
    List<SentBack> back,
    List<Awaited> awaited,
    List<String> doubts) {
  public Position {
    counts = List.copyOf(counts);
    uses = List.copyOf(uses);
    promises = List.copyOf(promises);
    back = List.copyOf(back);
    awaited = List.copyOf(awaited);
    doubts = List.copyOf(doubts);
  }

  /** The same at the end of an earlier day. */
  public Position on(LocalDate day) {
    return new Position(
        item,
        counts.stream().filter(count -> !count.on().isAfter(day)).toList(),
        uses.stream().filter(use -> !use.on().isAfter(day)).toList(),
        promises,
        back.stream().filter(sent -> !sent.on().isAfter(day)).toList(),
        awaited,
        doubts);
  }

  /** What the supplier promised. */
  public Quantity promised() {
    return item.qty();
  }

  /** Whether anybody has counted it, even if none was found. */
  public boolean isCounted() {
    return !counts.isEmpty();
  }

  /** Found in all, good or not. */
  public Quantity counted() {
    return sum(counts, Count::found);
  }

  public Quantity damaged() {
    return sum(counts, Count::damaged);
  }

  public Quantity wrong() {
    return sum(counts, Count::wrong);
  }

  public Quantity undersize() {
    return sum(counts, Count::undersize);
  }

  /** Found, and of no use, for whatever cause. */
  public Quantity noGood() {
    return sum(counts, Count::noGood);
  }

  /** Gone back to whom it came from, good or not. */
  public Quantity sentBack() {
    return sum(back, SentBack::qty);
  }

  /** What was counted, can be built with and was not sent back; what is no good goes back first. */
  public Quantity good() {
    return sum(counts, Count::good).less(sentBack().less(noGood()));
  }

  /** Promised and not counted good. */
  public Quantity missing() {
    return promised().less(good());
  }

  public Quantity used() {
    return sum(uses, Use::qty);
  }

  /** Good and not used yet. */
  public Quantity left() {
    return good().less(used());
  }

  /** What deliveries on their way say they hold. */
  public Quantity onItsWay() {
    return sum(awaited, Awaited::qty);
  }

  private <T> Quantity sum(List<T> parts, Function<T, Quantity> amount) {
    Quantity sum = Quantity.none(promised().unit());
    for (T part : parts) {
      sum = sum.plus(amount.apply(part));
    }
    return sum;
  }
}
