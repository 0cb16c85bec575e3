package kitwright.value;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.regex.Pattern;

/**
 * An amount of a currency, to the minor unit of ISO 4217 and no finer: {@code 46.20 EUR}, {@code 46
 * JPY}. More decimals are refused; rounding is always named by the caller. May be negative (a
 * saving, an underspend).
 */
public record Money(BigDecimal amount, Currency currency) {
  /** Wider than a number's own, so that a wrong one is named as a whole. */
  private static final String DIGITS = "0123456789.,_:";

  private static final Pattern CODE = Pattern.compile("[A-Z]{3}");
  private static final Pattern TAX =
      Pattern.compile("(?i)\\b(vat|tax|gst|net|gross|ust|mwst|duty)\\b");

  private static final BigDecimal LARGEST = new BigDecimal("1000000000000");

  public Money {
    int digits = digits(currency);
    if (isFiner(amount, digits)) {
      throw new IllegalArgumentException(amount + " is finer than " + currency + " allows");
    }
    amount = amount.setScale(digits, RoundingMode.UNNECESSARY);
  }

  /** Nothing of a currency. */
  public static Money zero(Currency currency) {
    return new Money(BigDecimal.ZERO, currency);
  }

  /** An amount rounded half up to the minor unit, as Regulation (EC) 1103/97, Article 5, rounds. */
  public static Money rounded(BigDecimal amount, Currency currency) {
    return new Money(amount.setScale(digits(currency), RoundingMode.HALF_UP), currency);
  }

  /**
   * Reads {@code 46.20 EUR}; a bare number is of the fallback currency.
   *
   * @throws Misread for an unknown currency, or decimals finer than the currency has
   */
  public static Money parse(String text, Currency fallback) throws Misread {
    Figure figure =
        Figure.of(text, DIGITS)
            .orElseThrow(
                () ->
                    new Misread(
                        Decimal.quoted(text) + " is not an amount of money",
                        "write a number and an ISO 4217 currency, such as 46.20 EUR"));
    if (figure.number().indexOf(',') >= 0) {
      throw Decimal.comma(figure.number(), text);
    }
    BigDecimal amount = Decimal.parse(figure.number());
    Currency currency = fallback;
    if (figure.word().isPresent()) {
      String[] words = figure.word().get().split("\\s+", 2);
      currency = currency(CODE.matcher(words[0]).matches() ? words[0] : figure.word().get());
      if (words.length > 1) {
        throw more(text, words[1]);
      }
    }
    if (isFiner(amount, digits(currency))) {
      throw new Misread(
          Decimal.quoted(text)
              + " has more decimals than "
              + currency
              + " has ("
              + digits(currency)
              + ")",
          "round it to what was really paid");
    }
    if (amount.abs().compareTo(LARGEST) > 0) {
      throw new Misread(Decimal.quoted(text) + " is beyond any boat", "write the true amount");
    }
    return new Money(amount, currency);
  }

  /** What stands behind an amount is not read, and may change it. */
  private static Misread more(String text, String behind) {
    return new Misread(
        Decimal.quoted(text) + " says more than an amount: " + Decimal.quoted(behind),
        TAX.matcher(behind).find()
            ? "write what was paid in all, with the tax in it; a spend names the tax alone under"
                + " “tax”"
            : "write the amount and its currency alone; what else there is to say goes into another"
                + " key");
  }

  /**
   * The currency of an ISO 4217 code.
   *
   * @throws Misread where there is none, or it has no minor unit (gold, test codes)
   */
  public static Currency currency(String code) throws Misread {
    try {
      Currency currency = Currency.getInstance(code);
      if (currency.getDefaultFractionDigits() >= 0) {
        return currency;
      }
    } catch (IllegalArgumentException unknown) {
      // told below, like a code without minor units
    }
    throw new Misread(
        Decimal.quoted(code) + " is not a currency of ISO 4217",
        "write its three capital letters, such as EUR, NZD or JPY");
  }

  private static boolean isFiner(BigDecimal amount, int digits) {
    return amount.scale() > digits && amount.stripTrailingZeros().scale() > digits;
  }

  static int digits(Currency currency) {
    return Math.max(0, currency.getDefaultFractionDigits());
  }

  /** The sum; both of one currency. */
  public Money plus(Money other) {
    requireSame(other);
    return other.signum() == 0 ? this : new Money(amount.add(other.amount), currency);
  }

  /** The difference; both of one currency. */
  public Money minus(Money other) {
    requireSame(other);
    return other.signum() == 0 ? this : new Money(amount.subtract(other.amount), currency);
  }

  public Money negated() {
    return signum() == 0 ? this : new Money(amount.negate(), currency);
  }

  /** So many times this, rounded half up. */
  public Money times(BigDecimal factor) {
    return rounded(amount.multiply(factor), currency);
  }

  public Money max(Money other) {
    return compareAmount(other) >= 0 ? this : other;
  }

  public Money min(Money other) {
    return compareAmount(other) <= 0 ? this : other;
  }

  /** Compares amounts; both of one currency. */
  public int compareAmount(Money other) {
    requireSame(other);
    return amount.compareTo(other.amount);
  }

  public int signum() {
    return amount.signum();
  }

  private void requireSame(Money other) {
    if (!currency.equals(other.currency)) {
      throw new IllegalArgumentException(currency + " and " + other.currency + " do not add");
    }
  }

  /** As a sentence tells it: {@code 31 763.86 EUR}, which no line breaks in two. */
  public String told() {
    return Decimal.grouped(amount) + "\u00a0" + currency.getCurrencyCode();
  }

  /** As a ledger writes it: {@code 46.20 EUR}. */
  @Override
  public String toString() {
    return amount.toPlainString() + " " + currency.getCurrencyCode();
  }
}
