package kitwright.cutting.solve;

/**
 * How good a plan is known to be.
 *
 * @param value of the stock it uses
 * @param bound no plan that makes the same parts uses stock of less value
 * @param mostParts whether it is proved that no plan makes more of the parts, by priority
 * @param steps of work spent
 */
public record Outcome(long value, long bound, boolean mostParts, long steps) {

  /** Whether nothing better exists. */
  public boolean isProvedBest() {
    return mostParts && value <= bound;
  }

  /** How far from the best it can be at most, in per cent of the bound; rounded up to 0.01. */
  public double percentAboveBound() {
    if (value <= bound) {
      return 0;
    }
    return bound == 0 ? Double.POSITIVE_INFINITY : Math.ceil((value - bound) * 1e4 / bound) / 100;
  }
}
