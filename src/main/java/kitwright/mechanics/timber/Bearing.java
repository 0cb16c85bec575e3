package kitwright.mechanics.timber;

import kitwright.mechanics.Refuse;

/**
 * Wood pressed across its grain by what it lies on. What lies beside a short bearing helps to carry
 * it where the wood runs on past it; at the end of a piece nothing does.
 *
 * @param length along the grain, m
 * @see "NDS 2018, 3.10.2 and 3.10.4: C_b = (l_b + 3/8 in)/l_b for bearings shorter than 6 in and at
 *     least 3 in from the end of a member; read in four public implementations. EN 1995-1-1, 6.1.5
 *     (2), k_c,90 = 1, agrees with it at an end"
 */
public record Bearing(double length) {
  private static final double INCH = 0.0254;
  private static final double BESIDE = 0.375 * INCH;
  private static final double LONG = 6 * INCH;
  private static final double FROM_END = 3 * INCH;

  public Bearing {
    Refuse.unlessPositive("bearing length", length);
  }

  /** How much more than its strength the wood bears there. */
  public double factor(double fromEnd) {
    return length < LONG && fromEnd >= FROM_END ? (length + BESIDE) / length : 1;
  }

  /**
   * The force at which the wood is crushed, N.
   *
   * @param perLength what it bears at its strength, N/m
   * @param fromEnd from the bearing to the nearest end of the piece, m
   */
  public double force(double perLength, double fromEnd) {
    return factor(fromEnd) * perLength * length;
  }
}
