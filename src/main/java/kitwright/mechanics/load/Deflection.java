package kitwright.mechanics.load;

/**
 * Deflection in m, its two parts kept apart.
 *
 * @param bending from curvature
 * @param shear from shear strain
 */
public record Deflection(double bending, double shear) {
  /** m. */
  public double total() {
    return bending + shear;
  }
}
