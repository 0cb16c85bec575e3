package kitwright.mechanics.column;

/** How the push that crushes a short part and the one that buckles a long one come together. */
public enum Rule {
  /** The less of both: of a part that is perfectly straight, which none is. */
  APART {
    @Override
    double together(double crushing, double buckling) {
      return Math.min(crushing, buckling);
    }
  },

  /**
   * Ylinen's formula with c = 0.8, of sawn and glued laminated timber.
   *
   * @see "Wood Handbook FPL-GTR-282, eq. 9-29"
   */
  WOOD {
    @Override
    double together(double crushing, double buckling) {
      double half = (crushing + buckling) / (2 * SAWN);
      return half - Math.sqrt(Math.max(0, half * half - crushing * buckling / SAWN));
    }
  },

  /**
   * χ = 1/(Φ + √(Φ² − λ²)), Φ = (1 + α·(λ − 0.2) + λ²)/2, λ² = crushing over buckling, with curve c
   * (α = 0.49), which solid bars, cold-formed tubes and welded parts are held to, and which lies
   * below those of others.
   *
   * @see "EN 1993-1-1:2005, 6.3.1.2, tables 6.1 and 6.2 (read in public copies)"
   */
  METAL {
    @Override
    double together(double crushing, double buckling) {
      double slender = Math.sqrt(crushing / buckling);
      double phi = (1 + CROOKED * Math.max(0, slender - 0.2) + slender * slender) / 2;
      return crushing / (phi + Math.sqrt(phi * phi - slender * slender));
    }
  };

  private static final double SAWN = 0.8;
  private static final double CROOKED = 0.49;

  /**
   * The push at which it fails, N.
   *
   * @param crushing at which a short one fails, N
   * @param buckling at which one that stays elastic buckles, N
   */
  abstract double together(double crushing, double buckling);
}
