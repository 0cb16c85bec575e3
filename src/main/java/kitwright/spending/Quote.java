package kitwright.spending;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Rate;
import kitwright.value.Money;

/**
 * How one currency becomes another: an amount is multiplied by {@code times} and divided by {@code
 * over}, and rounded once, at the end. A rate is thus never rounded or truncated and an inverse
 * rate never formed (Council Regulation (EC) 1103/97, Article 4(2) and (3)); the step through a
 * third currency keeps all its decimals, where Article 4(4) asks for three at least.
 *
 * @param how which kind of rate it is
 * @param via the currency that a cross rate goes through
 * @param used the rates it comes from, in the order of their use; empty for one on the record
 */
public record Quote(
    Currency from,
    Currency to,
    BigDecimal times,
    BigDecimal over,
    How how,
    Optional<Currency> via,
    List<Rate> used) {
  /** The kinds of rate. */
  public enum How {
    /** The two currencies are one. */
    SAME,
    /** Written on the record that holds the amount. */
    RECORDED,
    /** A dated rate as it stands. */
    DIRECT,
    /** A dated rate the other way round: the amount is divided by it. */
    INVERSE,
    /** Two dated rates through a third currency. */
    CROSS
  }

  public Quote {
    if (times.signum() <= 0 || over.signum() <= 0) {
      throw new IllegalArgumentException("a rate is above zero: " + times + "/" + over);
    }
    used = List.copyOf(used);
  }

  static Quote same(Currency currency) {
    return new Quote(
        currency, currency, BigDecimal.ONE, BigDecimal.ONE, How.SAME, Optional.empty(), List.of());
  }

  static Quote recorded(Currency from, Currency to, BigDecimal rate) {
    return new Quote(from, to, rate, BigDecimal.ONE, How.RECORDED, Optional.empty(), List.of());
  }

  static Quote direct(Rate rate) {
    return new Quote(
        rate.from(),
        rate.to(),
        rate.rate(),
        BigDecimal.ONE,
        How.DIRECT,
        Optional.empty(),
        List.of(rate));
  }

  static Quote inverse(Rate rate) {
    return new Quote(
        rate.to(),
        rate.from(),
        BigDecimal.ONE,
        rate.rate(),
        How.INVERSE,
        Optional.empty(),
        List.of(rate));
  }

  /** The other way: the amount is divided by this; no inverse rate is formed. */
  Quote back() {
    return new Quote(to, from, over, times, how, via, used);
  }

  /** This, and then another from the currency that this ends in. */
  Quote then(Quote next) {
    return new Quote(
        from,
        next.to,
        times.multiply(next.times),
        over.multiply(next.over),
        How.CROSS,
        Optional.of(to),
        List.of(used.get(0), next.used.get(0)));
  }

  /**
   * The amount in the other currency, to its minor unit, a half rounded up (Article 5).
   *
   * @param amount of {@link #from}
   */
  public Money of(Money amount) {
    if (!amount.currency().equals(from)) {
      throw new IllegalArgumentException(amount + " is not " + from);
    }
    if (how == How.SAME) {
      return amount;
    }
    int digits = Math.max(0, to.getDefaultFractionDigits());
    return new Money(
        amount.amount().multiply(times).divide(over, digits, RoundingMode.HALF_UP), to);
  }
}
