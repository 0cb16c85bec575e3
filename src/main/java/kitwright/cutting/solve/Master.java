package kitwright.cutting.solve;

import java.util.List;
import java.util.function.Supplier;
import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;
import org.ojalgo.structure.Access1D;

/**
 * The linear program over the columns known so far: at least what is left of each type (or its
 * penalty), at most the stock of each kind, least cost.
 */
final class Master {
  /** Cost units; an upper limit of the bound sought. */
  final double total;

  /** How often each column is used; not whole. */
  final double[] uses;

  /** What one more part of each type would cost. */
  final double[] worth;

  /** What one more piece of each kind of stock would save. */
  final double[] saving;

  private Master(double total, double[] uses, double[] worth, double[] saving) {
    this.total = total;
    this.uses = uses;
    this.worth = worth;
    this.saving = saving;
  }

  static <L> Master solve(Cover cover, Node<L> node, List<Column<L>> columns, Work work) {
    int types = cover.types();
    int rows = types + cover.kinds();
    int n = columns.size();
    double[] cost = new double[n + types];
    R064Store matrix = R064Store.FACTORY.make(rows, n + types);
    for (int j = 0; j < n; j++) {
      Column<L> column = columns.get(j);
      cost[j] = cover.cost[column.kind];
      for (int i = 0; i < types; i++) {
        matrix.set(i, j, -column.made[i]);
      }
      matrix.set(types + column.kind, j, 1);
    }
    double[] right = new double[rows];
    for (int i = 0; i < types; i++) {
      cost[n + i] = cover.penalty[i];
      matrix.set(i, n + i, -1);
      right[i] = -node.left[i];
    }
    for (int s = 0; s < cover.kinds(); s++) {
      right[types + s] = node.stock[s];
    }
    work.spend(20L * rows * (n + types));
    LinearSolver.Builder program = LinearSolver.newBuilder().objective(cost).lower(0.0);
    program.inequalities(matrix, R064Store.FACTORY.column(right));
    Optimisation.Result result = program.build().solve();
    Access1D<?> multipliers =
        result
            .getDualSolution()
            .<Access1D<?>>map(Supplier::get)
            .orElseGet(() -> R064Store.FACTORY.make(rows, 1));
    double[] worth = new double[types];
    for (int i = 0; i < types; i++) {
      worth[i] = Math.max(0, multipliers.doubleValue(i));
    }
    double[] saving = new double[cover.kinds()];
    for (int s = 0; s < saving.length; s++) {
      saving[s] = Math.max(0, multipliers.doubleValue(types + s));
    }
    double[] uses = new double[n];
    for (int j = 0; j < n; j++) {
      uses[j] = Math.max(0, result.doubleValue(j));
    }
    return new Master(result.getValue(), uses, worth, saving);
  }
}
