package kitwright.report.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Days;
import kitwright.value.Decimal;
import kitwright.value.Dimension;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/** Values as words and figures in a document. */
public final class Say {
  private static final String JOINED = "\u00a0";

  private Say() {}

  /** {@code 12 234.50 EUR}. */
  public static String money(Money money) {
    return money.told();
  }

  /** The same without the currency, for a column whose head names it. */
  public static String amount(Money money) {
    return Decimal.grouped(money.amount());
  }

  /** With its sign, for what is above or below something. */
  public static String signed(Money money) {
    return (money.signum() > 0 ? "+" : "") + amount(money);
  }

  /** {@code 10 000}. */
  public static String grouped(long number) {
    return Decimal.grouped(BigDecimal.valueOf(number));
  }

  /** {@code 26 m}, {@code 3 sheets}; single things as a bare number. */
  public static String qty(Quantity quantity) {
    String number = Decimal.print(quantity.amount());
    if (quantity.unit() == Unit.EACH) {
      return number;
    }
    boolean one = quantity.amount().compareTo(BigDecimal.ONE) == 0;
    String symbol = quantity.unit().told();
    boolean plural = quantity.unit().dimension() == Dimension.PACKAGE && !one;
    return (number + JOINED + symbol + (plural ? symbol.endsWith("x") ? "es" : "s" : "")).strip();
  }

  /** {@code 2 sheets of plywood}, {@code 3 × mast hoop}. */
  public static String so(Quantity quantity, String what) {
    return qty(quantity) + (quantity.unit() == Unit.EACH ? JOINED + "× " : " of ") + what;
  }

  /** Hours to a tenth. */
  public static String hours(BigDecimal hours) {
    return Decimal.print(hours.setScale(1, RoundingMode.HALF_UP));
  }

  /** {@code 1 hour}, {@code 6.5 hours}. */
  public static String hoursWord(BigDecimal hours) {
    String number = hours(hours);
    return number + " " + (number.equals("1") ? "hour" : "hours");
  }

  /** A share of 1 as {@code 40 %}. */
  public static String percent(BigDecimal share) {
    return Decimal.print(share.movePointRight(2).setScale(0, RoundingMode.HALF_UP)) + JOINED + "%";
  }

  /** A share that so many runs cannot tell from none or from all, in words; else empty. */
  public static Optional<String> beyondRuns(double share) {
    if (share >= 0.9995) {
      return Optional.of("above 99.9\u00a0%");
    }
    return share < 0.0005 ? Optional.of("below 0.1\u00a0%") : Optional.empty();
  }

  /** {@code 1 day}, {@code 12 days}. */
  public static String days(long days) {
    return count(days, "day", "days");
  }

  public static String count(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  /** {@code Sun 29 March 2026}, which no line breaks in two. */
  public static String day(LocalDate day) {
    return weekday(day) + JOINED + Days.named(day);
  }

  /** {@code Sun}. */
  public static String weekday(LocalDate day) {
    return Days.weekday(day);
  }

  /** {@code 29 March}. */
  public static String dayAndMonth(LocalDate day) {
    return Days.dayAndMonth(day);
  }

  /** {@code Mon 23 to Sun 29 March 2026}. */
  public static String span(LocalDate first, LocalDate last) {
    String begun =
        first.getMonth() == last.getMonth()
            ? weekday(first) + " " + first.getDayOfMonth()
            : first.getYear() == last.getYear()
                ? weekday(first) + " " + dayAndMonth(first)
                : day(first);
    return first.equals(last) ? day(last) : begun + " to " + day(last);
  }

  /** {@code a, b and c}. */
  public static String list(List<String> parts) {
    int last = parts.size() - 1;
    return last < 1
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  /** Sums of several currencies: {@code 3.00 EUR and 5.00 NZD}. */
  public static String monies(List<Money> sums) {
    return list(sums.stream().map(Say::money).toList());
  }

  /** The sentences that there are. */
  public static String sentences(List<String> sentences) {
    return String.join(" ", sentences.stream().filter(each -> !each.isEmpty()).toList());
  }
}
