package kitwright.mechanics.laminate;

/**
 * What acts on a laminate per metre of its edge.
 *
 * @param nx N/m
 * @param ny N/m
 * @param nxy N/m
 * @param mx N
 * @param my N
 * @param mxy N
 */
public record Resultants(double nx, double ny, double nxy, double mx, double my, double mxy) {
  double[] vector() {
    return new double[] {nx, ny, nxy, mx, my, mxy};
  }
}
