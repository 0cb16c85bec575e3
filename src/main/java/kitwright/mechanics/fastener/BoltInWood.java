package kitwright.mechanics.fastener;

import java.util.LinkedHashMap;
import java.util.Map;
import kitwright.mechanics.Refuse;
import kitwright.mechanics.timber.Hankinson;

/**
 * A bolt in single shear between two pieces of wood: the loads at which either wood or the bolt
 * yields (5 % offset), no reduction in them.
 *
 * @param diameter m
 * @param main thickness of the main member, m
 * @param side thickness of the side member, m
 * @param mainBearing strength of the main member under the bolt, Pa
 * @param sideBearing of the side member, Pa
 * @param bendingYield of the bolt, Pa
 * @see "NDS, 12.3.1, yield limit equations, as public code quotes them with an example (read
 *     2026-11-29)"
 */
public record BoltInWood(
    double diameter,
    double main,
    double side,
    double mainBearing,
    double sideBearing,
    double bendingYield) {
  public BoltInWood {
    Refuse.unlessPositive("diameter", diameter);
    Refuse.unlessPositive("main member", main);
    Refuse.unlessPositive("side member", side);
    Refuse.unlessPositive("bearing strength of the main member", mainBearing);
    Refuse.unlessPositive("bearing strength of the side member", sideBearing);
    Refuse.unlessPositive("bending yield strength", bendingYield);
  }

  /** Along the grain, 77.22 MPa times specific gravity: NDS 12.3.3, bolts of 6.4 mm and more. */
  public static double bearingAlong(double gravity) {
    return 77.22e6 * Refuse.unlessPositive("specific gravity", gravity);
  }

  /** Across the grain, 211.97 MPa·G^1.45/√d, d in mm: NDS 12.3.3. */
  public static double bearingAcross(double gravity, double diameter) {
    return 211.97e6
        * Math.pow(Refuse.unlessPositive("specific gravity", gravity), 1.45)
        / Math.sqrt(diameter * 1000);
  }

  /**
   * At an angle to the grain.
   *
   * @param angle from the load to the grain, radians
   */
  public static double bearing(double gravity, double diameter, double angle) {
    return Hankinson.strength(bearingAlong(gravity), bearingAcross(gravity, diameter), angle);
  }

  private double ratio() {
    return mainBearing / sideBearing;
  }

  private double k1() {
    double e = ratio();
    double t = main / side;
    double root = Math.sqrt(e + 2 * e * e * (1 + t + t * t) + t * t * e * e * e);
    return (root - e * (1 + t)) / (1 + e);
  }

  private double k2() {
    double e = ratio();
    double bend = 2 * bendingYield * (1 + 2 * e) * diameter * diameter;
    return Math.sqrt(2 * (1 + e) + bend / (3 * mainBearing * main * main)) - 1;
  }

  private double k3() {
    double e = ratio();
    double bend = 2 * bendingYield * (2 + e) * diameter * diameter;
    return Math.sqrt(2 * (1 + e) / e + bend / (3 * mainBearing * side * side)) - 1;
  }

  /** N by mode, the names as the standard has them. */
  public Map<String, Double> modes() {
    double e = ratio();
    Map<String, Double> modes = new LinkedHashMap<>();
    modes.put("Im", diameter * main * mainBearing);
    modes.put("Is", diameter * side * sideBearing);
    modes.put("II", k1() * diameter * side * sideBearing);
    modes.put("IIIm", k2() * diameter * main * mainBearing / (1 + 2 * e));
    modes.put("IIIs", k3() * diameter * side * mainBearing / (2 + e));
    modes.put(
        "IV", diameter * diameter * Math.sqrt(2 * mainBearing * bendingYield / (3 * (1 + e))));
    return modes;
  }

  /** The mode that comes first. */
  public Map.Entry<String, Double> first() {
    return modes().entrySet().stream().min(Map.Entry.comparingByValue()).orElseThrow();
  }

  /**
   * How many bolts in a row along the grain count: min(n, n^0.9·(a₁/13d)^0.25).
   *
   * @see "EN 1995-1-1:2004, 8.34"
   */
  public static double inARow(double count, double spacing, double diameter) {
    return Math.min(count, Math.pow(count, 0.9) * Math.pow(spacing / (13 * diameter), 0.25));
  }

  /** How much wider the hole of a bolt in wood is, m: EN 1995-1-1:2004, 10.4.3 (1). */
  private static final double CLEARANCE = 1e-3;

  /** The hole of a bolt in wood, m. */
  public static double hole(double bolt) {
    return bolt + CLEARANCE;
  }

  /** Pull at which a washer sinks in, 3·f_c90·π/4·(D² − d²), N: EN 1995-1-1:2004, 8.5.2(2). */
  public static double washer(double across, double washer, double hole) {
    return 3 * across * ring(washer, hole);
  }

  /** What a washer bears on, m². */
  public static double ring(double washer, double hole) {
    return Math.PI / 4 * (washer * washer - hole * hole);
  }
}
