package kitwright.mechanics.panel;

import kitwright.numbers.Elimination;

/**
 * Clamped plate: bending by Ritz's method with polynomials (1 − ξ²)²·P₂ᵢ(ξ), shear deflection added
 * as that of a membrane on the same edge (partial deflections), edge shear bounded by that of a
 * long strip, q·a/2.
 *
 * @see "F. J. Plantema, Sandwich Construction, 1966; S. Timoshenko, S. Woinowsky-Krieger, Theory of
 *     Plates and Shells, 2nd ed., 1959, sections 44 and 82"
 */
final class Ritz {
  private static final int SHAPES = 7;
  private static final int PIECES = 60;
  private static final double[] PLACE = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};
  private static final double[] WEIGHT = {5 / 9.0, 8 / 9.0, 5 / 9.0};
  private static final int TERMS = 149;

  /** ∫fᵢ⁽ᵖ⁾fⱼ⁽ʳ⁾dξ over −1…1 for (p, r) = (0,0), (1,1), (2,2), (0,2). */
  private static final double[][][] INTEGRALS = integrals();

  /** ∫fᵢdξ over −1…1. */
  private static final double[] LOADS = loads();

  /** Each shape and its first two derivatives in the middle, and at the edge. */
  private static final double[][] MIDDLE = shapes(0);

  private static final double[][] EDGE = shapes(1);

  private Ritz() {}

  static PlateResponse solve(Panel panel) {
    double[] w = coefficients(panel);
    double half = panel.a() / 2;
    double up = panel.b() / 2;
    var d = panel.stiffness();
    double bent = sum(w, MIDDLE, 0, MIDDLE, 0);
    double curveX = -sum(w, MIDDLE, 2, MIDDLE, 0) / (half * half);
    double curveY = -sum(w, MIDDLE, 0, MIDDLE, 2) / (up * up);
    double edgeX = -sum(w, EDGE, 2, MIDDLE, 0) / (half * half);
    double edgeY = -sum(w, MIDDLE, 0, EDGE, 2) / (up * up);
    double shear = membrane(panel);
    double bound = panel.pressure() * Math.min(panel.a(), panel.b()) / 2;
    return new PlateResponse(
        bent + shear,
        shear,
        d.d11() * curveX + d.d12() * curveY,
        d.d12() * curveX + d.d22() * curveY,
        d.d11() * edgeX,
        d.d22() * edgeY,
        0,
        bound,
        bound);
  }

  private static double[] coefficients(Panel panel) {
    int n = SHAPES * SHAPES;
    double[][] work = new double[n][n + 1];
    double rx = 4 / (panel.a() * panel.a());
    double ry = 4 / (panel.b() * panel.b());
    var d = panel.stiffness();
    double[][] zero = INTEGRALS[0];
    double[][] one = INTEGRALS[1];
    double[][] two = INTEGRALS[2];
    double[][] mixed = INTEGRALS[3];
    for (int r = 0; r < n; r++) {
      int i = r / SHAPES;
      int j = r % SHAPES;
      for (int c = 0; c < n; c++) {
        int k = c / SHAPES;
        int l = c % SHAPES;
        double poisson = mixed[i][k] * mixed[l][j] + mixed[k][i] * mixed[j][l];
        work[r][c] =
            d.d11() * rx * rx * two[i][k] * zero[j][l]
                + d.d12() * rx * ry * poisson
                + 4 * d.d66() * rx * ry * one[i][k] * one[j][l]
                + d.d22() * ry * ry * zero[i][k] * two[j][l];
      }
      work[r][n] = panel.pressure() * LOADS[i] * LOADS[j];
    }
    return Elimination.symmetrical(work);
  }

  private static double[] loads() {
    double[] loads = new double[SHAPES];
    for (int p = 0; p < PIECES; p++) {
      for (int g = 0; g < PLACE.length; g++) {
        double[][] at = shapes((2 * p + 1 + PLACE[g]) / PIECES - 1);
        for (int i = 0; i < SHAPES; i++) {
          loads[i] += WEIGHT[g] / PIECES * at[i][0];
        }
      }
    }
    return loads;
  }

  private static double sum(double[] w, double[][] x, int orderX, double[][] y, int orderY) {
    double sum = 0;
    for (int r = 0; r < w.length; r++) {
      sum += w[r] * x[r / SHAPES][orderX] * y[r % SHAPES][orderY];
    }
    return sum;
  }

  private static double[][] shapes(double x) {
    double[][] shapes = new double[SHAPES][];
    for (int i = 0; i < SHAPES; i++) {
      shapes[i] = shape(i, x);
    }
    return shapes;
  }

  /** The shape and its first two derivatives at ξ. */
  private static double[] shape(int i, double x) {
    double[] p = legendre(2 * i, x);
    double e = 1 - x * x;
    double f = e * e;
    double f1 = -4 * x * e;
    double f2 = -4 + 12 * x * x;
    return new double[] {
      f * p[0], f1 * p[0] + f * p[1], f2 * p[0] + 2 * f1 * p[1] + f * p[2],
    };
  }

  /** Legendre's polynomial and its first two derivatives, by recurrence. */
  private static double[] legendre(int degree, double x) {
    double[] before = {0, 0, 0};
    double[] at = {1, 0, 0};
    for (int n = 0; n < degree; n++) {
      double[] next = new double[3];
      for (int k = 0; k < 3; k++) {
        double grown = x * at[k] + (k == 0 ? 0 : k * at[k - 1]);
        next[k] = ((2 * n + 1) * grown - n * before[k]) / (n + 1);
      }
      before = at;
      at = next;
    }
    return at;
  }

  private static double[][][] integrals() {
    double[][][] table = new double[4][SHAPES][SHAPES];
    int[][] orders = {{0, 0}, {1, 1}, {2, 2}, {0, 2}};
    for (int p = 0; p < PIECES; p++) {
      for (int g = 0; g < PLACE.length; g++) {
        double[][] at = shapes((2 * p + 1 + PLACE[g]) / PIECES - 1);
        for (int i = 0; i < SHAPES; i++) {
          for (int j = 0; j < SHAPES; j++) {
            for (int k = 0; k < orders.length; k++) {
              table[k][i][j] += WEIGHT[g] / PIECES * at[i][orders[k][0]] * at[j][orders[k][1]];
            }
          }
        }
      }
    }
    return table;
  }

  private static double membrane(Panel panel) {
    double[] y = new double[TERMS + 1];
    for (int n = 1; n <= TERMS; n += 2) {
      double wave = n * Math.PI / panel.b();
      y[n] = panel.stiffness().shearY() * wave * wave;
    }
    double load = 16 * panel.pressure() / (Math.PI * Math.PI);
    double sum = 0;
    for (int m = 1; m <= TERMS; m += 2) {
      double wave = m * Math.PI / panel.a();
      double x = panel.stiffness().shearX() * wave * wave;
      double row = 0;
      for (int n = 1; n <= TERMS; n += 2) {
        double sign = (n / 2) % 2 == 0 ? 1 : -1;
        row += sign / (n * (x + y[n]));
      }
      sum += ((m / 2) % 2 == 0 ? load : -load) / m * row;
    }
    return sum;
  }
}
