package kitwright.mechanics.beam;

/**
 * Area and its moments about the axes through the origin.
 *
 * @param area m²
 * @param y first moment ∫y dA, m³
 * @param z first moment ∫z dA, m³
 * @param yy ∫y² dA, m⁴
 * @param zz ∫z² dA, m⁴
 * @param yz ∫yz dA, m⁴
 */
public record Moments(double area, double y, double z, double yy, double zz, double yz) {
  static final Moments NONE = new Moments(0, 0, 0, 0, 0, 0);

  /** Moments of a shape about its own centroid, whose axes are of symmetry, moved to (y, z). */
  static Moments symmetric(double area, double ownYy, double ownZz, double y, double z) {
    return new Moments(
        area, area * y, area * z, ownYy + area * y * y, ownZz + area * z * z, area * y * z);
  }

  Moments plus(Moments o, double weight) {
    return new Moments(
        area + weight * o.area,
        y + weight * o.y,
        z + weight * o.z,
        yy + weight * o.yy,
        zz + weight * o.zz,
        yz + weight * o.yz);
  }
}
