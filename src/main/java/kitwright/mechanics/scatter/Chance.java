package kitwright.mechanics.scatter;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A probability from samples.
 *
 * @param probability share of the samples
 * @param standardError √(p(1 − p)/n), never told as nought: with no or every sample a hit it is
 *     that of one sample more
 * @param samples how many
 */
public record Chance(double probability, double standardError, int samples) {
  /** With no hit in n the chance is below 3/n, 95 times in 100: (1 − 3/n)ⁿ ≈ e⁻³ = 0.05. */
  private static final double NONE = 3;

  static Chance of(long hits, int samples) {
    double p = (double) hits / samples;
    double inner = Math.min(Math.max(p, 1.0 / (samples + 1)), samples / (samples + 1.0));
    return new Chance(p, Math.sqrt(inner * (1 - inner) / samples), samples);
  }

  /** The most that it may be, 97 times in 100: two standard errors up. */
  public double most() {
    return probability > 0
        ? Math.min(1, probability + 2 * standardError)
        : Math.min(1, NONE / samples);
  }

  /**
   * As a percentage with its standard error; where nothing or everything hit, what it is beyond.
   */
  public String words() {
    if (probability <= 0) {
      return "below " + percent(NONE / samples, 1) + " %";
    }
    if (probability >= 1) {
      return "above " + percent(1 - NONE / samples, 5) + " %";
    }
    BigDecimal error =
        BigDecimal.valueOf(100 * standardError).round(new MathContext(1, RoundingMode.UP));
    BigDecimal chance =
        new BigDecimal(100 * probability)
            .setScale(Math.max(1, error.scale()), RoundingMode.HALF_UP);
    return chance.toPlainString() + " % ± " + error.toPlainString() + " %";
  }

  private static String percent(double share, int digits) {
    return BigDecimal.valueOf(100 * share)
        .round(new MathContext(digits, RoundingMode.HALF_EVEN))
        .stripTrailingZeros()
        .toPlainString();
  }
}
