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
      for (int n = 1; n <= TERMS; n += 2) {
        sum.add(m, n);
      }
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

  private void add(int m, int n) {
    double x = m * Math.PI / panel.a();
    double y = n * Math.PI / panel.b();
    double load = 16 * panel.pressure() / (Math.PI * Math.PI * m * n);
    double s44 = d.d11() * x * x + d.d66() * y * y + d.shearX();
    double s45 = (d.d12() + d.d66()) * x * y;
    double s55 = d.d66() * x * x + d.d22() * y * y + d.shearY();
    double det = s44 * s55 - s45 * s45;
    // Turns of the normal for a deflection of one: eliminated from the last two rows.
    double turnX = -(d.shearX() * x * s55 - d.shearY() * y * s45) / det;
    double turnY = -(d.shearY() * y * s44 - d.shearX() * x * s45) / det;
    double w =
        load
            / (d.shearX() * x * x
                + d.shearY() * y * y
                + d.shearX() * x * turnX
                + d.shearY() * y * turnY);
    double mixed = 2 * (d.d12() + 2 * d.d66()) * x * x * y * y;
    double sinX = (m / 2) % 2 == 0 ? 1 : -1;
    double sinY = (n / 2) % 2 == 0 ? 1 : -1;
    double middle = sinX * sinY;
    deflection += w * middle;
    thin += load / (d.d11() * Math.pow(x, 4) + mixed + d.d22() * Math.pow(y, 4)) * middle;
    mx -= (d.d11() * x * turnX + d.d12() * y * turnY) * w * middle;
    my -= (d.d12() * x * turnX + d.d22() * y * turnY) * w * middle;
    mxy += d.d66() * (y * turnX + x * turnY) * w;
    qx += d.shearX() * (turnX + x) * w * sinY;
    qy += d.shearY() * (turnY + y) * w * sinX;
  }
}
