package kitwright.mechanics.timber;

import kitwright.mechanics.Refuse;

/**
 * What the size of a timber leaves of the strength of small clear pieces: the more wood is
 * strained, the likelier is a weak place in it.
 *
 * @see "Wood Handbook, FPL-GTR-282 (2021), equations 9-18 (bending, against a piece 50.8 mm deep
 *     over 711.12 mm, m = 18), 9-19 (spread loads) and 9-20 (shear, against the shear block)"
 */
public final class SizeEffect {
  /** Of the small clear piece, m. */
  public static final double SPAN = 0.71112;

  private static final double STANDARD = 0.0508 * SPAN;
  private static final double POWER = 18;

  /** A spread load strains more of a span than one at its middle. */
  public static final double SPREAD = 3.876;

  private static final double BLOCK = 1.9;
  private static final double CORNER = 2;

  private SizeEffect() {}

  /**
   * Share of the modulus of rupture, at most 1: what is smaller is not taken to be stronger.
   *
   * @param depth m
   * @param span m
   * @param strained 1 for a force at one place, {@link #SPREAD} for one spread; (1 + m·a/L) for two
   *     that stand a apart
   */
  public static double bending(double depth, double span, double strained) {
    Refuse.unlessPositive("depth", depth);
    Refuse.unlessPositive("span", span);
    return Math.min(1, Math.pow(STANDARD / (depth * span * strained), 1 / POWER));
  }

  /**
   * Share of the strength of a shear block, at most 1.
   *
   * @param area width times the length that is sheared, m²
   */
  public static double shear(double area) {
    Refuse.unlessPositive("sheared area", area);
    return Math.min(1, BLOCK * CORNER / Math.pow(area * 1e4, 1 / 5.0));
  }
}
