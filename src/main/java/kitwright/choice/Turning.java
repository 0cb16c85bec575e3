package kitwright.choice;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.value.Money;

/**
 * What would have to change for a way out to be ahead of the cheapest one, own hours counted, that
 * is not beaten. What is too weak is neither: no price makes it bear.
 *
 * @param way the one that would win
 * @param against the cheapest
 * @param lessCost by so much it would have to be cheaper; empty where even for nothing it would not
 *     be ahead
 * @param belowHour it is ahead where an own hour is worth less than this
 * @param aboveHour it is ahead where an own hour is worth more than this
 * @param daysSooner by so many days its launch would have to be sooner to be no later; empty where
 *     it is not later, or nobody knows
 * @param dayWorth it is launched sooner: worth it where a day is worth more than this
 */
public record Turning(
    String way,
    String against,
    Optional<Money> lessCost,
    Optional<Money> belowHour,
    Optional<Money> aboveHour,
    Optional<Long> daysSooner,
    Optional<Money> dayWorth) {

  static List<Turning> of(List<WayOut> ways, List<Dominated> dominated, Optional<Money> ownHour) {
    Set<String> beaten = new HashSet<>();
    dominated.forEach(each -> beaten.add(each.way()));
    List<WayOut> known =
        ways.stream()
            .filter(way -> !way.isTooWeak())
            .filter(way -> price(way, ownHour).isPresent() && way.timing().launch().isPresent())
            .toList();
    Optional<WayOut> cheapest =
        known.stream()
            .filter(way -> !beaten.contains(way.name()))
            .min(Comparator.comparing((WayOut way) -> price(way, ownHour).orElseThrow().amount()));
    List<Turning> all = new ArrayList<>();
    cheapest.ifPresent(
        best ->
            known.stream()
                .filter(way -> !way.name().equals(best.name()))
                .forEach(way -> all.add(between(way, best, ownHour))));
    return List.copyOf(all);
  }

  /** With own hours where they have a value, else in cash alone. */
  private static Optional<Money> price(WayOut way, Optional<Money> ownHour) {
    return ownHour.isPresent()
        ? way.outlay().withHours()
        : way.outlay().cost().map(range -> range.likely());
  }

  private static Turning between(WayOut way, WayOut best, Optional<Money> ownHour) {
    Money cash = way.outlay().cost().orElseThrow().likely();
    Money more = price(way, ownHour).orElseThrow().minus(price(best, ownHour).orElseThrow());
    BigDecimal hours = way.outlay().hours().subtract(best.outlay().hours());
    Money moreCash = cash.minus(best.outlay().cost().orElseThrow().likely());
    Optional<Long> later = later(way, best);
    return new Turning(
        way.name(),
        best.name(),
        more.compareAmount(cash) < 0 ? Optional.of(more) : Optional.empty(),
        level(moreCash, hours).filter(worth -> hours.signum() > 0),
        level(moreCash, hours).filter(worth -> hours.signum() < 0),
        later.filter(days -> days > 0),
        later
            .filter(days -> days < 0)
            .map(
                days ->
                    Money.rounded(
                        more.amount().divide(BigDecimal.valueOf(-days), 6, RoundingMode.HALF_UP),
                        more.currency())));
  }

  /** cash + hours · worth is level where worth = − cash / hours, if that is above zero. */
  private static Optional<Money> level(Money moreCash, BigDecimal moreHours) {
    if (moreCash.signum() * moreHours.signum() >= 0) {
      return Optional.empty();
    }
    return Optional.of(
        Money.rounded(
            moreCash.amount().negate().divide(moreHours, 6, RoundingMode.HALF_UP),
            moreCash.currency()));
  }

  /** Calendar days by which it is launched later than the other. */
  private static Optional<Long> later(WayOut way, WayOut best) {
    return way.timing()
        .launch()
        .flatMap(
            one ->
                best.timing()
                    .launch()
                    .map(other -> one.on().toEpochDay() - other.on().toEpochDay()));
  }
}
