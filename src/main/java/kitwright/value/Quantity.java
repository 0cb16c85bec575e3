package kitwright.value;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * So many of a unit. Never negative: what is missing is told by its own type. {@code 4 each} equals
 * {@code 4.0 each}, but not {@code 400 cm}: compare amounts with {@link #compareAmount}.
 */
public record Quantity(BigDecimal amount, Unit unit) {
  /** Wider than a number's own, so that a wrong one is named as a whole. */
  private static final String DIGITS = "0123456789.,_:eE+";

  private static final Pattern POWER_OF_TEN =
      Pattern.compile("[+-]?[0-9]{1,12}(\\.[0-9]{1,12})?[eE]\\+?[0-9]{1,2}");

  /** The largest amount read; a builder's ledger holds no more of anything. */
  private static final BigDecimal LARGEST = new BigDecimal("1000000000000");

  public Quantity {
    if (amount.signum() < 0) {
      throw new IllegalArgumentException("a quantity is never negative: " + amount);
    }
    amount = amount.signum() == 0 ? BigDecimal.ZERO : amount.stripTrailingZeros();
  }

  /** So many of a unit. */
  public static Quantity of(String amount, Unit unit) {
    return new Quantity(new BigDecimal(amount), unit);
  }

  /** None of a unit. */
  public static Quantity none(Unit unit) {
    return new Quantity(BigDecimal.ZERO, unit);
  }

  /**
   * Reads {@code 26 m}, {@code 4 sheet}, {@code 1.8e6 psi}, {@code 23 7/16 in}, {@code 12 %}, or a
   * bare number, which is so many {@code fallback}.
   *
   * @throws Misread for a number or unit that cannot be read, or a negative amount
   */
  public static Quantity parse(String text, Unit fallback) throws Misread {
    return parse(text, fallback, Optional.empty());
  }

  /** Reads a quantity of one dimension. */
  public static Quantity parse(String text, Unit fallback, Dimension wanted) throws Misread {
    Quantity quantity = parse(text, fallback, Optional.of(wanted));
    if (quantity.unit.dimension() != wanted) {
      throw new Misread(
          Decimal.quoted(text)
              + (quantity.unit == Unit.ONE
                  ? " has no unit"
                  : " is " + quantity.unit.dimension().word() + ", not " + wanted.word()),
          "write it in one of: " + Unit.symbolsOf(wanted));
    }
    return quantity;
  }

  private static Quantity parse(String text, Unit fallback, Optional<Dimension> wanted)
      throws Misread {
    Optional<Quantity> onTape = Tape.read(text, fallback);
    if (onTape.isPresent()) {
      return onTape.get();
    }
    Figure figure = Figure.of(text, DIGITS).orElseThrow(() -> noNumber(text, wanted));
    BigDecimal amount = amount(figure, text);
    Unit unit = figure.word().isEmpty() ? fallback : unit(figure.word().get(), wanted);
    if (amount.signum() < 0) {
      throw new Misread(
          "the quantity " + Decimal.quoted(text) + " is negative",
          "a quantity is never below nothing; record a return or a shortage instead");
    }
    if (amount.compareTo(LARGEST) > 0) {
      throw new Misread(
          "the quantity " + Decimal.quoted(text) + " is beyond any boat", "write less");
    }
    return new Quantity(amount, unit);
  }

  private static Misread noNumber(String text, Optional<Dimension> wanted) {
    return new Misread(
        Decimal.quoted(text)
            + " is not "
            + wanted.map(each -> Word.withArticle(each.word())).orElse("a quantity"),
        "write a number and a unit, such as " + wanted.map(Dimension::example).orElse("26 m"));
  }

  /** With a unit behind it a power of ten is plain; a bare {@code 1e3} may be an id or a slip. */
  private static BigDecimal amount(Figure figure, String text) throws Misread {
    if (figure.number().indexOf(',') >= 0) {
      throw Decimal.comma(figure.number(), text);
    }
    return figure.word().isPresent() && POWER_OF_TEN.matcher(figure.number()).matches()
        ? new BigDecimal(figure.number())
        : Decimal.parse(figure.number());
  }

  private static Unit unit(String symbol, Optional<Dimension> wanted) throws Misread {
    Optional<Unit> known = Unit.of(symbol);
    if (known.isPresent()) {
      return known.get();
    }
    throw new Misread(
        "the unit " + Decimal.quoted(symbol) + " is not known",
        Unit.nearest(symbol, wanted)
            .filter(near -> wanted.isEmpty() || Unit.of(near).map(Unit::dimension).equals(wanted))
            .map(near -> "did you mean " + Decimal.quoted(near) + "?")
            .or(() -> wanted.map(dimension -> "write it in one of: " + Unit.symbolsOf(dimension)))
            .orElse("use a unit such as mm, m, m2, kg, l, each, sheet or roll"));
  }

  /** Whether there is nothing of it. */
  public boolean isNone() {
    return amount.signum() == 0;
  }

  /** Whether the two can be added and compared. */
  public boolean convertsTo(Quantity other) {
    return unit.convertsTo(other.unit);
  }

  /** The same in another unit of the dimension. */
  public Quantity in(Unit other) {
    if (unit == other) {
      return this;
    }
    requireConvertible(other);
    return new Quantity(
        amount.multiply(unit.factor()).divide(other.factor(), MathContext.DECIMAL64), other);
  }

  /** The amount in the dimension's base unit (m, m², l, kg, s, N, Pa …), for mechanics. */
  public double base() {
    return amount.multiply(unit.factor()).doubleValue();
  }

  /** The sum, in this unit. */
  public Quantity plus(Quantity other) {
    if (other.unit == unit && (isNone() || other.isNone())) {
      return isNone() ? other : this;
    }
    return new Quantity(amount.add(other.in(unit).amount), unit);
  }

  /** What is left of this when {@code other} is taken away; none if that is more. */
  public Quantity less(Quantity other) {
    return new Quantity(amount.subtract(other.in(unit).amount).max(BigDecimal.ZERO), unit);
  }

  /** So many times this. */
  public Quantity times(BigDecimal factor) {
    return new Quantity(amount.multiply(factor), unit);
  }

  /** The smaller of the two. */
  public Quantity min(Quantity other) {
    return compareAmount(other) <= 0 ? this : other;
  }

  /** Compares amounts across units of one dimension. */
  public int compareAmount(Quantity other) {
    return amount.compareTo(other.in(unit).amount);
  }

  private void requireConvertible(Unit other) {
    if (!unit.convertsTo(other)) {
      throw new IllegalArgumentException(unit.symbol() + " does not convert to " + other.symbol());
    }
  }

  /** As a sentence tells it: {@code 26 m}, but {@code 4} where things are counted. */
  public String told() {
    String number = Decimal.print(amount);
    return unit == Unit.EACH || unit == Unit.ONE ? number : number + " " + unit.told();
  }

  /** As a sentence tells it of a thing: {@code 26 m of stave-s}, {@code 4 × cleat}. */
  public String told(String thing) {
    return unit == Unit.EACH ? told() + " × " + thing : told() + " of " + thing;
  }

  /** As a ledger writes it: {@code 26 m}. */
  @Override
  public String toString() {
    String number = Decimal.print(amount);
    return unit == Unit.ONE ? number : number + " " + unit.symbol();
  }

  @Override
  public int hashCode() { // a unit's own hash differs from run to run
    return amount.hashCode() * 31 + unit.symbol().hashCode();
  }
}
