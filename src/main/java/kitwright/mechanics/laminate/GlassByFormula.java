package kitwright.mechanics.laminate;

import kitwright.mechanics.Refuse;

/**
 * Chopped-strand mat and woven roving of E-glass by the formulas of ISO 12215-5:2008, Annex C, as
 * from memory, not read: a result that leans on them is unconfirmed.
 *
 * @param byMass glass over laminate mass, 0.25 to 0.6
 */
public record GlassByFormula(double byMass) {
  private static final double MPA = 1e6;

  public GlassByFormula {
    Refuse.outside("glass fraction by mass", 0.2, 0.65, byMass);
  }

  /** Pa. */
  public double tension() {
    return (800 * byMass * byMass - 80 * byMass + 37) * MPA;
  }

  /** Pa. */
  public double compression() {
    return (150 * byMass + 72) * MPA;
  }

  /** Pa. */
  public double shear() {
    return (80 * byMass + 38) * MPA;
  }
}
