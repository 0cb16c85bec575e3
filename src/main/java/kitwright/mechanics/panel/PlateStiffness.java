package kitwright.mechanics.panel;

import java.util.function.ToDoubleFunction;
import kitwright.mechanics.Refuse;
import kitwright.mechanics.laminate.Stiffness;

/**
 * Stiffness of a plate whose axes are its own: no bend–twist coupling.
 *
 * @param d11 N·m
 * @param d12 N·m
 * @param d22 N·m
 * @param d66 N·m
 * @param shearX transverse shear stiffness in the x–z plane, N/m
 * @param shearY transverse shear stiffness in the y–z plane, N/m
 */
public record PlateStiffness(
    double d11, double d12, double d22, double d66, double shearX, double shearY) {
  private static final double RECTANGLE = 5 / 6.0;

  public PlateStiffness {
    Refuse.unlessPositive("D11", d11);
    Refuse.unlessPositive("D22", d22);
    Refuse.unlessPositive("D66", d66);
    Refuse.unlessPositive("shear stiffness", shearX);
    Refuse.unlessPositive("shear stiffness", shearY);
    Refuse.unless(d12 * d12 < d11 * d22, "D12 is beyond √(D11·D22)");
  }

  /** A single skin; transverse shear moduli in Pa. */
  public static PlateStiffness single(Face face, double gxz, double gyz) {
    double cube = Math.pow(face.thickness(), 3) / 12;
    return new PlateStiffness(
        face.q11() * cube,
        face.q12() * cube,
        face.q22() * cube,
        face.gxy() * cube,
        RECTANGLE * gxz * face.thickness(),
        RECTANGLE * gyz * face.thickness());
  }

  /** A single laminate, symmetrical and without D16 and D26; transverse shear moduli in Pa. */
  public static PlateStiffness laminate(Stiffness s, double thickness, double gxz, double gyz) {
    return new PlateStiffness(
        s.d(1, 1),
        s.d(1, 2),
        s.d(2, 2),
        s.d(3, 3),
        RECTANGLE * gxz * thickness,
        RECTANGLE * gyz * thickness);
  }

  /**
   * A sandwich, the core carrying shear alone; S = G·d²/tc. Exact where both faces are of one
   * stuff, and then for thick faces too.
   *
   * @param core thickness, m
   * @param gxz shear modulus of the core in the x–z plane, Pa
   * @param gyz in the y–z plane, Pa
   * @see "D. Zenkert, An Introduction to Sandwich Construction, 1995, chapters 3 and 4"
   */
  public static PlateStiffness sandwich(
      Face lower, Face upper, double core, double gxz, double gyz) {
    Refuse.unlessPositive("core thickness", core);
    double d = core + (lower.thickness() + upper.thickness()) / 2;
    return new PlateStiffness(
        both(lower, upper, d, Face::q11),
        both(lower, upper, d, Face::q12),
        both(lower, upper, d, Face::q22),
        both(lower, upper, d, Face::gxy),
        gxz * d * d / core,
        gyz * d * d / core);
  }

  private static double both(Face lower, Face upper, double d, ToDoubleFunction<Face> q) {
    double low = q.applyAsDouble(lower) * lower.thickness();
    double high = q.applyAsDouble(upper) * upper.thickness();
    double own = low * square(lower.thickness()) / 12 + high * square(upper.thickness()) / 12;
    return low + high == 0 ? 0 : d * d * low * high / (low + high) + own;
  }

  private static double square(double x) {
    return x * x;
  }

  /** Curvatures κx, κy, 1/m, under moments in N. */
  double[] curvature(double mx, double my) {
    double det = d11 * d22 - d12 * d12;
    return new double[] {(d22 * mx - d12 * my) / det, (d11 * my - d12 * mx) / det};
  }
}
