package kitwright.mechanics.fastener;

import kitwright.mechanics.Refuse;

/**
 * A nail or screw in the side grain of seasoned wood: the pull at which it comes out, a mean of
 * tests, and the strength of the wood under it.
 *
 * @param kind which
 * @param diameter of the shank, m; of a ringed nail at the root of its rings
 * @param penetration of the point, or of the thread, in the piece that holds it, m
 * @param gravity of that piece: oven-dry weight on the volume at 12 % moisture
 * @see "USDA Forest Products Laboratory, Wood Handbook FPL-GTR-282, 2021, chapter 8, equations 8-1,
 *     8-2a, 8-10, 8-14, read in a public transcription on 2026-11-29"
 */
public record Driven(Kind kind, double diameter, double penetration, double gravity) {
  /** What is driven; N and mm in the formulas. */
  public enum Kind {
    NAIL(54.12, 2.5, 1, "54.12·G^2.5·D·L, Wood Handbook 8-1"),
    RINGED_NAIL(77.57, 2, 1, "77.57·G²·D·L, Wood Handbook 8-2a"),
    SCREW(108.25, 2, 1, "108.25·G²·D·L, Wood Handbook 8-10"),
    LAG_SCREW(125.4, 1.5, 0.75, "125.4·G^1.5·D^0.75·L, Wood Handbook 8-14");

    private final double share;
    private final double ofGravity;
    private final double ofDiameter;
    private final String formula;

    Kind(double share, double ofGravity, double ofDiameter, String formula) {
      this.share = share;
      this.ofGravity = ofGravity;
      this.ofDiameter = ofDiameter;
      this.formula = formula;
    }

    /** As a sheet shows it. */
    public String formula() {
      return formula;
    }

    /** Whether a thread holds it. */
    public boolean isThreaded() {
      return this == SCREW || this == LAG_SCREW;
    }
  }

  public Driven {
    Refuse.unlessPositive("diameter", diameter);
    Refuse.unlessPositive("penetration", penetration);
    Refuse.unlessPositive("specific gravity", gravity);
  }

  /** N. */
  public double withdrawal() {
    return kind.share
        * Math.pow(gravity, kind.ofGravity)
        * Math.pow(diameter * 1000, kind.ofDiameter)
        * penetration
        * 1000;
  }

  /**
   * Strength of wood under a nail or small screw, the same along and across, Pa: 114.5·G^1.84 MPa.
   *
   * @see "Wood Handbook FPL-GTR-282, equation 8-3"
   */
  public static double bearing(double gravity) {
    return 114.5e6 * Math.pow(Refuse.unlessPositive("specific gravity", gravity), 1.84);
  }
}
