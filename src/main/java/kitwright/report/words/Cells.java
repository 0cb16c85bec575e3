package kitwright.report.words;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import kitwright.document.Cell;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Value;
import kitwright.value.Money;
import kitwright.value.Quantity;

/** Rows and cells that documents have in common. */
public final class Cells {
  /** What stands where there is nothing to say. */
  public static final String NONE = Cell.NONE;

  private Cells() {}

  /** A last row, of sums. */
  public static Row total(String... cells) {
    return new Row(Arrays.stream(cells).map(cell -> Cell.text(cell).strong()).toList());
  }

  public static <T> String maybe(Optional<T> value) {
    return value.map(Object::toString).orElse(NONE);
  }

  /** A name with its id, by which the builder finds the record. */
  public static Inline named(String what, String id) {
    return Inline.named(what, id);
  }

  /** What something is, behind its name. */
  public static Inline fact(String name, String text) {
    return Inline.together(Inline.strong(name), Inline.text(": " + text));
  }

  /** A day in a sentence: {@code Sunday 29 March 2026}. */
  public static Cell spoken(LocalDate day) {
    return Cell.of(Say.day(day), new Value.Day(day));
  }

  /** {@code 3 days}; as a value their number. */
  public static Cell days(long days) {
    return Cell.number(Say.days(days), BigDecimal.valueOf(days));
  }

  /** An amount under a head that names its currency. */
  public static Cell amount(Money money) {
    return Cell.of(Say.amount(money), new Value.Cash(money));
  }

  /** The same; a stroke where it is none. */
  public static Cell amountOrNone(Money money) {
    return money.signum() == 0
        ? new Cell(Cell.none().shown(), new Value.Cash(money))
        : amount(money);
  }

  /** An amount with its sign, for what is above or below something. */
  public static Cell signed(Money money) {
    return Cell.of(Say.signed(money), new Value.Cash(money));
  }

  /** An amount with its currency. */
  public static Cell money(Money money) {
    return Cell.of(Say.money(money), new Value.Cash(money));
  }

  /** A quantity with its unit. */
  public static Cell qty(Quantity quantity) {
    return Cell.of(Say.qty(quantity), Value.of(quantity));
  }

  /**
   * A quantity in words such as {@code 6 sheets}, for other programs too, who find it beside them.
   */
  public static Cell told(Quantity quantity) {
    return told(Say.qty(quantity), quantity);
  }

  /** The same where there is one. */
  public static Cell told(Optional<Quantity> quantity) {
    return quantity.map(Cells::told).orElseGet(() -> Cell.text(""));
  }

  /** Words that tell a quantity. */
  public static Cell told(String words, Quantity quantity) {
    return Cell.text(words).with(Value.parts(quantity));
  }

  /** A day as a letter says it: {@code Fri 20 February 2026}, beside it the date. */
  public static Cell said(LocalDate day) {
    return Cell.text(Say.day(day)).with("date", new Value.Day(day));
  }

  /** The same where there is one. */
  public static Cell said(Optional<LocalDate> day) {
    return day.map(Cells::said).orElseGet(() -> Cell.text(""));
  }

  /** A last row, of sums. */
  public static Row total(Cell... cells) {
    return new Row(Arrays.stream(cells).map(Cell::strong).toList());
  }

  /** {@code 12.00 EUR over}, {@code 3.00 EUR under}. */
  public static Cell over(Money over) {
    return Cell.of(
        over.signum() > 0 ? Say.money(over) + " over" : Say.money(over.negated()) + " under",
        new Value.Cash(over));
  }
}
