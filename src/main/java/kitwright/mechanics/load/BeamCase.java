package kitwright.mechanics.load;

import kitwright.mechanics.Refuse;

/**
 * Common beams under a total load P over a span L: M = m·P·L, V = v·P, w = kb·P·L³/EI + ks·P·L/GA.
 *
 * @see "Hexcel Composites, Honeycomb Sandwich Design Technology, AGU 075b, 2000, table of beam
 *     coefficients; each follows from beam theory and is tested against virtual work"
 */
public enum BeamCase {
  SIMPLE_CENTRE(1 / 4.0, 1 / 2.0, 1 / 48.0, 1 / 4.0),
  SIMPLE_EVEN(1 / 8.0, 1 / 2.0, 5 / 384.0, 1 / 8.0),
  CANTILEVER_END(1, 1, 1 / 3.0, 1),
  CANTILEVER_EVEN(1 / 2.0, 1, 1 / 8.0, 1 / 2.0),
  FIXED_CENTRE(1 / 8.0, 1 / 2.0, 1 / 192.0, 1 / 4.0),
  FIXED_EVEN(1 / 12.0, 1 / 2.0, 1 / 384.0, 1 / 8.0),
  /**
   * From nought at one end to its greatest at the other: 2/(9√3), the greatest deflection at 0.519
   * of the span; the shear strain's share is that of the greatest moment, M/GA.
   *
   * @see "W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain, 7th ed., 2002, table
   *     8.1, cases 2e and 2d (not read); each is worked out again by virtual work in a test"
   */
  SIMPLE_TRIANGLE(2 / (9 * Math.sqrt(3)), 2 / 3.0, 0.0130443, 2 / (9 * Math.sqrt(3))),
  FIXED_TRIANGLE(1 / 10.0, 7 / 10.0, 0.0026180, 2 / (9 * Math.sqrt(3))),
  /** Half the load at each quarter point of a simply supported span. */
  QUARTER_POINTS(1 / 8.0, 1 / 2.0, 11 / 768.0, 1 / 8.0);

  private final double moment;
  private final double force;
  private final double bending;
  private final double shear;

  BeamCase(double moment, double force, double bending, double shear) {
    this.moment = moment;
    this.force = force;
    this.bending = bending;
    this.shear = shear;
  }

  /** Greatest bending moment, N·m, for a load in N over a span in m. */
  public double moment(double load, double span) {
    return moment * load * span;
  }

  /** Greatest shear force, N. */
  public double shear(double load) {
    return force * load;
  }

  /** Greatest deflection, m, for EI in N·m² and GA in N. */
  public Deflection deflection(double load, double span, double stiffness, double shearStiffness) {
    Refuse.unlessPositive("EI", stiffness);
    Refuse.unlessPositive("GA", shearStiffness);
    double bent = bending * load * Math.pow(Refuse.unlessPositive("span", span), 3) / stiffness;
    return new Deflection(bent, shear * load * span / shearStiffness);
  }
}
