package kitwright.cutting.solve;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the linear relaxation says of a node.
 *
 * @param bound no whole plan for the rest costs less; exact, not subject to rounding
 * @param master the last linear program, solved
 */
record Relaxed<L>(long bound, Master<L> master) {
  private static final double WHOLE = 1e-5;

  List<Column<L>> columns() {
    return master.columns();
  }

  /** How often a column is used; not whole. */
  double uses(int column) {
    return master.uses(column);
  }

  /** How many pieces of each kind are used; not whole. */
  double[] counts(int kinds) {
    double[] counts = new double[kinds];
    for (int j = 0; j < columns().size(); j++) {
      counts[columns().get(j).kind] += uses(j);
    }
    for (int s = 0; s < kinds; s++) {
      counts[s] += master.idle(s);
    }
    return counts;
  }

  /** A kind used a broken number of times: the nearest to a whole number, or the farthest off. */
  OptionalInt brokenKind(int kinds, boolean nearest) {
    double[] counts = counts(kinds);
    int found = -1;
    double distance = 0;
    for (int s = 0; s < kinds; s++) {
      double off = Math.abs(counts[s] - Math.rint(counts[s]));
      boolean better = found < 0 || (nearest ? off < distance : off > distance);
      if (off > WHOLE && better) {
        found = s;
        distance = off;
      }
    }
    return found < 0 ? OptionalInt.empty() : OptionalInt.of(found);
  }

  /** How many pieces are used in all; not whole. */
  double pieces() {
    double pieces = 0;
    for (int j = 0; j < columns().size(); j++) {
      pieces += uses(j);
    }
    return pieces;
  }

  /** The column used most; none where nothing is used. */
  Optional<Column<L>> mostUsed() {
    int most = -1;
    double uses = 1e-9;
    for (int j = 0; j < columns().size(); j++) {
      if (uses(j) > uses + 1e-9) {
        most = j;
        uses = uses(j);
      }
    }
    return most < 0 ? Optional.empty() : Optional.of(columns().get(most));
  }
}
