package kitwright.cutting.solve;

import java.util.List;

/**
 * Holds a panel to what is wanted in all its strips together. Types of which it would make too many
 * are made worth less, and the panel is priced anew (Lagrangian relaxation with Polyak's step);
 * each round lowers the limit, or yields a way of cutting that is worth more than asked.
 */
final class JointLimit {
  private static final int ROUNDS = 24;

  private final PanelPricing pricing;
  private final int kind;
  private final long[] worth;
  private final Node<List<StripCut>> node;
  private final Work work;
  private final double[] less;
  private double stride = 1;
  private long most;
  private Column<List<StripCut>> best;

  JointLimit(PanelPricing pricing, int kind, long[] worth, Node<List<StripCut>> node, Work work) {
    this.pricing = pricing;
    this.kind = kind;
    this.worth = worth;
    this.node = node;
    this.work = work;
    this.less = new double[worth.length];
    this.best = pricing.column(kind, List.of());
  }

  /** From a first column that makes too much, and a first limit. */
  void lower(Column<List<StripCut>> first, long limit, long floor) {
    most = limit;
    best = pricing.modest(kind, worth, node.left, work);
    Column<List<StripCut>> column = first;
    long reached = limit;
    for (int round = 0; round < ROUNDS; round++) {
      Column<List<StripCut>> clipped = column.clipped(node.left);
      if (clipped.worth(worth) > best.worth(worth)) {
        best = clipped;
      }
      boolean found = best.worth(worth) > floor && !node.bans(best);
      if (found || most <= floor || !step(column, reached, floor) || work.isOver()) {
        return;
      }
      long[] lowered = lowered();
      PanelFillings fillings =
          pricing.fillings(kind, pricing.areas(kind), lowered, node.left, work);
      reached = pricing.areas(kind).stream().mapToLong(fillings::worth).sum() + returned(lowered);
      column = pricing.column(kind, fillings);
      stride = reached < most ? stride : stride * 0.7;
      if (fillings.isComplete()) {
        most = Math.min(most, reached);
      }
    }
  }

  long most() {
    return most;
  }

  Column<List<StripCut>> column() {
    return best;
  }

  private boolean step(Column<List<StripCut>> column, long reached, long floor) {
    double square = 0;
    for (int i = 0; i < less.length; i++) {
      double off = column.made[i] - node.left[i];
      square += off > 0 || less[i] > 0 ? off * off : 0;
    }
    if (square == 0) {
      return false;
    }
    double step = stride * Math.max(1, reached - floor) / square;
    for (int i = 0; i < less.length; i++) {
      double off = column.made[i] - node.left[i];
      less[i] = Math.min((double) worth[i], Math.max(0, less[i] + step * off));
    }
    return true;
  }

  private long[] lowered() {
    long[] lowered = worth.clone();
    for (int i = 0; i < lowered.length; i++) {
      lowered[i] -= (long) less[i];
    }
    return lowered;
  }

  /** What was taken from the worths comes back for as many as are wanted. */
  private long returned(long[] lowered) {
    long sum = 0;
    for (int i = 0; i < lowered.length; i++) {
      sum += (worth[i] - lowered[i]) * node.left[i];
    }
    return sum;
  }
}
