package kitwright.value;

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

  /** Whether it is one known value. */
  public boolean isFixed() {
    return low.equals(high);
  }
}
