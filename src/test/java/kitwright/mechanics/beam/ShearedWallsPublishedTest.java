package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.mechanics.beam.BeamMaterial.Elastic;
import kitwright.mechanics.beam.BeamMaterial.Flat;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.BeamMaterial.Strength;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;

/**
 * Walls that buckle in shear. Flat: k = 5.34 of a long plate with simple edges (AISC and EN
 * 1993-1-5, A.3, read 2026-11-29 in public code, xcfem/xc); one that is unlike both ways is held to
 * its own equation by a double sine series. Round: EN 1993-1-6, D.40, D.46 to D.49 (read 2026-11-30
 * in public code that names the equations).
 */
class ShearedWallsPublishedTest {
  private static BeamMaterial stuff(double along, double across, double shear, double strength) {
    double poisson = along == across ? along / 2 / shear - 1 : 0.3;
    return new BeamMaterial(
        "stuff",
        Kind.METAL,
        2700,
        new Elastic(
            along, shear, OptionalDouble.empty(), Optional.of(new Flat(across, poisson, shear))),
        Made.strength(240e6, 240e6, strength));
  }

  private static BeamMaterial alike(double modulus, double strength) {
    return stuff(modulus, modulus, modulus / 2.6, strength);
  }

  /** 210 GPa, ν 0.3, 5 in 500 mm: 5.34·π²·E/(12·0.91)·(t/b)² = 101.4 MPa. */
  @Test
  void aLongFlatPlate() {
    double buckles = Skin.overGap(alike(210e9, 1), 0.005, 0.5).sheared().orElseThrow();
    double k = buckles / (Math.PI * Math.PI * 210e9 / 12 / 0.91 * 1e-4);
    assertThat(k).isCloseTo(5.34, within(0.005));
  }

  /** The sine series of a plate three times as long as wide lies above an endless one. */
  @Test
  void aPlateThatIsUnlikeBothWaysBearsNoMoreThanItsEquationSays() {
    for (double across : new double[] {1, 0.5, 0.1, 1 / 30.0, 3}) {
      for (double shear : new double[] {0.02, 1 / 16.0, 0.2, 0.38, 0.6}) {
        var skin = Skin.overGap(stuff(10e9, across * 10e9, shear * 10e9, 1), 0.004, 0.2);
        double least = skin.sheared().orElseThrow() * 0.004;
        double series = series(skin.plate().orElseThrow(), 0.6, 0.2);
        assertThat(least).as("E₂ %s, G %s", across, shear).isBetween(0.1 * series, 1.001 * series);
      }
    }
  }

