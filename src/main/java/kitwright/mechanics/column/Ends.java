package kitwright.mechanics.column;

/**
 * How the ends of a column are held.
 *
 * @see "EngineeringMechanicsOER, StrengthBook, chapter 15: K = 1, 0.5, 0.7, 2"
 */
public enum Ends {
  PINNED(1),
  FIXED(0.5),
  FIXED_PINNED(0.7),
  FIXED_FREE(2);

  private final double factor;

  Ends(double factor) {
    this.factor = factor;
  }

  /** Length that buckles over the length of the part. */
  public double factor() {
    return factor;
  }
}
