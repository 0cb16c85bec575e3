package kitwright.mechanics.laminate;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** Laminates put together, and their stiffness as the books print it. */
public final class Plies {
  private Plies() {}

  /** One on the other, the first below. */
  static Laminate stacked(Laminate... laminates) {
    return new Laminate(Stream.of(laminates).flatMap(each -> each.plies().stream()).toList());
  }

  /** So many of a laminate one on the other. */
  static Laminate times(Laminate laminate, int count) {
    return new Laminate(
        Collections.nCopies(count, laminate.plies()).stream().flatMap(List::stream).toList());
  }

  /** All six rows of six. */
  public static double[][] rows(Stiffness stiffness) {
    double[][] rows = new double[6][6];
    for (int i = 1; i <= 3; i++) {
      for (int j = 1; j <= 3; j++) {
        rows[i - 1][j - 1] = stiffness.a(i, j);
        rows[i - 1][j + 2] = stiffness.b(i, j);
        rows[i + 2][j - 1] = stiffness.b(j, i); // of an inverse b is not alike across its diagonal
        rows[i + 2][j + 2] = stiffness.d(i, j);
      }
    }
    return rows;
  }
}
