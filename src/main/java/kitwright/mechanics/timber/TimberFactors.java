package kitwright.mechanics.timber;

import kitwright.mechanics.Refuse;

/** Factors for timber by published rules. */
public final class TimberFactors {
  /** No steeper scarf is trusted: length over thickness. */
  public static final double STEEPEST = 4;

  private TimberFactors() {}

  /**
   * What a well-made glued scarf leaves of the strength, between 0.65 at 1:4 and 0.95 at 1:20, in
   * proportion to the logarithm of its length; none is trusted outside.
   *
   * @param length of the slope over the thickness, 4 to 20; longer counts as 20
   * @see "R. Birmingham, Boat Building Techniques Illustrated: 65 per cent at 4:1 and 95 at 20:1,
   *     at second hand, not read in the book; Wood Handbook 2010, chapter 10: 1 in 12 or flatter
   *     gives the highest strength"
   */
  public static double scarf(double length) {
    Refuse.unless(
        length >= STEEPEST, () -> "a scarf of less than 4 to 1 is not trusted: " + length);
    Refuse.unlessFinite("scarf", length);
    return 0.65 + 0.30 * Math.log(Math.min(length, 20) / 4) / Math.log(5);
  }
}
