package kitwright.value;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The size of a piece: length, width and, where given, thickness, in mm. Written {@code 1850 x 310
 * x 25 mm}; other lengths are converted.
 */
public record Size(BigDecimal length, BigDecimal width, Optional<BigDecimal> thickness) {
  /**
   * @throws Misread unless it is two or three positive lengths joined by {@code x} and one unit
   */
  public static Size parse(String text) throws Misread {
    String[] parts = text.strip().split("\\s*[x×*]\\s*");
    if (parts.length < 2 || parts.length > 3) {
      throw new Misread(
          Decimal.quoted(text) + " is not a size",
          "write length x width x thickness and the unit, such as 1850 x 310 x 25 mm");
    }
    String last = parts[parts.length - 1];
    Unit unit = Quantity.parse(last, Unit.ONE, Dimension.LENGTH).unit();
    List<BigDecimal> lengths = new ArrayList<>();
    for (String part : parts) {
      Quantity each = Quantity.parse(part, unit, Dimension.LENGTH);
      if (each.isNone()) {
        throw new Misread(Decimal.quoted(text) + " has a side of zero", "give the true size");
      }
      lengths.add(each.in(Unit.MM).amount());
    }
    return new Size(
        lengths.get(0),
        lengths.get(1),
        lengths.size() == 3 ? Optional.of(lengths.get(2)) : Optional.empty());
  }

  /** As a ledger writes it: {@code 1850 x 310 x 25 mm}. */
  @Override
  public String toString() {
    return Decimal.print(length)
        + " x "
        + Decimal.print(width)
        + thickness.map(t -> " x " + Decimal.print(t)).orElse("")
        + " mm";
  }
}
