package kitwright.mechanics.panel;

import kitwright.mechanics.Refuse;

/**
 * A flat rectangular plate under even pressure.
 *
 * @param a side along x, m
 * @param b side along y, m
 * @param pressure Pa
 * @param stiffness of the plate
 */
public record Panel(double a, double b, double pressure, PlateStiffness stiffness) {
  public Panel {
    Refuse.unlessPositive("side", a);
    Refuse.unlessPositive("side", b);
    Refuse.unlessPositive("pressure", pressure);
  }

  /** On supports that hold the edge down and let it turn. */
  public PlateResponse simplySupported() {
    return Navier.solve(this);
  }

  /** With edges that cannot turn. */
  public PlateResponse clamped() {
    return Ritz.solve(this);
  }
}
