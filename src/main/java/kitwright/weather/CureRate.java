package kitwright.weather;

import java.time.Duration;

/**
 * How warmth changes cure and pot life: both halve for each 10 K more and double for each 10 K
 * less, a rule of thumb for epoxy, polyester and their like (common practice). It stands for an
 * activation energy of 51 to 53 kJ/mol near room temperature. The product's own data sheet rules.
 */
public final class CureRate {
  /** What every sheet that shows a scaled time must say. */
  public static final String CAUTION =
      "Scaled by the rule that cure and pot life halve for each 10 K more and double for each 10 K"
          + " less. The product’s own data sheet rules.";

  /** Below this many epoxies slow strongly or stop. */
  public static final double STOPS_BELOW = 5;

  private static final double STEP = 10;

  /** Beyond this far from the data sheet's temperature the rule says nothing. */
  private static final double REACH = 30;

  private CureRate() {}

  /**
   * How many times as long a reaction takes at {@code actual} as at {@code stated}.
   *
   * @param stated temperature to which the data sheet's time belongs, °C
   * @param actual temperature of the work, °C, at most 30 K from it
   */
  public static double factor(double stated, double actual) {
    if (!(Math.abs(stated - actual) <= REACH)) {
      throw new IllegalArgumentException(
          "the rule does not reach from " + stated + " °C to " + actual + " °C");
    }
    return Math.pow(2, (stated - actual) / STEP);
  }

  /** A cure time or pot life of the data sheet, at another temperature; to the minute. */
  public static Duration scaled(Duration stated, double at, double actual) {
    return Duration.ofMinutes(Math.round(stated.toMinutes() * factor(at, actual)));
  }

  /** Whether the work is so cold that the cure may stop altogether, whatever the rule says. */
  public static boolean mayStop(double actual) {
    return actual < STOPS_BELOW;
  }
}
