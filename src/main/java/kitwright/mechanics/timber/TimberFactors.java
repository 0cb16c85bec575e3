package kitwright.mechanics.timber;

import java.math.BigDecimal;
import kitwright.mechanics.Refuse;

/** Factors for timber by published rules. */
public final class TimberFactors {
  private static final double DRY = 12;

  private TimberFactors() {}

  /**
   * Moisture, P = P12·(P12/Pg)^((12 − M)/(Mp − 12)).
   *
   * @param dry the value at 12 %, Pa
   * @param green the value green, Pa
   * @param percent moisture content, per cent
   * @param meeting Mp, the moisture at which the property stops changing, 25 for most species
   * @see "USDA Forest Products Laboratory, Wood Handbook FPL-GTR-190, 2010, eq. 5-3"
   */
  public static Factor moisture(double dry, double green, double percent, double meeting) {
    Refuse.unlessPositive("dry value", dry);
    Refuse.unlessPositive("green value", green);
    Refuse.outside("moisture", 0, 100, percent);
    Refuse.outside("meeting moisture", DRY, 40, meeting);
    double at = Math.min(percent, meeting);
    double value = Math.pow(dry / green, (DRY - at) / (meeting - DRY));
    return new Factor(named("moisture", percent), value, "Wood Handbook 2010, eq. 5-3");
  }

  /**
   * Moisture where no green value is known: so much lost for each per cent above 12, down to 25 %.
   *
   * @param lossPerPercent such as 0.04 for bending strength and 0.02 for the modulus (from memory,
   *     not verified)
   */
  public static Factor moisture(double percent, double lossPerPercent) {
    Refuse.outside("moisture", 0, 100, percent);
    Refuse.outside("loss per per cent", 0, 0.07, lossPerPercent);
    double above = Math.max(0, Math.min(percent, 25) - DRY);
    double value = 1 - above * lossPerPercent;
    return new Factor(named("moisture", percent), value, "from memory, not verified");
  }

  /**
   * Duration of load by the Madison curve, fraction of the strength in a five-minute test:
   * (108.4/t^0.04635 + 18.3)/100, t in seconds.
   *
   * @see "L. W. Wood, Relation of strength of wood to duration of load, FPL report 1916, 1951"
   */
  public static Factor duration(double seconds) {
    Refuse.unlessPositive("duration", seconds);
    double value = (108.4 / Math.pow(seconds, 0.04635) + 18.3) / 100;
    var name = "load for " + plain(seconds) + " s";
    return new Factor(name, Math.min(1.2, value), "FPL report 1916, 1951 (Madison curve)");
  }

  /** A grade's share of the clear-wood strength, as the grading rule states it. */
  public static Factor grade(String grade, double ratio, String source) {
    Refuse.unless(ratio <= 1, "a grade takes away from clear wood");
    return new Factor("grade " + grade, ratio, source);
  }

  /**
   * Slope of grain by Hankinson's formula, P·Q/(P·sinⁿθ + Q·cosⁿθ) over P.
   *
   * @param slope rise over run: 0.1 for one in ten
   * @param acrossOverAlong Q/P: strength across the grain over that along it
   * @param power n: 1.5 to 2 for tension and bending, 2 to 2.5 for compression, 2 for the modulus
   * @see "Wood Handbook, 2010, eq. 5-2 and table 5-11"
   */
  public static Factor slopeOfGrain(double slope, double acrossOverAlong, double power) {
    Refuse.ifNegative("slope of grain", slope);
    // The bounds are 1 and 1 to 3; the little above and below lets them be met exactly.
    Refuse.outside("strength across over along", 0, 1.0001, acrossOverAlong);
    Refuse.outside("power", 0.9999, 3.0001, power);
    double angle = Math.atan(slope);
    double sin = Math.pow(Math.sin(angle), power);
    double cos = Math.pow(Math.cos(angle), power);
    double value = acrossOverAlong / (sin + acrossOverAlong * cos);
    var name = "slope of grain " + plain(slope);
    return new Factor(name, value, "Hankinson; Wood Handbook 2010, eq. 5-2");
  }

  /**
   * What a well-made glued scarf leaves of the strength, between 0.65 at 1:4 and 0.95 at 1:20, in
   * proportion to the logarithm of its length; none is trusted outside.
   *
   * @param length of the slope over the thickness, 4 to 20; longer counts as 20
   * @see "R. Birmingham, Boat Building Techniques Illustrated: 65 per cent at 4:1 and 95 at 20:1,
   *     as quoted in a builders' forum (read there, not in the book); Wood Handbook 2010, chapter
   *     10: 1 in 12 or flatter gives the highest strength"
   */
  public static Factor scarf(double length) {
    Refuse.unless(length >= 4, () -> "a scarf of less than 4 to 1 is not trusted: " + length);
    Refuse.unlessFinite("scarf", length);
    double share = Math.log(Math.min(length, 20) / 4) / Math.log(5);
    var name = "scarf " + plain(length) + " to 1";
    return new Factor(name, 0.65 + 0.30 * share, "Birmingham, quoted; not read in the book");
  }

  private static String named(String what, double percent) {
    return what + " " + plain(percent) + " %";
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
