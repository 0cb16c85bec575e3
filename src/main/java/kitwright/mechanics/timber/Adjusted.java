package kitwright.mechanics.timber;

import java.util.ArrayList;
import java.util.List;
import kitwright.mechanics.Refuse;

/**
 * A clear-wood value and the factors that make a design value of it, kept apart so that each can be
 * read.
 *
 * @param clear the value of small clear pieces at 12 % moisture, Pa
 * @param factors in the order given
 */
public record Adjusted(double clear, List<Factor> factors) {
  public Adjusted {
    Refuse.unlessPositive("clear-wood value", clear);
    factors = List.copyOf(factors);
  }

  public static Adjusted of(double clear) {
    return new Adjusted(clear, List.of());
  }

  public Adjusted times(Factor factor) {
    var all = new ArrayList<>(factors);
    all.add(factor);
    return new Adjusted(clear, all);
  }

  /** All factors together. */
  public double factor() {
    return factors.stream().mapToDouble(Factor::value).reduce(1, (a, b) -> a * b);
  }

  /** Pa. */
  public double value() {
    return clear * factor();
  }
}
