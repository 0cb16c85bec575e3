package kitwright.mechanics.panel;

/**
 * Simply supported plate with transverse shear by Navier's double sine series, exact for its
 * theory; the odd terms to 99. Where signs change from term to term the last is taken by half, the
 * rest is closed by what it tends to; what is told keeps five digits and more.
 *
 * @see "J. N. Reddy, Mechanics of Laminated Composite Plates and Shells, 2nd ed., 2004, section
 *     7.2"
 */
final class Navier {
  private static final int TERMS = 99;
  private static final int HALF = TERMS / 2;

  /** sin(mπ/2) of the odd terms, the last by half. */
  private static final double[] SIGNS = signs();

  private final Panel panel;
  private final PlateStiffness d;
  private double deflection;
  private double thin;
  private double mx;
  private double my;
  private double mxy;
  private double mxyOfHalf;
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
        // Terms left out fall with the square of those taken: a third of what the second half
        // added (Richardson).
        sum.mxy + (sum.mxy - sum.mxyOfHalf) / 3,
        sum.qx + tail(panel.pressure() * panel.a()),
        sum.qy + tail(panel.pressure() * panel.b()));
  }

  private static double[] signs() {
    double[] signs = new double[TERMS / 2 + 1];
    for (int i = 0; i < signs.length; i++) {
      signs[i] = i % 2 == 0 ? 1 : -1;
    }
    signs[TERMS / 2] /= 2;
    return signs;
  }

  /** What the terms left out add to the edge shear: 16·q·b/π³ · π/4 · Σ1/n². */
  private static double tail(double load) {
    return 2 * load / (Math.PI * Math.PI * (TERMS + 1));
  }

  /** The terms of one m. */
  private void add(int m) {
    double x = m * Math.PI / panel.a();
    double xx = x * x;
    double sinX = SIGNS[m / 2];
    double twist = d.d12() + d.d66();
    double load = 16 * panel.pressure() / (Math.PI * Math.PI * m);
    double d11 = d.d11();
    double d12 = d.d12();
    double d22 = d.d22();
    double d66 = d.d66();
    double shearX = d.shearX();
    double shearY = d.shearY();
    double wave = Math.PI / panel.b();
    double sumDeflection = 0;
    double sumThin = 0;
    double sumX = 0;
    double sumY = 0;
    double sumTwist = 0;
    double sumShearX = 0;
    double sumShearY = 0;
    for (int n = 1; n <= TERMS; n += 2) {
      double y = n * wave;
      double yy = y * y;
      double sinY = SIGNS[n / 2];
      double bentX = d11 * xx + d66 * yy;
      double bentY = d66 * xx + d22 * yy;
      double s44 = bentX + shearX;
      double s55 = bentY + shearY;
      double mixed = twist * twist * xx * yy;
      // Turns of the normal for a deflection of one are −x·turnX/det and −y·turnY/det: eliminated
      // from the last two rows, and det carried into the load so that a term is divided once.
      double turnX = shearX * s55 - twist * shearY * yy;
      double turnY = shearY * s44 - twist * shearX * xx;
      double slantX = bentX * s55 - mixed + twist * shearY * yy;
      double slantY = bentY * s44 - mixed + twist * shearX * xx;
      double share = load / (n * (shearX * xx * slantX + shearY * yy * slantY));
      double middle = sinX * sinY * share;
      sumDeflection += (s44 * s55 - mixed) * middle;
      double bend = (d11 * xx + 2 * (twist + d66) * yy) * xx + d22 * yy * yy;
      sumThin += sinX * sinY * load / (n * bend);
      sumX += (d11 * xx * turnX + d12 * yy * turnY) * middle;
      sumY += (d12 * xx * turnX + d22 * yy * turnY) * middle;
      sumTwist -= d66 * x * y * (turnX + turnY) * share;
      if (n == HALF && m <= HALF) {
        mxyOfHalf += sumTwist;
      }
      sumShearX += shearX * x * slantX * share * sinY;
      sumShearY += shearY * y * slantY * share * sinX;
    }
    deflection += sumDeflection;
    thin += sumThin;
    mx += sumX;
    my += sumY;
    mxy += sumTwist;
    qx += sumShearX;
    qy += sumShearY;
  }
}
