package kitwright.money;

import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Shortage;
import kitwright.shortage.Arrival;
import kitwright.spending.Exchange;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/** What a way out of a shortage costs by its own word, whatever is paid of it already. */
public final class WayCost {
  private WayCost() {}

  /**
   * In the build’s currency at the rate of the day: low, likely, high; nothing where no cost is
   * named and nothing need be bought for it.
   *
   * @return empty where something must be bought and nobody has said for how much, or a rate is
   *     missing
   */
  public static Optional<ThreePoint<Money>> of(
      Shortage.Option option, Facts day, Exchange exchange) {
    if (option.cost().isEmpty()) {
      return isFree(option, day)
          ? Optional.of(ThreePoint.fixed(Money.zero(exchange.home())))
          : Optional.empty();
    }
    ThreePoint<Money> said = option.cost().get();
    Optional<Money> low = exchange.home(said.low(), day.day()).money();
    Optional<Money> likely = exchange.home(said.likely(), day.day()).money();
    Optional<Money> high = exchange.home(said.high(), day.day()).money();
    return low.isPresent() && likely.isPresent() && high.isPresent()
        ? Optional.of(
            new ThreePoint<>(low.get(), likely.get(), high.get()).rising(Money::compareAmount))
        : Optional.empty();
  }

  /** What nothing need be bought for; of a part built otherwise, where all it takes is here. */
  private static boolean isFree(Shortage.Option option, Facts day) {
    return switch (option.way()) {
      case WAIT, DO_WITHOUT -> true;
      case BUY -> false;
      case SUBSTITUTE ->
          option
              .substitution()
              .flatMap(day.ledger()::substitution)
              .filter(each -> Arrival.isAtHand(each, day))
              .isPresent();
    };
  }
}
