package kitwright.mechanics.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PanelPublishedTest {
  /** What the code's 7 by 7 shapes miss of an edge moment, and its 50 by 50 terms of a shear. */
  private static final double EDGE_TERMS = 6e-4;

  private static final double SHEAR_TERMS = 5e-6;

  /** A thin plate, D = 1: shear stiff enough to leave no trace. */
  private static Panel thin(double ratio) {
    double nu = 0.3;
    double shear = 1e9;
    return new Panel(1, ratio, 1, new PlateStiffness(1, nu, 1, (1 - nu) / 2, shear, shear));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/kitwright/mechanics/plates.csv", useHeadersInDisplayName = true)
  void textbookCoefficients(
      String support,
      double ratio,
      String alpha,
      String mx,
      String my,
      String edgeX,
      String edgeY,
      String qx,
      String qy,
      String recalculated) {
    boolean simple = support.equals("simple");
    var have = simple ? thin(ratio).simplySupported() : thin(ratio).clamped();
    var right = corrections(recalculated);
    agrees(have.deflection(), alpha, right.getOrDefault("alpha", ""), 0);
    agrees(have.mx(), mx, right.getOrDefault("mx", ""), 0);
    agrees(have.my(), my, right.getOrDefault("my", ""), 0);
    agrees(-have.edgeMx(), edgeX, right.getOrDefault("edge-x", ""), EDGE_TERMS * -have.edgeMx());
    agrees(-have.edgeMy(), edgeY, right.getOrDefault("edge-y", ""), EDGE_TERMS * -have.edgeMy());
    agrees(have.qx(), qx, right.getOrDefault("qx", ""), SHEAR_TERMS);
    agrees(have.qy(), qy, right.getOrDefault("qy", ""), SHEAR_TERMS);
  }

  /**
   * Lévy's single series, which needs a few terms only: deflection in the middle and shear in the
   * middle of the sides x = 0 and x = a (S. Timoshenko, S. Woinowsky-Krieger, Theory of Plates and
   * Shells, 2nd ed., 1959, section 30; the forms from memory, and the coefficients above agree).
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 1.5, 3})
  void theDoubleSeriesComesNearTheSingleOne(double ratio) {
    double deflection = 0;
    double shear = 0.5;
    for (int m = 1; m < 60; m += 2) {
      double turn = m * Math.PI * ratio / 2;
      double sign = m % 4 == 1 ? 1 : -1;
      double held = (turn * Math.tanh(turn) + 2) / (2 * Math.cosh(turn));
      deflection += sign * 4 / Math.pow(Math.PI * m, 5) * (1 - held);
      shear -= 4 / Math.pow(Math.PI * m, 2) / Math.cosh(turn);
    }
    var have = thin(ratio).simplySupported();
    assertThat(have.deflection()).isCloseTo(deflection, within(1e-7 * deflection));
    assertThat(have.qx()).isCloseTo(shear, within(SHEAR_TERMS));
  }

  private static Map<String, String> corrections(String recalculated) {
    return recalculated == null
        ? Map.of()
        : Arrays.stream(recalculated.split(" "))
            .map(c -> c.split("="))
            .collect(Collectors.toMap(c -> c[0], c -> c[1]));
  }

  /** Half of the last digit and the terms left out; a corrected print has to be further off. */
  private static void agrees(double have, String printed, String corrected, double terms) {
    if (printed == null) {
      return;
    }
    double value = Double.parseDouble(printed);
    if (corrected.isEmpty()) {
      assertThat(have).isCloseTo(value, within(half(printed) + terms));
      return;
    }
    double right = Double.parseDouble(corrected);
    assertThat(Math.abs(value - right)).isGreaterThan(half(printed));
    assertThat(have).isCloseTo(right, within(half(corrected) + terms));
  }

  private static double half(String printed) {
    return 0.501 * Math.pow(10, printed.indexOf('.') + 1 - printed.length());
  }

  /**
   * Roark's Formulas, 7th ed., 2002, table 11.4, case 1a, ν = 0.3; read 2026-11-27 in a copy. Its β
   * is six times and its α 12(1 - ν²) = 10.92 times the coefficients of Timoshenko's table 8, which
   * are rounded to the fourth and the fifth decimal: so the print may be off by 6 · 0.00005 and by
   * 10.92 · 0.000005 + 0.00005. Beyond that are α at 1.2, 1.4, 1.6 and 2.0 (table 8 has 0.00564 for
   * 0.005651 and 0.00705 for 0.007085; 0.1110 is 0.1106): the last column is Levy's series in a
   * script apart.
   */
  @ParameterizedTest
  @CsvSource({
    "1.0, 0.2874, 0.0444,",
    "1.2, 0.3762, 0.0616, 0.06170",
    "1.4, 0.4530, 0.0770, 0.07737",
    "1.6, 0.5172, 0.0906, 0.09072",
    "1.8, 0.5688, 0.1017,",
    "2.0, 0.6102, 0.1110, 0.11061",
    "3.0, 0.7134, 0.1335,",
    "4.0, 0.7410, 0.1400,",
    "5.0, 0.7476, 0.1417,"
  })
  void roark(double ratio, double beta, double alpha, Double recalculated) {
    double inBeta = 6 * 0.00005;
    double inAlpha = 10.92 * 0.000005 + 0.00005;
    var have = thin(ratio).simplySupported();
    assertThat(6 * have.mx()).isCloseTo(beta, within(inBeta));
    double deflection = have.deflection() * 12 * (1 - 0.09);
    if (recalculated == null) {
      assertThat(deflection).isCloseTo(alpha, within(inAlpha));
    } else {
      assertThat(Math.abs(alpha - recalculated)).isGreaterThan(inAlpha - 0.000005);
      assertThat(deflection).isCloseTo(recalculated, within(0.000006));
    }
  }

  /**
   * R. L. Taylor, S. Govindjee, Solution of clamped rectangular plate problems, Communications in
   * Numerical Methods in Engineering 20, 2004: square, 0.00126532, 0.0229051, 0.0513338; the three
   * quoted from it in public code, read 2026-11-27. Timoshenko's 0.0231 for the second is wrong. At
   * the edge 7 by 7 shapes are 1.6e-4 short of 14 by 14 (a script apart).
   */
  @Test
  void clampedSquare() {
    var have = thin(1).clamped();
    assertThat(have.deflection()).isCloseTo(0.00126532, within(0.5e-8));
    assertThat(have.mx()).isCloseTo(0.0229051, within(0.5e-7));
    assertThat(have.edgeMx()).isCloseTo(-0.0513338, within(0.5e-7 + 1.7e-4 * 0.0513338));
  }

  /**
   * NAFEMS, Composites Benchmarks, R0031 test 3, February 1995: sandwich 10 x 10 in, simply
   * supported, 100 psi, core 0.75 in. Targets 0.123 in, 34,449 and 13,350 psi (13,390 in one copy)
   * in the middle of the upper face; read in the manuals of two programs, again 2026-11-27 at
   * help.altair.com, OS-V:0520. (-5,067.5 psi at a quarter point is not a result given here.)
   *
   * <p>The stress targets come from the simplest theory: faces without bending of their own and S =
   * G·tc. Summed to convergence in a script apart that is 34,451.7 and 13,352.3 psi, 0.008 and
   * 0.018 per cent above the targets, for what reason is not known. It makes 0.1256 in, S = G·d²/tc
   * and thick faces, which this code has, make 0.1222: the printed 0.123 lies between, from
   * neither.
   */
  @Test
  void sandwichUnderPressure() {
    double membrane = 0.028 / (1 - 0.3 * 0.3 * 0.4);
    double lever = 0.778 * 0.778 / 2;
    double thick = 0.028 * 0.028 / 6;
    var own = sandwich(membrane * (lever + thick), 0.778 * 0.778 / 0.750);
    var simplest = sandwich(membrane * lever, 0.750);
    var theirs = new Panel(10, 10, 100, simplest).simplySupported();
    double[] stress = faceStress(simplest, theirs);
    assertThat(stress[0]).isCloseTo(34451.7, within(0.1));
    assertThat(stress[1]).isCloseTo(13352.3, within(0.1));
    assertThat(theirs.deflection()).isCloseTo(0.12556, within(0.000005));

    var have = new Panel(10, 10, 100, own).simplySupported();
    assertThat(have.deflection()).isCloseTo(0.12220, within(0.000005));
    assertThat(0.123).isBetween(have.deflection(), theirs.deflection());
    double[] here = faceStress(own, have);
    assertThat(here[0]).isCloseTo(34345, within(0.5));
    assertThat(here[1]).isCloseTo(13413, within(0.5));
  }

  /** Faces of 10e6, 4e6 and 1.875e6 psi, ν 0.3; the core 3e4 and 1.2e4 psi. */
  private static PlateStiffness sandwich(double bending, double shear) {
    return new PlateStiffness(
        10e6 * bending,
        0.3 * 4e6 * bending,
        4e6 * bending,
        1.875e6 * (1 - 0.3 * 0.3 * 0.4) * bending,
        3e4 * shear,
        1.2e4 * shear);
  }

  /** In the middle of the upper face, psi, from the curvatures that the moments make. */
  private static double[] faceStress(PlateStiffness plate, PlateResponse response) {
    double det = plate.d11() * plate.d22() - plate.d12() * plate.d12();
    double kx = (plate.d22() * response.mx() - plate.d12() * response.my()) / det;
    double ky = (plate.d11() * response.my() - plate.d12() * response.mx()) / det;
    double q = (0.375 + 0.014) / (1 - 0.3 * 0.3 * 0.4);
    return new double[] {q * (10e6 * kx + 0.3 * 4e6 * ky), q * (0.3 * 4e6 * kx + 4e6 * ky)};
  }

  /**
   * What a clamped panel gives in shear is what a membrane of that tension gives under the
   * pressure: 0.0736713·q·a²/S in the middle of a square (S. P. Timoshenko, J. N. Goodier, Theory
   * of Elasticity, 3rd ed., 1970, section 109, the stress function of a square in torsion, from
   * memory), q·b²/8S in a long strip.
   */
  @Test
  void aClampedPanelGivesInShearLikeAMembrane() {
    var soft = new PlateStiffness(1e9, 0, 1e9, 1e9, 250, 250);
    var square = new Panel(0.8, 0.8, 1000, soft).clamped();
    assertThat(square.shearDeflection()).isCloseTo(0.0736713 * 1000 * 0.64 / 250, within(2e-5));
    assertThat(square.deflection()).isCloseTo(square.shearDeflection(), within(1e-4));
    var strip = new Panel(8, 0.5, 1000, soft).clamped();
    assertThat(strip.shearDeflection()).isCloseTo(1000 * 0.25 / 8 / 250, within(2e-5));
  }

  /** Twice as stiff in shear both ways gives half as much. */
  @Test
  void softInOneWayGivesMore() {
    var even = new Panel(1, 1, 1, new PlateStiffness(1e9, 0, 1e9, 1e9, 10, 10)).clamped();
    var twice = new Panel(1, 1, 1, new PlateStiffness(1e9, 0, 1e9, 1e9, 20, 20)).clamped();
    var oneWay = new Panel(1, 1, 1, new PlateStiffness(1e9, 0, 1e9, 1e9, 20, 10)).clamped();
    assertThat(twice.shearDeflection()).isCloseTo(even.shearDeflection() / 2, within(1e-9));
    assertThat(oneWay.shearDeflection()).isBetween(twice.shearDeflection(), even.shearDeflection());
  }
}
