package kitwright.mechanics.laminate;

/**
 * The A, B, D matrices of a laminate: A in N/m, B in N, D in N·m; indices 1 to 3 stand for x, y and
 * xy.
 */
public final class Stiffness {
  private final double[][] abd;

  Stiffness(double[][] abd) {
    this.abd = abd;
  }

  public double a(int i, int j) {
    return abd[i - 1][j - 1];
  }

  public double b(int i, int j) {
    return abd[i - 1][j + 2];
  }

  public double d(int i, int j) {
    return abd[i + 2][j + 2];
  }

  /** The full inverse: a in m/N, b in 1/N, d in 1/(N·m). */
  public Stiffness inverse() {
    return new Stiffness(Inverse.of(abd));
  }

  /** The inverse of A alone (curvature held off, as in a face on a core); 3 by 3, m/N. */
  double[][] inverseA() {
    return Inverse.of(block());
  }

  private double[][] block() {
    double[][] block = new double[3][3];
    for (int i = 0; i < 3; i++) {
      System.arraycopy(abd[i], 0, block[i], 0, 3);
    }
    return block;
  }

  double[] times(double[] vector) {
    double[] result = new double[6];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        result[i] += abd[i][j] * vector[j];
      }
    }
    return result;
  }
}
