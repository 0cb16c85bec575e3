package kitwright.mechanics.load;

import kitwright.mechanics.Refuse;

/**
 * The force across a foil in a stream, ½·ρ·V²·A·CL.
 *
 * @param density of the water, kg/m³
 * @param speed m/s
 * @param area of the foil seen from the side, m²
 * @param coefficient of lift, no dimension
 */
public record SideForce(double density, double speed, double area, double coefficient) {
  public SideForce {
    Refuse.unlessPositive("density", density);
    Refuse.ifNegative("speed", speed);
    Refuse.unlessPositive("area", area);
    Refuse.ifNegative("lift coefficient", coefficient);
  }

  /** N. */
  public double force() {
    return density * speed * speed * area * coefficient / 2;
  }
}
