package kitwright.mechanics.beam;

import static kitwright.mechanics.Bricks.joined;
import static kitwright.mechanics.Bricks.steps;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import kitwright.mechanics.Bricks;
import kitwright.mechanics.Bricks.Stuff;
import kitwright.mechanics.Ccx;
import kitwright.mechanics.beam.BeamMaterial.Elastic;
import kitwright.mechanics.beam.BeamMaterial.Flat;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.load.BeamCase;
import kitwright.mechanics.load.Cantilever;
import kitwright.mechanics.load.Overhang;
import kitwright.mechanics.load.SpanLoad;
import kitwright.mechanics.load.Stretch;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whole members against a general finite-element solver (CalculiX, C3D20R solids): deflection
 * within 2 %, stress within 3 %, buckling within 5 %.
 */
class MembersIT {
  private static final double MM = 1e-3;
  private static final double E = 70e9;
  private static final double NU = 0.3;
  private static final double G = E / 2 / (1 + NU);
  private static final double YIELD = 1e9;
  private static final double TINY = 1e-9;
  private static final Stuff ALUMINIUM = Stuff.isotropic(E, NU);

  private static final BeamMaterial STUFF =
      new BeamMaterial(
          "aluminium",
          Kind.METAL,
          2700,
          new Elastic(E, G, OptionalDouble.empty(), Optional.of(new Flat(E, NU, G))),
          Made.strength(YIELD, YIELD, YIELD / Math.sqrt(3)));

  @TempDir Path folder;

  @BeforeEach
  void theSolverIsThere() {
    Ccx.needed();
  }

  private static Bricks bar(double[] x, double[] y, double[] z) {
    return new Bricks(x, y, z, UnaryOperator.identity(), at -> Optional.of(ALUMINIUM));
  }

  private static String load(List<Integer> bricks, String face, double pressure) {
    StringBuilder lines = new StringBuilder("*DLOAD\n");
    for (int one : bricks) {
      lines.append(String.format(Locale.ROOT, "%d, %s, %e%n", one, face, pressure));
    }
    return lines.toString();
  }

  /** So much in all at the nodes of a set, alike at each. */
  private static String force(List<Integer> nodes, int way, double all) {
    StringBuilder lines = new StringBuilder("*CLOAD\n");
    for (int one : nodes) {
      lines.append(String.format(Locale.ROOT, "%d, %d, %e%n", one, way, all / nodes.size()));
    }
    return lines.toString();
  }

  private Map<Integer, double[]> moved(Bricks bricks, String held, String loads, String told)
      throws Exception {
    String step =
        "*STEP\n*STATIC\n*BOUNDARY\n"
            + held
            + loads
            + "*NODE PRINT, NSET="
            + told
            + "\nU\n*END STEP\n";
    return Ccx.solve(folder, bricks.add(step).deck()).moved();
  }

  /** 6 by 60 mm over 600 mm, bent by end moments, held upright at both ends and free to warp. */
  @Test
  void aDeepBarTipsOverSideways() throws Exception {
    double length = 0.6;
    double wide = 6 * MM;
    double high = 60 * MM;
    var bricks = bar(steps(0, length, 24), steps(0, wide, 1), steps(0, high, 6));
    bricks.nodes("NEAR", at -> at[0] < TINY && Math.abs(at[1] - wide / 2) < TINY);
    bricks.nodes("FAR", at -> at[0] > length - TINY && Math.abs(at[1] - wide / 2) < TINY);
    double middle = high / 2;
    bricks.nodes("NEARAXIS", at -> at[0] < TINY && Math.abs(at[2] - middle) < TINY);
    bricks.nodes("FARAXIS", at -> at[0] > length - TINY && Math.abs(at[2] - middle) < TINY);
    int one = bricks.nodes(at -> at[0] < TINY && Math.abs(at[2] - middle) < TINY).get(0);
    double pressure = 1e6;
    String pushed =
        load(bricks.bricks("A", at -> at[0] < 0.02 && at[2] > middle), "P6", pressure)
            + load(bricks.bricks("B", at -> at[0] < 0.02 && at[2] < middle), "P6", -pressure)
            + load(bricks.bricks("C", at -> at[0] > 0.58 && at[2] > middle), "P4", pressure)
            + load(bricks.bricks("D", at -> at[0] > 0.58 && at[2] < middle), "P4", -pressure);
    String step =
        "*STEP\n*BUCKLE\n2\n*BOUNDARY\nNEAR, 2, 2\nFAR, 2, 2\nNEARAXIS, 3, 3\nFARAXIS, 3, 3\n"
            + one
            + ", 1, 1\n"
            + pushed
            + "*END STEP\n";
    double factor = Ccx.solve(folder, bricks.add(step).deck()).factor();
    Section bar = Shapes.rectangle(STUFF, wide, high);
    double ours =
        new SideStability(Bending.of(bar.turned()).stiffness(), bar.torsion().orElseThrow(), length)
            .critical();
    double theirs = factor * pressure * wide * high * high / 4;
    assertThat(ours / theirs).isCloseTo(1, within(0.05));
  }

