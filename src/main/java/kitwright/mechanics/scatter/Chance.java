package kitwright.mechanics.scatter;

/**
 * A probability from samples.
 *
 * @param probability share of the samples
 * @param standardError √(p(1 − p)/n), never told as nought: with no or every sample a hit it is
 *     that of one sample more
 * @param samples how many
 */
public record Chance(double probability, double standardError, int samples) {
  static Chance of(long hits, int samples) {
    double p = (double) hits / samples;
    double inner = Math.min(Math.max(p, 1.0 / (samples + 1)), samples / (samples + 1.0));
    return new Chance(p, Math.sqrt(inner * (1 - inner) / samples), samples);
  }
}
