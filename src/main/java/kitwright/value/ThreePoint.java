package kitwright.value;

import java.util.Comparator;

/**
 * A guess as low, likely and high; a fixed value has all three equal.
 *
 * @param <T> what is guessed
 */
public record ThreePoint<T>(T low, T likely, T high) {
  /** A value that is known. */
  public static <T> ThreePoint<T> fixed(T value) {
    return new ThreePoint<>(value, value, value);
  }

  /** This, or its middle alone where it does not rise (rule {@code three-point-disordered}). */
  public ThreePoint<T> rising(Comparator<? super T> order) {
    boolean rises = order.compare(low, likely) <= 0 && order.compare(likely, high) <= 0;
    return rises ? this : fixed(likely);
  }

  /** Whether it is one known value. */
  public boolean isFixed() {
    return low.equals(high);
  }
}
