package kitwright.mechanics.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Beams under a load that grows from one end to the other, by integration of their own statics: M =
 * F·x/3·(1 − x²) on simple supports, and virtual work for the deflection (EI = F = L = 1).
 */
class BeamCaseTest {
  private static final int STEPS = 20_000;

  private static double simple(double x) {
    return x * (1 - x * x) / 3;
  }

  /** End moments 1/15 and 1/10 of F·L (Roark, table 8.1, case 2d, from memory). */
  private static double fixed(double x) {
    return simple(x) - (1 - x) / 15 - x / 10;
  }

  private static double deflection(java.util.function.DoubleUnaryOperator moment, double at) {
    double sum = 0;
    for (int i = 0; i < STEPS; i++) {
      double x = (i + 0.5) / STEPS;
      double unit = x < at ? x * (1 - at) : at * (1 - x);
      sum += moment.applyAsDouble(x) * unit / STEPS;
    }
    return sum;
  }

  private static double most(java.util.function.DoubleUnaryOperator of) {
    double most = 0;
    for (double x = 0; x <= 1; x += 1e-3) {
      most = Math.max(most, of.applyAsDouble(x));
    }
    return most;
  }

  @Test
  void aTriangleOnSimpleSupports() {
    BeamCase one = BeamCase.SIMPLE_TRIANGLE;
    assertThat(one.moment(1, 1)).isCloseTo(most(BeamCaseTest::simple), within(1e-6));
    assertThat(one.shear(1)).isCloseTo(2 / 3.0, within(1e-12));
    assertThat(one.deflection(1, 1, 1, 1e12).bending())
        .isCloseTo(most(x -> deflection(BeamCaseTest::simple, x)), within(1e-6));
    assertThat(one.deflection(1, 1, 1e12, 1).shear())
        .isCloseTo(most(BeamCaseTest::simple), within(1e-6));
  }

  @Test
  void aTriangleBetweenClampedEnds() {
    BeamCase one = BeamCase.FIXED_TRIANGLE;
    assertThat(one.moment(1, 1)).isCloseTo(0.1, within(1e-12));
    assertThat(one.shear(1)).isCloseTo(2 / 3.0 + 1 / 30.0, within(1e-12));
    assertThat(one.deflection(1, 1, 1, 1e12).bending())
        .isCloseTo(most(x -> deflection(BeamCaseTest::fixed, x)), within(1e-6));
  }

  /** Greatest at the root: the resultant stands a third of the span from it. */
  @Test
  void aTriangleOnACantilever() {
    SpanLoad load = new SpanLoad.Triangular(2, 30);
    assertThat(load.moment(0)).isCloseTo(30 * 2 / 3.0, within(1e-12));
    assertThat(load.shear(0)).isEqualTo(30);
    assertThat(load.shear(1)).isCloseTo(7.5, within(1e-12));
    assertThat(load.moment(1)).isCloseTo(7.5 / 3, within(1e-12));
    assertThat(load.shear(3)).isZero();
    assertThat(load.reach()).isEqualTo(2);
  }
}
