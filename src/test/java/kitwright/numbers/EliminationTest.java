package kitwright.numbers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;

/** Against EJML. */
class EliminationTest {
  private static final int SIZE = 7;

  private static double[][] symmetrical(Random random) {
    SimpleMatrix a = new SimpleMatrix(SIZE, SIZE);
    for (int i = 0; i < SIZE * SIZE; i++) {
      a.set(i, random.nextGaussian());
    }
    SimpleMatrix positive = a.mult(a.transpose());
    double[][] work = new double[SIZE][SIZE + 1];
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j < SIZE; j++) {
        work[i][j] = positive.get(i, j);
      }
      work[i][SIZE] = random.nextGaussian();
    }
    return work;
  }

  private static SimpleMatrix referee(double[][] work) {
    SimpleMatrix a = new SimpleMatrix(SIZE, SIZE);
    SimpleMatrix b = new SimpleMatrix(SIZE, 1);
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j < SIZE; j++) {
        a.set(i, j, work[i][j]);
      }
      b.set(i, 0, work[i][SIZE]);
    }
    return a.solve(b);
  }

  @Test
  void bothWaysSolveWhatTheRefereeSolves() {
    Random random = new Random(1);
    for (int turn = 0; turn < 20; turn++) {
      double[][] work = symmetrical(random);
      SimpleMatrix exact = referee(work);
      double[] one = Elimination.symmetrical(copy(work));
      double[][] other = copy(work);
      assertThat(Elimination.reduce(other)).isPositive();
      for (int i = 0; i < SIZE; i++) {
        double near = 1e-7 * (1 + Math.abs(exact.get(i, 0)));
        assertThat(one[i]).isCloseTo(exact.get(i, 0), within(near));
        assertThat(other[i][SIZE]).isCloseTo(exact.get(i, 0), within(near));
      }
    }
  }

  private static double[][] copy(double[][] work) {
    double[][] copy = new double[work.length][];
    for (int i = 0; i < work.length; i++) {
      copy[i] = work[i].clone();
    }
    return copy;
  }

  @Test
  void aRowThatBeginsWithNoughtIsNoObstacle() {
    double[][] work = {{0, 2, 4}, {3, 0, 9}};
    assertThat(Elimination.reduce(work)).isEqualTo(2);
    assertThat(work[0][2]).isEqualTo(3);
    assertThat(work[1][2]).isEqualTo(2);
  }

  @Test
  void whatCannotBeSolvedIsTold() {
    assertThat(Elimination.reduce(new double[][] {{1, 2}, {2, 4}})).isZero();
    assertThatThrownBy(() -> Elimination.symmetrical(new double[][] {{-1, 1}}))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