  /** 20 mm wide, 80 mm high at its root and 40 at its tip, 800 mm long: 40 lengths, as told. */
  @Test
  void aTaperGivesUnderAForceAtItsTip() throws Exception {
    double length = 0.8;
    double wide = 20 * MM;
    var bricks =
        new Bricks(
            steps(0, length, 24),
            steps(0, wide, 2),
            steps(-1, 1, 4),
            at -> new double[] {at[0], at[1], at[2] * (40 - 20 * at[0] / length) * MM},
            at -> Optional.of(ALUMINIUM));
    bricks.nodes("ROOT", at -> at[0] < TINY);
    var tip = bricks.nodes("TIP", at -> at[0] > length - TINY);
    Map<Integer, double[]> moved = moved(bricks, "ROOT, 1, 3\n", force(tip, 3, -1000), "TIP");
    double theirs = -tip.stream().mapToDouble(n -> Ccx.of(moved, n)[2]).average().orElseThrow();
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      Bending from = Bending.of(Shapes.rectangle(STUFF, wide, (80 - i) * MM));
      Bending to = Bending.of(Shapes.rectangle(STUFF, wide, (79 - i) * MM));
      stretches.add(
          new Stretch(
              length * i / 40,
              length * (i + 1) / 40,
              Math.sqrt(from.stiffness() * to.stiffness()),
              Math.sqrt(from.shearStiffness() * to.shearStiffness())));
    }
    double ours =
        new Cantilever(length, List.of(new SpanLoad.Point(length, 1000)))
            .deflection(stretches, length)
            .total();
    assertThat(ours / theirs).isCloseTo(1, within(0.02));
  }

  /** 20 by 40 mm on supports 600 mm apart, 200 mm beyond the second, a force at its end. */
  @Test
  void anOverhangGivesAtItsEnd() throws Exception {
    double span = 0.6;
    double beyond = 0.2;
    double high = 40 * MM;
    var bricks = bar(steps(0, span + beyond, 32), steps(0, 20 * MM, 2), steps(0, high, 4));
    double middle = high / 2;
    bricks.nodes("FIRST", at -> at[0] < TINY && Math.abs(at[2] - middle) < TINY);
    bricks.nodes("SECOND", at -> Math.abs(at[0] - span) < TINY && Math.abs(at[2] - middle) < TINY);
    bricks.nodes("SIDE", at -> Math.abs(at[1] - 10 * MM) < TINY && Math.abs(at[2] - middle) < TINY);
    int one = bricks.nodes(at -> at[0] < TINY && Math.abs(at[2] - middle) < TINY).get(0);
    var tip = bricks.nodes("TIP", at -> at[0] > span + beyond - TINY);
    Map<Integer, double[]> moved =
        moved(
            bricks,
            "FIRST, 3, 3\nSECOND, 3, 3\nSIDE, 2, 2\n" + one + ", 1, 1\n",
            force(tip, 3, -1000),
            "TIP");
    double theirs = -tip.stream().mapToDouble(n -> Ccx.of(moved, n)[2]).average().orElseThrow();
    Bending bar = Bending.of(Shapes.rectangle(STUFF, 20 * MM, high));
    double ours =
        new Overhang(span, beyond, 1000, 0)
            .deflection(bar.stiffness(), bar.shearStiffness())
            .total();
    assertThat(ours / theirs).isCloseTo(1, within(0.02));
  }

  /**
   * 40 by 80 mm over 1 m, cut away 16 mm deep and 50 mm long below both ends: what it gives in its
   * middle, and what it is stressed to there, is that of the whole beam.
   */
  @Test
  void notchesAtTheSupportsHardlyChangeWhatABeamGives() throws Exception {
    double span = 1;
    double high = 80 * MM;
    double wide = 40 * MM;
    double[] x = joined(steps(0, 0.05, 2), steps(0.05, 0.5, 15));
    double[] z = joined(steps(0, 16 * MM, 1), steps(16 * MM, high, 4));
    var bricks =
        new Bricks(
            x,
            steps(0, wide, 2),
            z,
            UnaryOperator.identity(),
            at -> at[0] < 0.05 && at[2] < 16 * MM ? Optional.empty() : Optional.of(ALUMINIUM));
    bricks.nodes("HALF", at -> at[0] > 0.5 - TINY);
    double axis = 48 * MM;
    bricks.nodes("ON", at -> at[0] < TINY && Math.abs(at[2] - axis) < TINY);
    bricks.nodes("SIDE", at -> Math.abs(at[1] - wide / 2) < TINY);
    bricks.nodes("FOOT", at -> at[0] > 0.5 - 31 * MM && at[2] < TINY);
    double pressure = 1e5;
    var top = bricks.bricks("TOP", at -> at[2] > 64 * MM);
    Map<Integer, double[]> moved =
        moved(bricks, "HALF, 1, 1\nON, 3, 3\nSIDE, 2, 2\n", load(top, "P2", pressure), "FOOT");
    int foot = bricks.nodes(at -> at[0] > 0.5 - TINY && at[2] < TINY).get(0);
    int before =
        bricks.nodes(at -> Math.abs(at[0] - 0.47) < TINY && at[1] < TINY && at[2] < TINY).get(0);
    Bending bar = Bending.of(Shapes.rectangle(STUFF, wide, high));
    double all = pressure * wide * span;
    double ours =
        BeamCase.SIMPLE_EVEN.deflection(all, span, bar.stiffness(), bar.shearStiffness()).total();
    assertThat(ours / -Ccx.of(moved, foot)[2]).as("deflection").isCloseTo(1, within(0.02));
    double strain = -Ccx.of(moved, before)[0] / 0.03;
    double moment = all / 2 * 0.485 - pressure * wide * 0.485 * 0.485 / 2;
    assertThat(Stresses.at(bar.section(), STUFF, new Point(0, 0), moment) / (E * strain))
        .as("stress")
        .isCloseTo(1, within(0.03));
  }

  /**
   * 60 by 20 mm held at its root, bent and twisted at its tip: von Mises at the middle of a side.
   */
  @Test
  void bendingWithTorsion() throws Exception {
    double length = 0.4;
    double wide = 60 * MM;
    double high = 20 * MM;
    double[] z = joined(steps(0, 5 * MM, 2), steps(5 * MM, 15 * MM, 2), steps(15 * MM, high, 2));
    var bricks = bar(steps(0, length, 20), steps(0, wide, 6), z);
    bricks.nodes("ROOT", at -> at[0] < TINY);
    var left = bricks.nodes(at -> at[0] > length - TINY && at[1] < TINY);
    var right = bricks.nodes(at -> at[0] > length - TINY && at[1] > wide - TINY);
    bricks.bricks(
        "MIDDLE",
        at -> Math.abs(at[0] - 0.19) < MM && Math.abs(at[1] - 25 * MM) < MM && at[2] > 17.5 * MM);
    double force = 500;
    double torque = 90;
    String step =
        "*STEP\n*STATIC\n*BOUNDARY\nROOT, 1, 3\n"
            + force(left, 3, -force / 2 - torque / wide)
            + force(right, 3, -force / 2 + torque / wide)
            + "*EL PRINT, ELSET=MIDDLE\nS\n*END STEP\n";
    List<double[]> points =
        Ccx.solve(folder, bricks.add(step).deck()).stresses().values().iterator().next();
    double theirs = Math.hypot(outer(points, 0), Math.sqrt(3) * outer(points, 3));
    Section bar = Shapes.rectangle(STUFF, wide, high);
    double bent =
        force * (length - 0.19) / Bending.of(bar).moment(Sense.SAGGING).value().orElseThrow();
    double twisted = torque / bar.torque().value().orElseThrow();
    assertThat(YIELD * Math.hypot(bent, twisted) / theirs).isCloseTo(1, within(0.03));
  }

  /** A stress carried out to the face of an element from its two layers of points. */
  private static double outer(List<double[]> points, int which) {
    double[] all = points.stream().mapToDouble(p -> Math.abs(p[which])).sorted().toArray();
    double low = 0;
    double high = 0;
    for (int i = 0; i < all.length; i++) {
      if (i < all.length / 2) {
        low += all[i] / (all.length / 2.0);
      } else {
        high += all[i] / (all.length / 2.0);
      }
    }
    double share = (1 - 1 / Math.sqrt(3)) / (2 / Math.sqrt(3));
    return high + share * (high - low);
  }
}
