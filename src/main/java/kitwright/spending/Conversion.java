package kitwright.spending;

import java.time.LocalDate;
import java.util.Currency;
import java.util.Optional;
import java.util.function.Function;
import kitwright.value.Money;

/** An amount in another currency, or the rate that is missing for it. */
public sealed interface Conversion {
  <R> R match(Function<Known, R> known, Function<NoRate, R> noRate);

  /** The amount, if there is a rate. */
  default Optional<Money> money() {
    return known().map(Known::result);
  }

  /** With its rate, if there is one. */
  default Optional<Known> known() {
    return match(Optional::of, none -> Optional.empty());
  }

  /**
   * Converted.
   *
   * @param original as written
   * @param result in the other currency
   * @param quote the rate
   */
  record Known(Money original, Money result, Quote quote) implements Conversion {
    @Override
    public <R> R match(Function<Known, R> known, Function<NoRate, R> noRate) {
      return known.apply(this);
    }
  }

  /**
   * There is no rate on or before the day, direct, inverse or through a third currency.
   *
   * @param original as written
   */
  record NoRate(Money original, Currency to, LocalDate on) implements Conversion {
    @Override
    public <R> R match(Function<Known, R> known, Function<NoRate, R> noRate) {
      return noRate.apply(this);
    }
  }
}
