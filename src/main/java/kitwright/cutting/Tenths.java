package kitwright.cutting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import kitwright.value.Decimal;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/** Lengths in whole tenths of a millimetre, finer than any saw. */
public final class Tenths {
  private Tenths() {}

  /** What is wanted or lost, rounded up. */
  static long atLeast(Quantity length) {
    return of(length, RoundingMode.CEILING);
  }

  /** What there is, rounded down. */
  static long atMost(Quantity length) {
    return of(length, RoundingMode.FLOOR);
  }

  /**
   * The side of a piece of stock, to the tenth that it reaches into: a part as large as its stock
   * in inches must fit it, and no saw knows the difference.
   */
  static long side(BigDecimal mm) {
    return mm.movePointRight(1).setScale(0, RoundingMode.CEILING).longValueExact();
  }

  private static long of(Quantity length, RoundingMode rounding) {
    return length.in(Unit.MM).amount().movePointRight(1).setScale(0, rounding).longValueExact();
  }

  /** As read off a rule: millimetres, a tenth only where there is one. */
  public static String mm(long tenths) {
    return Decimal.print(BigDecimal.valueOf(tenths, 1));
  }
}
