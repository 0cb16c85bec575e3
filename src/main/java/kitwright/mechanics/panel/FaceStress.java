package kitwright.mechanics.panel;

/**
 * Stress in a face of a plate.
 *
 * @param x along x, Pa, tension positive
 * @param y along y, Pa
 */
public record FaceStress(double x, double y) {
  /**
   * Stress in a face at a height from the neutral plane under moments per width.
   *
   * @param plate whose curvature it shares
   * @param face whose stress is asked for
   * @param height m, positive on the side that sagging moments pull
   * @param mx N
   * @param my N
   */
  public static FaceStress of(
      PlateStiffness plate, Face face, double height, double mx, double my) {
    double[] curvature = plate.curvature(mx, my);
    return new FaceStress(
        height * (face.q11() * curvature[0] + face.q12() * curvature[1]),
        height * (face.q12() * curvature[0] + face.q22() * curvature[1]));
  }

  /** Core shear Q/d, Pa, from shear per width in N/m and the spacing of the faces in m. */
  public static double coreShear(double q, double spacing) {
    return q / spacing;
  }
}
