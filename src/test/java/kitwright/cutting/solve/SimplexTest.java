package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;

/** The simplex method against ojAlgo's, on covering programs like those of cutting. */
class SimplexTest {
  private static final int ROWS = 15;
  private static final int COLUMNS = 60;
  private static final double PENALTY = 50;

  private final Random random = new Random(20260101);
  private final double[] right = random.doubles(ROWS, 1, 30).toArray();
  private final double[] cost = random.doubles(COLUMNS, 1, 9).toArray();
  private final double[][] made = new double[COLUMNS][ROWS];

  @Test
  void findsTheSameLeastCostAsOjAlgo() {
    for (int trial = 0; trial < 40; trial++) {
      fillAnew();
      assertThat(ours().total()).isCloseTo(ojAlgo(), within(1e-6));
    }
  }

  @Test
  void goesOnFromItsLastAnswerWhenColumnsAreAdded() {
    for (int trial = 0; trial < 40; trial++) {
      fillAnew();
      Simplex simplex = start();
      for (int j = 0; j < COLUMNS; j++) {
        add(simplex, j);
        simplex.solve();
      }
      assertThat(simplex.total()).isCloseTo(ojAlgo(), within(1e-6));
    }
  }

  @Test
  void itsPricesAreWorthAsMuchAsItsPlan() {
    // Strong duality: the right side at its prices is the least cost.
    for (int trial = 0; trial < 40; trial++) {
      fillAnew();
      Simplex simplex = ours();
      double worth = IntStream.range(0, ROWS).mapToDouble(i -> right[i] * simplex.dual(i)).sum();
      assertThat(worth).isCloseTo(simplex.total(), within(1e-6));
    }
  }

  private void fillAnew() {
    for (double[] column : made) {
      for (int i = 0; i < ROWS; i++) {
        column[i] = random.nextInt(4) == 0 ? 1 + random.nextInt(3) : 0;
      }
    }
  }

  private Simplex start() {
    Simplex simplex = new Simplex(right, new Work(Effort.usual()));
    int[] basis = new int[ROWS];
    for (int i = 0; i < ROWS; i++) {
      basis[i] = simplex.add(PENALTY, new int[] {i}, new double[] {1});
      simplex.add(0, new int[] {i}, new double[] {-1});
    }
    simplex.startFrom(basis);
    return simplex;
  }

  private void add(Simplex simplex, int column) {
    int[] rows = IntStream.range(0, ROWS).filter(i -> made[column][i] > 0).toArray();
    double[] values = IntStream.of(rows).mapToDouble(i -> made[column][i]).toArray();
    simplex.add(cost[column], rows, values);
  }

  private Simplex ours() {
    Simplex simplex = start();
    for (int j = 0; j < COLUMNS; j++) {
      add(simplex, j);
    }
    simplex.solve();
    return simplex;
  }

  private double ojAlgo() {
    R064Store matrix = R064Store.FACTORY.make(ROWS, COLUMNS + ROWS);
    double[] all = new double[COLUMNS + ROWS];
    for (int j = 0; j < COLUMNS + ROWS; j++) {
      all[j] = j < COLUMNS ? cost[j] : PENALTY;
      for (int i = 0; i < ROWS; i++) {
        double part = j < COLUMNS ? made[j][i] : i == j - COLUMNS ? 1 : 0;
        matrix.set(i, j, -part);
      }
    }
    double[] negative = IntStream.range(0, ROWS).mapToDouble(i -> -right[i]).toArray();
    LinearSolver.Builder program = LinearSolver.newBuilder().objective(all).lower(0.0);
    program.inequalities(matrix, R064Store.FACTORY.column(negative));
    Optimisation.Result result = program.build().solve();
    assertThat(result.getState().isOptimal()).isTrue();
    return result.getValue();
  }
}
