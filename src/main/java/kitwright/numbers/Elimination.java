package kitwright.numbers;

/** Linear systems by elimination. */
public final class Elimination {
  private Elimination() {}

  /**
   * Gauss and Jordan in place, the largest element of each column first: the square on the left
   * becomes the unit matrix, what stands to the right of it is carried along.
   *
   * @return the smallest pivot, in absolute value; nought where the square is singular
   */
  public static double reduce(double[][] work) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < work.length; k++) {
      int largest = largest(work, k);
      double[] row = work[largest];
      work[largest] = work[k];
      work[k] = row;
      double pivot = row[k];
      least = Math.min(least, Math.abs(pivot));
      for (int j = 0; j < row.length; j++) {
        row[j] /= pivot;
      }
      sweep(work, k);
    }
    return least;
  }

  private static int largest(double[][] work, int k) {
    int largest = k;
    for (int i = k + 1; i < work.length; i++) {
      largest = Math.abs(work[i][k]) > Math.abs(work[largest][k]) ? i : largest;
    }
    return largest;
  }

  private static void sweep(double[][] work, int k) {
    double[] row = work[k];
    for (int i = 0; i < work.length; i++) {
      double factor = work[i][k];
      if (i != k && factor != 0) {
        for (int j = k; j < row.length; j++) {
          work[i][j] -= factor * row[j];
        }
      }
    }
  }

  /**
   * Solves a symmetrical positive system, its right side in the last column, in place; a third of
   * the work of {@link #reduce}.
   */
  public static double[] symmetrical(double[][] work) {
    int n = work.length;
    for (int k = 0; k < n; k++) {
      if (!(work[k][k] > 0)) {
        throw new IllegalArgumentException("a stiffness is positive: " + work[k][k]);
      }
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
