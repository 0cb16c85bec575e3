package kitwright.mechanics.timber;

import kitwright.mechanics.Refuse;

/**
 * A notch at the support of a wooden beam, cut on the side of the support: it splits from the
 * corner long before what is left of the depth shears off.
 *
 * @param depth of the whole beam, m
 * @param left of it over the support, m
 * @param corner from the line of the support's force to the corner of the notch, m
 * @param slope of the notch: its run along the beam over its depth; nought for a square one
 * @param glued whether the beam is glued of laminations
 * @see "EN 1995-1-1:2004, 6.5.2, equations 6.60 to 6.63, read in a public implementation on
 *     2026-11-29 and in the LVL Handbook Europe 2025 on 2026-11-30"
 */
public record Notch(double depth, double left, double corner, double slope, boolean glued) {
  private static final double SOLID = 5;
  private static final double GLUED = 6.5;

  public Notch {
    Refuse.unlessPositive("depth", depth);
    Refuse.unlessPositive("depth left over the support", left);
    Refuse.unless(left < depth, "a notch leaves less than the whole depth");
    Refuse.ifNegative("distance of the corner", corner);
    Refuse.ifNegative("slope of the notch", slope);
  }

  /** What the notch leaves of the shear strength, 1 at most. */
  public double share() {
    double h = depth * 1000;
    double a = left / depth;
    double runs = 1 + 1.1 * Math.pow(slope, 1.5) / Math.sqrt(h);
    double splits = Math.sqrt(a * (1 - a)) + 0.8 * corner / depth * Math.sqrt(1 / a - a * a);
    return Math.min(1, (glued ? GLUED : SOLID) * runs / (Math.sqrt(h) * splits));
  }

  /**
   * Whether what is left is so short that it splits before it bends: under the force that splits
   * it, times the way from the support, it bears its bending strength, at the corner and where the
   * slope makes it worst.
   *
   * @param force at the support, N
   * @param breadth m
   * @param bending strength, Pa
   */
  public boolean isShort(double force, double breadth, double bending) {
    double run = slope * (depth - left);
    double worst = slope > 0 ? Math.max(0, Math.min(run, slope * left - 2 * corner)) : 0;
    return bends(0, force, breadth, bending) && bends(worst, force, breadth, bending);
  }

  private boolean bends(double beyond, double force, double breadth, double bending) {
    double deep = left + (slope > 0 ? beyond / slope : 0);
    return force * (corner + beyond) <= bending * breadth * deep * deep / 6;
  }
}
