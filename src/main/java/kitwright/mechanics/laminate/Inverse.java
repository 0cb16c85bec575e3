package kitwright.mechanics.laminate;

import kitwright.mechanics.Refuse;
import kitwright.numbers.Elimination;

/**
 * Inverse of a small square matrix by elimination with row and column pivoting, the rows scaled
 * first (A and D of a laminate differ by many powers of ten).
 */
final class Inverse {
  private Inverse() {}

  static double[][] of(double[][] matrix) {
    int n = matrix.length;
    double[] scale = scales(matrix);
    double[][] work = new double[n][2 * n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        work[i][j] = matrix[i][j] * scale[i] * scale[j];
      }
      work[i][n + i] = 1;
    }
    Refuse.unless(Elimination.reduce(work) > 1e-14, "a stiffness can be inverted");
    double[][] inverse = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        inverse[i][j] = work[i][n + j] * scale[i] * scale[j];
      }
    }
    return inverse;
  }

  /** One over the root of each diagonal, which makes every diagonal 1. */
  private static double[] scales(double[][] matrix) {
    double[] scale = new double[matrix.length];
    for (int i = 0; i < scale.length; i++) {
      Refuse.unless(matrix[i][i] > 0, "a stiffness has a positive diagonal");
      scale[i] = 1 / Math.sqrt(matrix[i][i]);
    }
    return scale;
  }
}
