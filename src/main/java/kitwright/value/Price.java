package kitwright.value;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;

/**
 * A price for one of a unit: {@code 11.40 NZD/m}; without a unit, for one of whatever is counted.
 * May be finer than the currency's minor unit, since it is multiplied before it is paid.
 */
public record Price(BigDecimal amount, Currency currency, Optional<Unit> per) {
  /**
   * @throws Misread for a number, currency or unit that cannot be read, or a negative price
   */
  public static Price parse(String text, Currency fallback) throws Misread {
    String[] parts = text.strip().split("\\s*/\\s*", 2);
    String[] words = parts[0].split("\\s+");
    if (words.length > 2 || words[0].isEmpty()) {
      throw new Misread(
          Decimal.quoted(text) + " is not a price", "write it as 11.40 NZD/m or 46.20 EUR");
    }
    BigDecimal amount = Decimal.parse(words[0]);
    if (amount.signum() < 0) {
      throw new Misread(
          "the price " + Decimal.quoted(text) + " is negative", "write it above zero");
    }
    Currency currency = words.length == 2 ? Money.currency(words[1]) : fallback;
    return new Price(
        amount,
        currency,
        parts.length == 2
            ? Optional.of(Quantity.parse("1 " + parts[1], Unit.EACH).unit())
            : Optional.empty());
  }

  /** The same, for one of a unit where it does not say of which. */
  public Price forOneOf(Unit unit) {
    return new Price(amount, currency, per.or(() -> Optional.of(unit)));
  }

  /** Whether a quantity can be priced by this; the price of one is for what is counted. */
  public boolean prices(Quantity quantity) {
    return per.map(quantity.unit()::convertsTo).orElse(quantity.unit().isOfPieces());
  }

  /** What so many cost, rounded half up to the minor unit. */
  public Money of(Quantity quantity) {
    BigDecimal count = per.map(unit -> quantity.in(unit).amount()).orElse(quantity.amount());
    return Money.rounded(amount.multiply(count), currency);
  }

  /** As a ledger writes it: {@code 11.40 NZD/m}. */
  @Override
  public String toString() {
    return amount.toPlainString()
        + " "
        + currency.getCurrencyCode()
        + per.map(unit -> "/" + unit.symbol()).orElse("");
  }
}
