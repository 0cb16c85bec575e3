package kitwright.cutting.solve;

import java.util.function.BooleanSupplier;

/**
 * How long a search may go on, and whether for the stock's value too.
 *
 * @param steps counted steps of work, so that the same input ends with the same plan on any machine
 * @param enough asked now and then; true ends the search early. A clock belongs here, if anywhere
 * @param partsAlone whether only the parts that can be made are asked for, from whatever stock
 */
public record Effort(long steps, BooleanSupplier enough, boolean partsAlone) {
  private static final long USUAL = 1_000_000_000L;

  public Effort {
    if (steps < 0) {
      throw new IllegalArgumentException("steps are never negative: " + steps);
    }
  }

  /** For the most parts from the least stock. */
  public Effort(long steps, BooleanSupplier enough) {
    this(steps, enough, false);
  }

  /** Enough for the lists a build has: a second or two on a small machine. */
  public static Effort usual() {
    return steps(USUAL);
  }

  /** So many steps and no clock. */
  public static Effort steps(long steps) {
    return new Effort(steps, () -> false);
  }

  /** So many steps, for the parts alone: of how little stock they come nothing is said. */
  public static Effort forParts(long steps) {
    return new Effort(steps, () -> false, true);
  }

  /** The same with other steps. */
  public Effort of(long other) {
    return new Effort(other, enough, partsAlone);
  }
}
