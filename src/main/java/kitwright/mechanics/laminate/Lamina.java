package kitwright.mechanics.laminate;

import java.util.Optional;
import kitwright.mechanics.Refuse;

/**
 * The stuff of a ply in its own axes, 1 along the fibre and 2 across, in plane stress.
 *
 * @param name as it is told to a person
 * @param e1 Pa
 * @param e2 Pa
 * @param g12 Pa
 * @param nu12 strain across over strain along for a pull along the fibre
 * @param density kg/m³
 * @param strength its strengths, where known
 */
public record Lamina(
    String name,
    double e1,
    double e2,
    double g12,
    double nu12,
    double density,
    Optional<LaminaStrength> strength) {
  public Lamina {
    Refuse.unlessPositive("E1", e1);
    Refuse.unlessPositive("E2", e2);
    Refuse.unlessPositive("G12", g12);
    Refuse.unlessPositive("density", density);
    Refuse.unless(
        nu12 * nu12 < e1 / e2,
        () -> "ν12 " + nu12 + " is beyond √(E1/E2): there is no such material");
  }

  public Lamina with(LaminaStrength known) {
    return new Lamina(name, e1, e2, g12, nu12, density, Optional.of(known));
  }

  /**
   * The same fibre lying every way, as in a mat: E = 3/8·E1 + 5/8·E2, G = 1/8·E1 + 1/4·E2, known to
   * a few per cent.
   *
   * @see "S. W. Tsai, N. J. Pagano, Composite Materials Workshop, 1968; R. M. Jones, Mechanics of
   *     Composite Materials, 2nd ed., 1999, section 3.5"
   */
  public Lamina random() {
    double e = 3 * e1 / 8 + 5 * e2 / 8;
    double g = e1 / 8 + e2 / 4;
    return new Lamina(name + " mat", e, e, g, e / (2 * g) - 1, density, Optional.empty());
  }

  /** Reduced stiffnesses Q11, Q12, Q22, Q66, Pa. */
  double[] reduced() {
    double scale = 1 / (1 - nu12 * nu12 * e2 / e1);
    return new double[] {e1 * scale, nu12 * e2 * scale, e2 * scale, g12};
  }

  /**
   * Reduced stiffness turned by an angle in degrees: Q̄ of R. M. Jones, Mechanics of Composite
   * Materials, 2nd ed., 1999, eq. 2.85; rows and columns x, y, xy; Pa.
   */
  double[][] turned(double angle) {
    double c = Math.cos(Math.toRadians(angle));
    double s = Math.sin(Math.toRadians(angle));
    double[] q = reduced();
    double c2 = c * c;
    double s2 = s * s;
    double mixed = q[1] + 2 * q[3];
    double one = q[0] - mixed;
    double two = mixed - q[2];
    double q11 = q[0] * c2 * c2 + 2 * mixed * c2 * s2 + q[2] * s2 * s2;
    double q22 = q[0] * s2 * s2 + 2 * mixed * c2 * s2 + q[2] * c2 * c2;
    double q12 = (q[0] + q[2] - 4 * q[3]) * c2 * s2 + q[1] * (c2 * c2 + s2 * s2);
    double q66 = (q[0] + q[2] - 2 * q[1] - 2 * q[3]) * c2 * s2 + q[3] * (c2 * c2 + s2 * s2);
    double q16 = c * s * (one * c2 + two * s2);
    double q26 = c * s * (one * s2 + two * c2);
    return new double[][] {{q11, q12, q16}, {q12, q22, q26}, {q16, q26, q66}};
  }
}
