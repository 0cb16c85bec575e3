package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The linear program of a node over the columns known so far: at least what is left of each type
 * (or its penalty), at most the stock and at least what is owed of each kind, least cost.
 */
final class Master<L> {
  private final Cover cover;
  private final Node<L> node;
  private final Simplex simplex;
  private final int[] owedRow;
  private final int[] idle;
  private final List<Column<L>> columns = new ArrayList<>();
  private final List<Integer> variables = new ArrayList<>();
  private final Set<String> known = new HashSet<>();
  private double[] values = {};

  Master(Cover cover, Node<L> node, Work work) {
    this.cover = cover;
    this.node = node;
    int types = cover.types();
    int kinds = cover.kinds();
    this.owedRow = new int[kinds];
    this.idle = new int[kinds];
    int rows = types + kinds;
    for (int s = 0; s < kinds; s++) {
      owedRow[s] = node.owed[s] > 0 ? rows++ : -1;
    }
    double[] right = new double[rows];
    for (int i = 0; i < types; i++) {
      right[i] = node.left[i];
    }
    for (int s = 0; s < kinds; s++) {
      right[types + s] = node.stock[s];
      if (owedRow[s] >= 0) {
        right[owedRow[s]] = node.owed[s];
      }
    }
    this.simplex = new Simplex(right, work);
    start(new int[rows]);
  }

  /** Nothing is cut: all parts unmade, all that is owed idle. */
  private void start(int[] basis) {
    int types = cover.types();
    for (int i = 0; i < types; i++) {
      basis[i] = simplex.add((double) cover.penalty[i], new int[] {i}, new double[] {1});
      simplex.add(0, new int[] {i}, new double[] {-1});
    }
    for (int s = 0; s < cover.kinds(); s++) {
      basis[types + s] = simplex.add(0, new int[] {types + s}, new double[] {1});
      idle[s] = -1;
      if (owedRow[s] >= 0) {
        int[] rows = {types + s, owedRow[s]};
        idle[s] = simplex.add((double) cover.cost[s], rows, new double[] {1, 1});
        basis[owedRow[s]] = idle[s];
        simplex.add(0, new int[] {owedRow[s]}, new double[] {-1});
      }
    }
    simplex.startFrom(basis);
  }

  /** Lets a column take part, counting only what is wanted; false where it adds nothing. */
  boolean add(Column<L> column) {
    if (node.stock[column.kind] == 0) {
      return false;
    }
    Column<L> clipped = column.clipped(node.left);
    if (clipped.makesNothing() || node.bans(clipped) || !known.add(clipped.key())) {
      return false;
    }
    int[] rows = new int[cover.types() + 2];
    double[] parts = new double[rows.length];
    int n = 0;
    for (int i = 0; i < cover.types(); i++) {
      if (clipped.made[i] > 0) {
        rows[n] = i;
        parts[n++] = clipped.made[i];
      }
    }
    rows[n] = cover.types() + clipped.kind;
    parts[n++] = 1;
    if (owedRow[clipped.kind] >= 0) {
      rows[n] = owedRow[clipped.kind];
      parts[n++] = 1;
    }
    int[] used = Arrays.copyOf(rows, n);
    variables.add(simplex.add((double) cover.cost[clipped.kind], used, Arrays.copyOf(parts, n)));
    columns.add(clipped);
    return true;
  }

  void solve() {
    simplex.solve();
    values = simplex.values();
  }

  /** Cost units; what the bound cannot exceed. */
  double total() {
    return simplex.total();
  }

  List<Column<L>> columns() {
    return columns;
  }

  /** How often a column is used; not whole. */
  double uses(int column) {
    return values[variables.get(column)];
  }

  /** Pieces of a kind used for nothing, because so many are owed. */
  double idle(int kind) {
    return idle[kind] < 0 ? 0 : values[idle[kind]];
  }

  /** What one more part of a type would cost. */
  double worth(int type) {
    return Math.max(0, simplex.dual(type));
  }

  /** What one more piece of a kind would save; less than zero where it is owed. */
  double saving(int kind) {
    double owed = owedRow[kind] < 0 ? 0 : simplex.dual(owedRow[kind]);
    return -simplex.dual(cover.types() + kind) - owed;
  }
}
