package kitwright.cutting.solve;

import java.util.function.BooleanSupplier;

/**
 * How long a search may go on.
 *
 * @param steps counted steps of work, so that the same input ends with the same plan on any machine
 * @param enough asked now and then; true ends the search early. A clock belongs here, if anywhere
 */
public record Effort(long steps, BooleanSupplier enough) {
  private static final long USUAL = 1_000_000_000L;

  public Effort {
    if (steps < 0) {
      throw new IllegalArgumentException("steps are never negative: " + steps);
    }
  }

  /** Enough for the lists a build has: a second or two on a small machine. */
  public static Effort usual() {
    return steps(USUAL);
  }

  /** So many steps and no clock. */
  public static Effort steps(long steps) {
    return new Effort(steps, () -> false);
  }
}
