package kitwright.mechanics.beam;

import kitwright.mechanics.Refuse;

/**
 * A round hole in the middle of a strip that is pulled: right beside it the stress is above that of
 * the whole strip.
 *
 * @param diameter m
 * @param width of the strip, m
 * @see "W. D. Pilkey, Peterson’s Stress Concentration Factors, chart 4.1, for the whole section: K
 *     = 0.284 + 2/(1 − d/H) − 0.600·(1 − d/H) + 1.32·(1 − d/H)², read in a public program
 *     (spacether/pycalculix, hole-kt-study) on 2026-11-30"
 */
public record RoundHole(double diameter, double width) {
  public RoundHole {
    Refuse.unlessPositive("diameter of the hole", diameter);
    Refuse.unless(diameter < width, () -> "a hole is narrower than its strip");
  }

  /** Stress beside the hole over that of the strip with no hole. */
  public double ofWhole() {
    double left = 1 - diameter / width;
    return 0.284 + 2 / left - 0.600 * left + 1.32 * left * left;
  }

  /** Stress beside the hole over the mean of what the hole leaves. */
  public double ofNet() {
    return ofWhole() * (1 - diameter / width);
  }
}
