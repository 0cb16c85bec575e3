package kitwright.mechanics.load;

import kitwright.mechanics.Refuse;

/**
 * A place that breaks when the load has grown by a factor.
 *
 * @param at distance from the root, m
 * @param part what breaks
 * @param mode how, in words
 * @param factor on the load; 1 is the load as given
 */
public record Break(double at, String part, String mode, double factor) {
  public Break {
    Refuse.ifNegative("place", at);
    Refuse.unlessPositive("factor", factor);
  }

  /** A pin, bolt or other link of known strength, by its capacity and the demand on it, both N. */
  public static Break link(double at, String part, String mode, double capacity, double demand) {
    Refuse.unlessPositive("capacity", capacity);
    return new Break(at, part, mode, capacity / Refuse.unlessPositive("demand", demand));
  }
}
