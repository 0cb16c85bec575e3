package kitwright.mechanics.panel;

import static kitwright.mechanics.Bricks.joined;
import static kitwright.mechanics.Bricks.steps;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.UnaryOperator;
import kitwright.mechanics.Bricks;
import kitwright.mechanics.Bricks.Stuff;
import kitwright.mechanics.Ccx;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Panels against a general finite-element solver (solids): deflection within 2 %, stress within 3
 * %.
 */
class PanelIT {
  private static final double TINY = 1e-9;

  @TempDir Path folder;

  @BeforeEach
  void theSolverIsThere() {
    Ccx.needed();
  }

  /** A quarter of a plate 600 by 400 by 10 mm: the middle's deflection, the corner's shear. */
  @Test
  void aPlateOnSimpleSupports() throws Exception {
    double thick = 0.010;
    double e = 12e9;
    double nu = 0.3;
    var bricks =
        new Bricks(
            steps(0, 0.3, 12),
            steps(0, 0.2, 10),
            steps(-thick / 2, thick / 2, 2),
            UnaryOperator.identity(),
            at -> Optional.of(Stuff.isotropic(e, nu)));
    bricks.nodes("EDGEX", at -> at[0] < TINY && Math.abs(at[2]) < TINY);
    bricks.nodes("EDGEY", at -> at[1] < TINY && Math.abs(at[2]) < TINY);
    bricks.nodes("SIDEX", at -> at[0] < TINY);
    bricks.nodes("SIDEY", at -> at[1] < TINY);
    bricks.nodes("HALFX", at -> at[0] > 0.3 - TINY);
    bricks.nodes("HALFY", at -> at[1] > 0.2 - TINY);
    bricks.nodes(
        "MIDDLE", at -> at[0] > 0.3 - TINY && at[1] > 0.2 - TINY && Math.abs(at[2]) < TINY);
    bricks.bricks("CORNER", at -> at[0] < 0.02 && at[1] < 0.02 && at[2] > 0);
    var top = bricks.bricks("TOP", at -> at[2] > 0);
    double pressure = 5000;
    StringBuilder step = new StringBuilder("*STEP\n*STATIC\n*BOUNDARY\n");
    step.append("EDGEX, 3, 3\nEDGEY, 3, 3\nSIDEX, 2, 2\nSIDEY, 1, 1\nHALFX, 1, 1\nHALFY, 2, 2\n");
    step.append("*DLOAD\n");
    top.forEach(one -> step.append(one).append(", P2, ").append(pressure).append('\n'));
    step.append("*NODE PRINT, NSET=MIDDLE\nU\n*EL PRINT, ELSET=CORNER\nS\n*END STEP\n");
    Ccx solved = Ccx.solve(folder, bricks.add(step.toString()).deck());
    double g = e / 2 / (1 + nu);
    var plate = plate(e, nu, Math.pow(thick, 3) / 12, 5 / 6.0 * g * thick);
    var ours = new Panel(0.6, 0.4, pressure, plate).simplySupported();
    double down = Math.abs(solved.moved().values().iterator().next()[2]);
    assertThat(ours.deflection() / down).isCloseTo(1, within(0.02));
    // Points of the upper half at 0.289 and 1.077 of a quarter of the thickness from the middle.
    double shear =
        solved.stresses().values().iterator().next().stream()
            .map(stress -> Math.abs(stress[3]))
            .max(Comparator.naturalOrder())
            .orElseThrow();
    double height = thick / 4 * (1 + 1 / Math.sqrt(3));
    double twisting = Math.abs(ours.cornerMxy()) * 12 / Math.pow(thick, 3) * height;
    assertThat(twisting / shear).isCloseTo(1, within(0.03));
  }

  /**
   * A quarter of a sandwich 600 by 400 mm, 1 mm of glass on 20 mm of foam, edges that cannot turn.
   */
  @Test
  void aClampedSandwichGivesInShear() throws Exception {
    var glass = Stuff.isotropic(14e9, 0.3);
    double core = 27e6;
    double soft = 2 * core * 1.3;
    var bricks =
        new Bricks(
            steps(0, 0.3, 12),
            steps(0, 0.2, 10),
            joined(steps(-0.011, -0.010, 1), steps(-0.010, 0.010, 2), steps(0.010, 0.011, 1)),
            UnaryOperator.identity(),
            at -> Optional.of(Math.abs(at[2]) > 0.010 ? glass : Stuff.isotropic(soft, 0.3)));
    bricks.nodes("SIDE", at -> at[0] < TINY || at[1] < TINY);
    bricks.nodes("HALFX", at -> at[0] > 0.3 - TINY);
    bricks.nodes("HALFY", at -> at[1] > 0.2 - TINY);
    bricks.nodes(
        "MIDDLE", at -> at[0] > 0.3 - TINY && at[1] > 0.2 - TINY && Math.abs(at[2]) < TINY);
    var top = bricks.bricks("TOP", at -> at[2] > 0.010);
    double pressure = 5000;
    StringBuilder step = new StringBuilder("*STEP\n*STATIC\n*BOUNDARY\n");
    step.append("SIDE, 1, 3\nHALFX, 1, 1\nHALFY, 2, 2\n*DLOAD\n");
    top.forEach(one -> step.append(one).append(", P2, ").append(pressure).append('\n'));
    step.append("*NODE PRINT, NSET=MIDDLE\nU\n*END STEP\n");
    Ccx solved = Ccx.solve(folder, bricks.add(step.toString()).deck());
    double cube = 0.001 * 0.021 * 0.021 / 2 + Math.pow(0.001, 3) / 6;
    var plate = plate(14e9, 0.3, cube, core * 0.021 * 0.021 / 0.020);
    var ours = new Panel(0.6, 0.4, pressure, plate).clamped();
    assertThat(ours.shearDeflection()).isGreaterThan(0.5 * ours.deflection());
    double down = Math.abs(solved.moved().values().iterator().next()[2]);
    assertThat(ours.deflection() / down).isCloseTo(1, within(0.02));
  }

  /** Of what is the same every way; {@code inertia} a width, m³, {@code shear} a width, N/m. */
  private static PlateStiffness plate(double e, double nu, double inertia, double shear) {
    double d = e * inertia / (1 - nu * nu);
    return new PlateStiffness(d, nu * d, d, e / 2 / (1 + nu) * inertia, shear, shear);
  }
}
