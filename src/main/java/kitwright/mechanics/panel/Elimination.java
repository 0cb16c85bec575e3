package kitwright.mechanics.panel;

import kitwright.mechanics.Refuse;

/** Solves a symmetrical positive system, its right side in the last column, in place. */
final class Elimination {
  private Elimination() {}

  static double[] solve(double[][] work) {
    int n = work.length;
    for (int k = 0; k < n; k++) {
      Refuse.unless(work[k][k] > 0, "a plate has a positive stiffness");
      double[] row = work[k];
      // What stands below the diagonal is what stands above it, and is not carried along.
      for (int i = k + 1; i < n; i++) {
        double[] other = work[i];
        double factor = row[i] / row[k];
        for (int j = i; j <= n; j++) {
          other[j] -= factor * row[j];
        }
      }
    }
    double[] result = new double[n];
    for (int k = n - 1; k >= 0; k--) {
      double sum = work[k][n];
      for (int j = k + 1; j < n; j++) {
        sum -= work[k][j] * result[j];
      }
      result[k] = sum / work[k][k];
    }
    return result;
  }
}
