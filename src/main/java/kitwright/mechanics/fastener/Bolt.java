package kitwright.mechanics.fastener;

import kitwright.mechanics.Refuse;

/**
 * A bolt: least loads at failure, no safety factor in them.
 *
 * @param thread its thread
 * @param strength its property class
 */
public record Bolt(MetricThread thread, BoltClass strength) {
  /** What the shear plane passes through. */
  public enum Plane {
    THREAD,
    SHANK
  }

  private static final double SHANK_FACTOR = 0.6;

  /** Least breaking load in tension, Rm·As, N. */
  public double tensileLoad() {
    return strength.tensileStrength(thread.diameter()) * thread.stressArea();
  }

  /** Proof load, N. */
  public double proofLoad() {
    return strength.proofStress(thread.diameter()) * thread.stressArea();
  }

  /** Least breaking load in shear on so many planes, N: EN 1993-1-8:2005, table 3.4, γ = 1. */
  public double shearLoad(Plane plane, int planes) {
    Refuse.unless(planes >= 1, "a bolt in shear has a shear plane");
    double each =
        plane == Plane.SHANK
            ? SHANK_FACTOR * thread.shankArea()
            : strength.shearFactor() * thread.stressArea();
    return planes * each * strength.tensileStrength(thread.diameter());
  }

  /**
   * The load in bearing at which the hole in a plate gives, d·t·strength, N.
   *
   * @param thickness of the plate, m
   * @param bearingStrength of the plate, Pa
   */
  public double bearingLoad(double thickness, double bearingStrength) {
    return thread.diameter()
        * Refuse.unlessPositive("thickness", thickness)
        * Refuse.unlessPositive("bearing strength", bearingStrength);
  }
}
