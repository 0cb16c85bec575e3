package kitwright.mechanics.beam;

import kitwright.mechanics.Refuse;

/**
 * Torsion constants.
 *
 * @see "S. P. Timoshenko, J. N. Goodier, Theory of Elasticity, 3rd ed., 1970, sections 109 and 116"
 */
public final class Torsion {
  private Torsion() {}

  /** Saint-Venant's J of a solid rectangle, m⁴, from its sides in m. */
  public static double rectangle(double one, double other) {
    double a = Math.max(one, other);
    double b = Math.min(one, other);
    Refuse.unlessPositive("side", b);
    double sum = 0;
    for (int n = 1; n < 40; n += 2) {
      sum += Math.tanh(n * Math.PI * a / (2 * b)) / Math.pow(n, 5);
    }
    return a * b * b * b / 3 * (1 - 192 / Math.pow(Math.PI, 5) * b / a * sum);
  }

  /**
   * The greatest shear stress of a solid rectangle for one N·m, at the middle of its long sides,
   * Pa.
   */
  public static double rectangleStress(double one, double other) {
    double a = Math.max(one, other);
    double b = Math.min(one, other);
    double sum = 0;
    for (int n = 1; n < 40; n += 2) {
      sum += 1 / (n * n * Math.cosh(n * Math.PI * a / (2 * b)));
    }
    return b * (1 - 8 / (Math.PI * Math.PI) * sum) / rectangle(one, other);
  }

  /** Bredt's GJ = 4A²/∮ds/(G·t) of one cell with a wall of one thickness, N·m². */
  public static double closed(double cell, double round, double thickness, double shear) {
    return 4 * cell * cell * shear * thickness / round;
  }
}
