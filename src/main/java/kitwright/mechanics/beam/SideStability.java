package kitwright.mechanics.beam;

import kitwright.mechanics.Refuse;

/**
 * A beam deeper than wide tips over sideways, and twists as it does, before it breaks, where
 * nothing holds its sides.
 *
 * @param across bending stiffness EI sideways, N·m²
 * @param twisting torsional stiffness GJ, N·m²
 * @param length between places where it is held, with what table 6.1 adds, m
 * @see "EN 1995-1-1:2004, 6.3.3, equations 6.30, 6.31, 6.34 and table 6.1, read in public
 *     implementations on 2026-11-30; EN 1993-1-1:2005, 6.3.2.2 (4)"
 */
public record SideStability(double across, double twisting, double length) {
  public SideStability {
    Refuse.unlessPositive("EI across", across);
    Refuse.unlessPositive("GJ", twisting);
    Refuse.unlessPositive("length", length);
  }

  /** The moment at which a perfect beam tips, N·m: π·√(EI·GJ)/l. */
  public double critical() {
    return Math.PI * Math.sqrt(across * twisting) / length;
  }

  /** √(M/M_crit) for the moment in N·m that it would bear if held. */
  public double slenderness(double moment) {
    return Math.sqrt(moment / critical());
  }

  /** What is left of the moment that a wooden beam bears, k_crit. */
  public static double share(double slenderness) {
    if (slenderness <= 0.75) {
      return 1;
    }
    return slenderness <= 1.4 ? 1.56 - 0.75 * slenderness : 1 / (slenderness * slenderness);
  }
}
