package kitwright.mechanics;

import java.util.function.Supplier;

/** Refuses numbers that cannot be: the gate that keeps NaN and infinity out of every result. */
public final class Refuse {
  private Refuse() {}

  /** The value, which must be above zero and finite. */
  public static double unlessPositive(String what, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " must be above zero and finite: " + value);
    }
    return value;
  }

  /** The value, which must be zero or more and finite. */
  public static double ifNegative(String what, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " must be zero or more and finite: " + value);
    }
    return value;
  }

  /** The value, which must be finite. */
  public static double unlessFinite(String what, double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " must be finite: " + value);
    }
    return value;
  }

  /** The value, which must lie strictly between the two bounds. */
  public static double outside(String what, double low, double high, double value) {
    if (!(value > low && value < high)) {
      throw new IllegalArgumentException(
          what + " must lie between " + low + " and " + high + ": " + value);
    }
    return value;
  }

  /** Refuses with the message unless the condition holds. */
  public static void unless(boolean holds, String message) {
    if (!holds) {
      throw new IllegalArgumentException(message);
    }
  }

  /** The same; the message is put together only where it is needed. */
  public static void unless(boolean holds, Supplier<String> message) {
    if (!holds) {
      throw new IllegalArgumentException(message.get());
    }
  }
}
