package kitwright.mechanics.laminate;

/**
 * Strain and stress at one face of a ply, in its own axes.
 *
 * @param ply from 1, counted from the bottom
 * @param z height above the middle of the laminate, m
 * @param strain1 along the fibre
 * @param strain2 across
 * @param shearStrain engineering shear strain
 * @param stress1 Pa
 * @param stress2 Pa
 * @param shearStress Pa
 */
public record PlyState(
    int ply,
    double z,
    double strain1,
    double strain2,
    double shearStrain,
    double stress1,
    double stress2,
    double shearStress) {

  static PlyState of(int number, Ply ply, double z, double[] strain) {
    double c = Math.cos(Math.toRadians(ply.angle()));
    double s = Math.sin(Math.toRadians(ply.angle()));
    double e1 = c * c * strain[0] + s * s * strain[1] + c * s * strain[2];
    double e2 = s * s * strain[0] + c * c * strain[1] - c * s * strain[2];
    double g = 2 * c * s * (strain[1] - strain[0]) + (c * c - s * s) * strain[2];
    double[] q = ply.stuff().reduced();
    return new PlyState(
        number, z, e1, e2, g, q[0] * e1 + q[1] * e2, q[1] * e1 + q[2] * e2, q[3] * g);
  }
}
