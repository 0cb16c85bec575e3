package kitwright.mechanics.timber;

import kitwright.mechanics.Refuse;

/**
 * What a load that lasts leaves of the strength of solid or glued timber and plywood, k_mod.
 *
 * @see "EN 1995-1-1:2004+A1, table 3.1, read on 2026-11-29 in two public implementations that
 *     agree"
 */
public enum LoadDuration {
  /** More than ten years: own weight. */
  PERMANENT(0.60, 0.50),
  /** Half a year to ten years: stores. */
  LONG(0.70, 0.55),
  /** A week to half a year. */
  MEDIUM(0.80, 0.65),
  /** Less than a week: a gale. */
  SHORT(0.90, 0.70),
  /** A blow. */
  INSTANTANEOUS(1.10, 0.90);

  private final double dry;
  private final double wet;

  LoadDuration(double dry, double wet) {
    this.dry = dry;
    this.wet = wet;
  }

  /**
   * The factor.
   *
   * @param serviceClass 1 indoors, 2 under cover, 3 in the open
   */
  public double factor(int serviceClass) {
    Refuse.unless(
        serviceClass >= 1 && serviceClass <= 3, () -> "a service class of 1 to 3: " + serviceClass);
    return serviceClass == 3 ? wet : dry;
  }
}
