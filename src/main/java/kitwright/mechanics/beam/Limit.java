package kitwright.mechanics.beam;

/**
 * One way to fail, and the action at which it comes.
 *
 * @param mode how
 * @param where which part of the section
 * @param allowable the stress at which it fails, Pa
 * @param perUnit the stress made by one unit of the action, Pa per N·m or Pa per N
 */
public record Limit(FailureMode mode, String where, double allowable, double perUnit) {
  /** The action at which this part fails this way: N·m, or N for shear. */
  public double capacity() {
    return allowable / perUnit;
  }
}
