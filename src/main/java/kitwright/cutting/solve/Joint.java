package kitwright.cutting.solve;

/**
 * A scarf or butt joint that a part permits.
 *
 * @param loss how much longer the pieces together must be than the part, for each joint: the length
 *     of the scarf, or what truing two butting ends takes; tenths of a millimetre
 * @param shortest no piece of the part may be shorter than this; longer than {@code loss}
 */
public record Joint(long loss, long shortest) {
  public Joint {
    if (loss < 0 || shortest <= loss) {
      throw new IllegalArgumentException("a piece must be longer than its joint: " + shortest);
    }
  }
}
