package kitwright.mechanics.timber;

import kitwright.mechanics.Refuse;

/**
 * What wood bears at an angle to its grain: P·Q/(P·sin² + Q·cos²), of what it bears along and
 * across.
 *
 * @see "Wood Handbook FPL-GTR-282, eq. 8-16, and chapter 5 with an exponent of 2"
 */
public final class Hankinson {
  private Hankinson() {}

  /**
   * In the unit of both.
   *
   * @param angle from the load to the grain, radians
   */
  public static double strength(double along, double across, double angle) {
    Refuse.unlessPositive("strength along", along);
    Refuse.unlessPositive("strength across", across);
    double sin = Math.sin(angle);
    return along * across / (along * sin * sin + across * (1 - sin * sin));
  }
}
