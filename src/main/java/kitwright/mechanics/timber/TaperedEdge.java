package kitwright.mechanics.timber;

import kitwright.mechanics.Refuse;

/**
 * The sawn edge of a tapered wooden beam: the grain runs out of it, so that it is sheared and
 * squeezed across as well as bent, and fails where (f_x/F_x)² + (f_xy/F_xy)² + (f_y/F_y)² = 1, f_xy
 * = f_x·tan θ, f_y = f_x·tan² θ.
 *
 * @param slope tan θ of the edge against the grain, up to that of 25 degrees
 * @see "Wood Handbook FPL-GTR-282, equations 9-15 and 9-16, read in a public transcription on
 *     2026-11-29"
 */
public record TaperedEdge(double slope) {
  /** tan 25°: the steepest that the equations are given for. */
  public static final double STEEPEST = 0.4663;

  public TaperedEdge {
    Refuse.unless(slope >= 0 && slope <= STEEPEST, () -> "an edge of up to 25 degrees: " + slope);
  }

  /** What the run-out leaves of the bending strength; strengths in Pa. */
  public double share(double bending, double shear, double across) {
    double sheared = slope * bending / shear;
    double squeezed = slope * slope * bending / across;
    return 1 / Math.sqrt(1 + sheared * sheared + squeezed * squeezed);
  }
}