  /**
   * Simple edges: N of the least eigenvalue. Of a square of one stuff k is 9.33.
   *
   * @param length m
   * @param width m
   */
  private static double series(Skin.Plate plate, double length, double width) {
    int waves = 14;
    int size = waves * waves;
    var give = new SimpleMatrix(size, size);
    double[] root = new double[size];
    for (int i = 0; i < size; i++) {
      double m = Math.PI * (i / waves + 1) / length;
      double n = Math.PI * (i % waves + 1) / width;
      double bends =
          plate.d11() * Math.pow(m, 4)
              + 2 * (plate.d12() + 2 * plate.d66()) * m * m * n * n
              + plate.d22() * Math.pow(n, 4);
      root[i] = Math.sqrt(bends * length * width / 4);
    }
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        int m = i / waves + 1;
        int n = i % waves + 1;
        int p = j / waves + 1;
        int q = j % waves + 1;
        if ((m + p) % 2 == 1 && (n + q) % 2 == 1) {
          double works = 8.0 * m * n * p * q / ((m * m - p * p) * (double) (q * q - n * n));
          give.set(i, j, works / root[i] / root[j]);
        }
      }
    }
    double most =
        give.eig().getEigenvalues().stream().mapToDouble(one -> Math.abs(one.real)).max().orElse(0);
    return 1 / most;
  }

  @Test
  void theSeriesIsThatOfASquare() {
    var plate = Skin.overGap(alike(70e9, 1), 0.002, 0.3).plate().orElseThrow();
    double k = series(plate, 0.3, 0.3) * 0.09 / (Math.PI * Math.PI * plate.d11());
    assertThat(k).isCloseTo(9.33, within(0.02));
  }

  /** 70 GPa, r 149.85, t 0.3: E/4·(t/r)^1.5 is 1.567 MPa, times 0.96/(1 + √(r/t)/32) = 0.565. */
  @Test
  void aThinTubeBucklesLongBeforeItYields() {
    var tube = Shapes.tube(alike(70e9, 138e6), 0.3, 0.0003);
    double buckles = 0.96 / (1 + Math.sqrt(499.5) / 32) * 70e9 / 4 / Math.pow(499.5, 1.5);
    var torque = tube.torque();
    assertThat(torque.atLeast()).isTrue();
    assertThat(torque.governing().orElseThrow().allowable()).isCloseTo(buckles, within(1.0));
    double polar = Math.PI / 2 * (Math.pow(0.15, 4) - Math.pow(0.1497, 4));
    assertThat(torque.value().orElseThrow()).isCloseTo(buckles * polar / 0.15, within(1e-6));
    var shear = Bending.of(tube).shear();
    assertThat(shear.atLeast()).isTrue();
    double most = 2 / (2 * Math.PI * 0.14985 * 0.0003);
    assertThat(shear.value().orElseThrow())
        .isCloseTo(buckles / most, within(0.02 * buckles / most));
    assertThat(Shapes.tube(alike(70e9, 138e6), 0.06, 0.003).torque().atLeast()).isFalse();
  }

  /** The thin upright sides of a hollow polygon carry its shear: 194 mm of 0.5 mm. */
  @Test
  void theUprightSidesOfAHollowPolygonBuckle() {
    var corners =
        List.of(new Point(0, 0), new Point(0.06, 0), new Point(0.06, 0.2), new Point(0, 0.2));
    var slim = Shapes.walled(alike(70e9, 138e6), corners, List.of(0.006, 0.0005, 0.006, 0.0005));
    var shear = Bending.of(slim).shear();
    assertThat(shear.atLeast()).isTrue();
    double buckles = 5.34 * Math.PI * Math.PI * 70e9 / 12 / 0.91 * Math.pow(0.5 / 188, 2);
    assertThat(shear.governing().orElseThrow().allowable())
        .isCloseTo(buckles, within(0.002 * buckles));
    var stout = Shapes.walled(alike(70e9, 138e6), corners, List.of(0.006, 0.006, 0.006, 0.006));
    assertThat(Bending.of(stout).shear().atLeast()).isFalse();
  }

  /** A ring bends round: what is soft across buckles sooner, by ∜(E·E₂³). */
  @Test
  void whatIsSoftRoundTheTubeBucklesSooner() {
    double alike = round(stuff(10e9, 10e9, 3.8e9, 1));
    assertThat(round(stuff(10e9, 10e9 / 16, 3.8e9, 1))).isCloseTo(alike / 8, within(1e-6 * alike));
    assertThat(round(stuff(10e9, 20e9, 3.8e9, 1))).isCloseTo(alike, within(1e-6 * alike));
  }

  private static double round(BeamMaterial one) {
    return Shapes.tube(one, 0.1, 0.002).skins().get(0).sheared().orElseThrow();
  }

  @Test
  void ofWhatNobodyKnowsAcrossItIsMissing() {
    var unknown =
        BeamMaterial.of("x", Kind.LAMINATE, 1700, 14e9, 3e9, Made.strength(2e8, 2e8, 48e6));
    var thin = Shapes.tube(unknown, 0.1, 0.002);
    assertThat(thin.torque().missing())
        .extracting(Missing::property)
        .contains(Missing.Property.SHEARED_WALL);
    assertThat(Bending.of(thin).shear().missing())
        .extracting(Missing::property)
        .contains(Missing.Property.SHEARED_WALL);
    var paper = Shapes.tube(alike(70e9, 138e6), 3.2, 0.001);
    assertThat(paper.torque().missing()).isNotEmpty();
  }

  /** Both walls of a box that lies flat: 54 mm of 0.4 mm between webs, 5.34·… of 70 GPa. */
  @Test
  void theFlatWallOfABoxBuckles() {
    var box = Made.box(alike(70e9, 138e6), 0.06, 0.02, 0.003, 0.0004);
    var torque = box.torque();
    double buckles = 5.34 * Math.PI * Math.PI * 70e9 / 12 / 0.91 * Math.pow(0.4 / 54, 2);
    var limit = torque.governing().orElseThrow();
    assertThat(limit.mode()).isEqualTo(FailureMode.SHEARED_WALL);
    assertThat(limit.allowable()).isCloseTo(buckles, within(0.002 * buckles));
    assertThat(limit.perUnit())
        .isCloseTo(1 / (2 * 0.057 * 0.0196 * 0.0004), within(1e-6 * limit.perUnit()));
    assertThat(Made.box(alike(70e9, 138e6), 0.06, 0.02, 0.003, 0.003).torque().atLeast()).isFalse();
  }

  @Test
  void aFaceOnItsCoreWrinklesAsUnderAPush() {
    var core = Made.core("foam", 80, 90e6, 27e6, Strength.unknown());
    var face =
        Skin.of(
            List.of(0), List.of(new Skin.Leaf(alike(14e9, 1), 0.001)), new Support.OnCore(core));
    assertThat(face.sheared()).isEqualTo(face.buckling());
    var flange =
        Skin.of(
            List.of(0),
            List.of(new Skin.Leaf(alike(14e9, 1), 0.001)),
            new Support.Outstanding(0.1));
    assertThat(flange.sheared().orElseThrow()).isInfinite();
  }
}
