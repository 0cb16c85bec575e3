package kitwright.mechanics.panel;

import kitwright.mechanics.Refuse;
import kitwright.mechanics.laminate.Laminate;

/**
 * A face of a sandwich plate, or a single skin.
 *
 * @param ex Young's modulus along x, Pa
 * @param ey Young's modulus along y, Pa
 * @param gxy shear modulus in its plane, Pa
 * @param nuxy strain in y over strain in x for a pull in x
 * @param thickness m
 */
public record Face(double ex, double ey, double gxy, double nuxy, double thickness) {
  public Face {
    Refuse.unlessPositive("Ex", ex);
    Refuse.unlessPositive("Ey", ey);
    Refuse.unlessPositive("Gxy", gxy);
    Refuse.unlessPositive("face thickness", thickness);
    Refuse.unless(nuxy * nuxy < ex / ey, "ν is beyond √(Ex/Ey)");
  }

  /** A face of one modulus every way. */
  public static Face isotropic(double modulus, double poisson, double thickness) {
    return new Face(modulus, modulus, modulus / 2 / (1 + poisson), poisson, thickness);
  }

  /** A balanced laminate as a thin face. */
  public static Face of(Laminate laminate) {
    var m = laminate.inPlane();
    return new Face(m.ex(), m.ey(), m.gxy(), m.nuxy(), laminate.thickness());
  }

  private double scale() {
    return 1 / (1 - nuxy * nuxy * ey / ex);
  }

  double q11() {
    return ex * scale();
  }

  double q12() {
    return nuxy * ey * scale();
  }

  double q22() {
    return ey * scale();
  }
}
