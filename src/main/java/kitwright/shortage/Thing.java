package kitwright.shortage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/**
 * What needs and supplies are netted by: an item of the kit, a piece of stock, or a material that
 * several items and pieces of stock are made of.
 *
 * @param key tells it from all others
 * @param what its name
 * @param unit in which it is counted
 */
public record Thing(String key, String what, Unit unit) {
  /** Below this nothing is missing: what is left of converting feet to metres and back. */
  private static final int DECIMALS = 6;

  /** {@code 2 sheets of plywood}, {@code 3 × mast hoop}. */
  public static String told(Quantity quantity, String what) {
    return told(quantity) + (quantity.unit() == Unit.EACH ? " × " : " of ") + what;
  }

  /** {@code 2 sheets}; single things as a bare number. */
  public static String told(Quantity quantity) {
    boolean plural =
        quantity.unit().dimension() == Dimension.PACKAGE
            && quantity.amount().compareTo(BigDecimal.ONE) != 0;
    String many = quantity.unit().symbol().endsWith("x") ? "es" : "s";
    return quantity.told() + (plural ? many : "");
  }

  /** So much of it in words. */
  public String so(Quantity quantity) {
    return told(quantity, what);
  }

  /** The record that it stands for, as {@code kind id}. */
  public String record() {
    String[] words = key.split(" ");
    return (words[0].equals("kit") ? "kit item" : words[0]) + " " + words[1];
  }

  /** So much of it. */
  public Quantity qty(BigDecimal amount) {
    return new Quantity(amount.setScale(DECIMALS, RoundingMode.HALF_UP).max(BigDecimal.ZERO), unit);
  }

  /** The amount without what conversion leaves behind. */
  static BigDecimal clean(BigDecimal amount) {
    return amount.setScale(DECIMALS, RoundingMode.HALF_UP);
  }
}
