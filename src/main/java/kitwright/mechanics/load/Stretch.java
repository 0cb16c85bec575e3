package kitwright.mechanics.load;

import kitwright.mechanics.Refuse;

/**
 * A length of a beam with one section.
 *
 * @param from m
 * @param to m
 * @param bending EI, N·m²
 * @param shear GA, N
 */
public record Stretch(double from, double to, double bending, double shear) {
  public Stretch {
    Refuse.ifNegative("start", from);
    Refuse.unlessFinite("end", to);
    Refuse.unless(to > from, "a stretch has a length");
    Refuse.unlessPositive("EI", bending);
    Refuse.unlessPositive("GA", shear);
  }
}
