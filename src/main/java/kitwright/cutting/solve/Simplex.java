package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kitwright.numbers.Elimination;

/**
 * The revised simplex method for: least cost, equal to the right side, nothing below zero (Dantzig,
 * Linear Programming and Extensions, 1963, ch. 9). Columns may be added after solving; the next
 * solution starts from the last. Rounded arithmetic: nobody may take its answer as proof.
 */
final class Simplex {
  private static final double ZERO = 1e-9;
  private static final int PIVOTS_BETWEEN_REFRESHING = 80;
  private static final int MOST_IDLE_PIVOTS = 60;

  private static final class Variable {
    private final double cost;
    private final int[] rows;
    private final double[] values;

    private Variable(double cost, int[] rows, double[] values) {
      this.cost = cost;
      this.rows = rows;
      this.values = values;
    }
  }

  private final double[] right;
  private final int size;
  private final Work work;
  private final List<Variable> columns = new ArrayList<>();
  private final int[] basis;
  private final double[][] inverse;
  private double[] basic;
  private double[] dual;
  private int pivots;

  /** With one row for each number on the right side, none of them negative. */
  Simplex(double[] right, Work work) {
    this.right = right.clone();
    this.size = right.length;
    this.work = work;
    this.basis = new int[size];
    this.inverse = new double[size][size];
    this.basic = new double[size];
    this.dual = new double[size];
  }

  /** Adds a variable; answers its number, from 0. */
  int add(double cost, int[] rows, double[] values) {
    columns.add(new Variable(cost, rows, values));
    return columns.size() - 1;
  }

  /** Names the variables that are not zero at the start, one for each row. */
  void startFrom(int[] variables) {
    System.arraycopy(variables, 0, basis, 0, size);
    refresh();
  }

  /** Goes on to the least cost. */
  void solve() {
    int idle = 0;
    prices();
    while (true) {
      int enter = entering(idle > MOST_IDLE_PIVOTS);
      if (enter < 0) {
        return;
      }
      double[] change = change(columns.get(enter));
      int leave = leaving(change);
      if (leave < 0) {
        return; // cannot be: no cost is negative
      }
      double step = Math.max(0, basic[leave]) / change[leave];
      idle = step > ZERO ? 0 : idle + 1;
      pivot(enter, leave, change, step);
    }
  }

  double total() {
    double total = 0;
    for (int r = 0; r < size; r++) {
      total += columns.get(basis[r]).cost * basic[r];
    }
    return total;
  }

  /** The value of every variable. */
  double[] values() {
    double[] values = new double[columns.size()];
    for (int r = 0; r < size; r++) {
      values[basis[r]] = Math.max(0, basic[r]);
    }
    return values;
  }

  /** What one more on the right side of a row would cost. */
  double dual(int row) {
    return dual[row];
  }

  /**
   * The variable whose rise saves most; the first that saves at all where going round is feared.
   */
  private int entering(boolean first) {
    int best = -1;
    double least = 0;
    for (int j = 0; j < columns.size(); j++) {
      Variable column = columns.get(j);
      double reduced = column.cost;
      for (int k = 0; k < column.rows.length; k++) {
        reduced -= dual[column.rows[k]] * column.values[k];
      }
      if (reduced < least - ZERO * (1 + Math.abs(column.cost))) {
        least = reduced;
        best = j;
        if (first) {
          return best;
        }
      }
    }
    work.spend(columns.size() * 4L);
    return best;
  }

  private double[] change(Variable column) {
    double[] change = new double[size];
    for (int r = 0; r < size; r++) {
      double sum = 0;
      for (int k = 0; k < column.rows.length; k++) {
        sum += inverse[r][column.rows[k]] * column.values[k];
      }
      change[r] = sum;
    }
    return change;
  }

  private int leaving(double[] change) {
    int leave = -1;
    double least = Double.MAX_VALUE;
    for (int r = 0; r < size; r++) {
      if (change[r] > ZERO) {
        double ratio = Math.max(0, basic[r]) / change[r];
        boolean tie = leave >= 0 && ratio < least + ZERO && basis[r] < basis[leave];
        if (ratio < least - ZERO || tie) {
          least = Math.min(least, ratio);
          leave = r;
        }
      }
    }
    return leave;
  }

  private void pivot(int enter, int leave, double[] change, double step) {
    double[] row = inverse[leave];
    for (int c = 0; c < size; c++) {
      row[c] /= change[leave];
    }
    for (int r = 0; r < size; r++) {
      if (r != leave && change[r] != 0) {
        double factor = change[r];
        for (int c = 0; c < size; c++) {
          inverse[r][c] -= factor * row[c];
        }
        basic[r] -= factor * step;
      }
    }
    basic[leave] = step;
    basis[leave] = enter;
    work.spend((long) size * size);
    if (++pivots % PIVOTS_BETWEEN_REFRESHING == 0) {
      refresh();
    }
    prices();
  }

  private void prices() {
    Arrays.fill(dual, 0);
    for (int r = 0; r < size; r++) {
      double cost = columns.get(basis[r]).cost;
      if (cost != 0) {
        for (int c = 0; c < size; c++) {
          dual[c] += cost * inverse[r][c];
        }
      }
    }
  }

  /** Works the inverse out anew, so that rounding does not add up. */
  private void refresh() {
    double[][] matrix = new double[size][2 * size];
    for (int r = 0; r < size; r++) {
      Variable column = columns.get(basis[r]);
      for (int k = 0; k < column.rows.length; k++) {
        matrix[column.rows[k]][r] = column.values[k];
      }
      matrix[r][size + r] = 1;
    }
    Elimination.reduce(matrix);
    basic = new double[size];
    for (int r = 0; r < size; r++) {
      System.arraycopy(matrix[r], size, inverse[r], 0, size);
      for (int c = 0; c < size; c++) {
        basic[r] += inverse[r][c] * right[c];
      }
    }
    work.spend((long) size * size * size);
  }
}
