package kitwright.mechanics.panel;

/**
 * Simply supported plate with transverse shear by Navier's double sine series, exact for its
 * theory; the odd terms to 149.
 *
 * @see "J. N. Reddy, Mechanics of Laminated Composite Plates and Shells, 2nd ed., 2004, section
 *     7.2"
 */
final class Navier {
  private static final int TERMS = 149;

  private final Panel panel;
  private final PlateStiffness d;
  private double deflection;
  private double thin;
  private double mx;
  private double my;
  private double mxy;
  private double qx;
  private double qy;

  private Navier(Panel panel) {
    this.panel = panel;
    d = panel.stiffness();
  }

  static PlateResponse solve(Panel panel) {
    var sum = new Navier(panel);
    for (int m = 1; m <= TERMS; m += 2) {
      sum.add(m);
    }
    return new PlateResponse(
        sum.deflection,
        sum.deflection - sum.thin,
        sum.mx,
        sum.my,
        0,
        0,
        sum.mxy,
        sum.qx + tail(panel.pressure() * panel.a()),
        sum.qy + tail(panel.pressure() * panel.b()));
  }

  /** What the terms left out add to the edge shear: 16·q·b/π³ · π/4 · Σ1/n². */
  private static double tail(double load) {
    return 2 * load / (Math.PI * Math.PI * (TERMS + 1));
  }

  /** The terms of one m. */
  private void add(int m) {
    double x = m * Math.PI / panel.a();
    double xx = x * x;
    double sinX = (m / 2) % 2 == 0 ? 1 : -1;
    double twist = d.d12() + d.d66();
    double load = 16 * panel.pressure() / (Math.PI * Math.PI * m);
    for (int n = 1; n <= TERMS; n += 2) {
      double y = n * Math.PI / panel.b();
      double yy = y * y;
      double sinY = (n / 2) % 2 == 0 ? 1 : -1;
      double bentX = d.d11() * xx + d.d66() * yy;
      double bentY = d.d66() * xx + d.d22() * yy;
      double s44 = bentX + d.shearX();
      double s55 = bentY + d.shearY();
      double mixed = twist * twist * xx * yy;
      // Turns of the normal for a deflection of one are −x·turnX/det and −y·turnY/det: eliminated
      // from the last two rows, and det carried into the load so that a term is divided once.
      double turnX = d.shearX() * s55 - twist * d.shearY() * yy;
      double turnY = d.shearY() * s44 - twist * d.shearX() * xx;
      double slantX = bentX * s55 - mixed + twist * d.shearY() * yy;
      double slantY = bentY * s44 - mixed + twist * d.shearX() * xx;
      double share = load / n / (d.shearX() * xx * slantX + d.shearY() * yy * slantY);
      double middle = sinX * sinY * share;
      deflection += (s44 * s55 - mixed) * middle;
      double bend = (d.d11() * xx + 2 * (twist + d.d66()) * yy) * xx + d.d22() * yy * yy;
      thin += sinX * sinY * load / n / bend;
      mx += (d.d11() * xx * turnX + d.d12() * yy * turnY) * middle;
      my += (d.d12() * xx * turnX + d.d22() * yy * turnY) * middle;
      mxy -= d.d66() * x * y * (turnX + turnY) * share;
      qx += d.shearX() * x * slantX * share * sinY;
      qy += d.shearY() * y * slantY * share * sinX;
    }
  }
}
