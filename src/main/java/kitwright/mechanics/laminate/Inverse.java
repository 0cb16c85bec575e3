package kitwright.mechanics.laminate;

import kitwright.mechanics.Refuse;

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
    for (int k = 0; k < n; k++) {
      pivot(work, k);
      eliminate(work, k);
    }
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

  private static void pivot(double[][] work, int k) {
    int best = k;
    for (int i = k + 1; i < work.length; i++) {
      if (Math.abs(work[i][k]) > Math.abs(work[best][k])) {
        best = i;
      }
    }
    Refuse.unless(Math.abs(work[best][k]) > 1e-14, "a stiffness can be inverted");
    double[] row = work[k];
    work[k] = work[best];
    work[best] = row;
  }

  private static void eliminate(double[][] work, int k) {
    double[] row = work[k];
    double pivot = row[k];
    for (int j = 0; j < row.length; j++) {
      row[j] /= pivot;
    }
    for (int i = 0; i < work.length; i++) {
      double factor = work[i][k];
      if (i != k && factor != 0) {
        for (int j = k; j < row.length; j++) {
          work[i][j] -= factor * row[j];
        }
      }
    }
  }
}
