package kitwright.mechanics.fastener;

import kitwright.mechanics.Refuse;

/**
 * A plain pin, which may be a weak link.
 *
 * @param diameter at its thinnest in the shear plane, m
 * @param least least tensile strength of its stuff, Pa
 * @param most greatest tensile strength it may have, Pa; standards give only the least, and a weak
 *     link must be rated on the most
 * @see "EN 1993-1-8:2005, table 3.10: 0.6·A·fu and 1.5·W·fy, γ = 1"
 */
public record Pin(double diameter, double least, double most) {
  private static final double SHEAR = 0.6;

  public Pin {
    Refuse.unlessPositive("diameter", diameter);
    Refuse.unlessPositive("tensile strength", least);
    Refuse.unlessPositive("greatest tensile strength", most);
    Refuse.unless(most >= least, "the greatest strength is not below the least");
  }

  /** m². */
  public double area() {
    return Math.PI / 4 * diameter * diameter;
  }

  /** Load below which it does not shear on so many planes, N. */
  public double leastShearLoad(int planes) {
    Refuse.unless(planes >= 1, "a pin in shear has a shear plane");
    return planes * SHEAR * area() * least;
  }

  /** Load above which it has certainly sheared on so many planes, N. */
  public double mostShearLoad(int planes) {
    return leastShearLoad(planes) * (most / least);
  }

  /** Moment at which it yields through, 1.5·W·fy, N·m, for a yield strength in Pa. */
  public double bendingMoment(double yield) {
    return 1.5 * Math.PI / 32 * Math.pow(diameter, 3) * Refuse.unlessPositive("yield", yield);
  }
}
