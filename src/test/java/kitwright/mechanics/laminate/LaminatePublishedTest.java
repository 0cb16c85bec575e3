package kitwright.mechanics.laminate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class LaminatePublishedTest {
  private static final double GPA = 1e9;
  private static final double MPA = 1e6;

  /**
   * Graphite/epoxy: Kaw, Mechanics of Composite Materials, 2nd ed., 2006, table 2.1; remembered.
   */
  private static final Lamina KAW =
      new Lamina("graphite/epoxy", 181 * GPA, 10.3 * GPA, 7.17 * GPA, 0.28, 1600, Optional.empty())
          .with(new LaminaStrength(1500 * MPA, 1500 * MPA, 40 * MPA, 246 * MPA, 68 * MPA));

  private static Laminate stack(Lamina stuff, double thickness, double... angles) {
    return new Laminate(
        DoubleStream.of(angles).mapToObj(a -> new Ply(stuff, thickness, a)).toList());
  }

  private static Laminate remmers(double across) {
    var carbon = new Fibre("carbon", 1800, 220 * GPA, across, 91.7 * GPA, 0.2);
    var epoxy = new Matrix("epoxy", 1200, 3.6 * GPA, 1.33 * GPA, 0.35);
    var ply = Micromechanics.RULE_OF_MIXTURES.lamina("UD", carbon, epoxy, 0.6);
    return stack(ply, 0.25e-3, 0, 45, -45, 90, 90, -45, 45, 0);
  }

  private static Laminate of(String name) {
    return switch (name) {
      case "kaw" -> stack(KAW, 5e-3, 0, 30, -45);
      case "remmers-3" -> remmers(220 * GPA);
      case "remmers-4" -> remmers(22 * GPA);
      case "santos" ->
          stack(
              new Lamina("cfrp", 70 * GPA, 20 * GPA, 1 * GPA, 0.3, 100, Optional.empty()),
              0.1,
              0,
              90,
              0,
              90,
              0);
      default -> throw new IllegalArgumentException(name);
    };
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/kitwright/mechanics/laminate-abd.csv",
      useHeadersInDisplayName = true)
  void stiffnessMatrices(String name, String matrix, int i, int j, double value, int digits) {
    var stiffness = of(name).stiffness();
    double have =
        switch (matrix) {
          case "A" -> stiffness.a(i, j);
          case "B" -> stiffness.b(i, j);
          default -> stiffness.d(i, j);
        };
    double unit = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - digits + 1);
    assertThat(have).isCloseTo(value, within(0.501 * unit));
  }

  /** The same course, plate equations, example 1. */
  @Test
  void bendingOfACrossPlyPlate() {
    var ud = new Lamina("UD", 130 * GPA, 7.2 * GPA, 4.2 * GPA, 0.337, 1514, Optional.empty());
    var d = stack(ud, 0.2e-3, 0, 90, 0, 0, 90, 0).stiffness();
    assertThat(d.d(1, 1)).isCloseTo(14.224941196641147, within(1e-12));
    assertThat(d.d(2, 2)).isCloseTo(5.656915190635289, within(1e-12));
    assertThat(d.d(1, 2) + 2 * d.d(3, 3)).isCloseTo(1.5612132386157986, within(1e-12));
  }

  /** The same course, example 4: strains under N (10, 5, 6) kN/m and M (3, 10, 1) N. */
  @Test
  void strainsUnderMixedLoad() {
    var load = new Resultants(1e4, 5e3, 6e3, 3, 10, 1);
    double[] strain = of("remmers-4").stiffness().inverse().times(load.vector());
    double[] printed = {
      8.49787329e-05, 1.85019499e-05, 1.59544279e-04, -0.05835077, 0.7536957, -0.16546788
    };
    for (int i = 0; i < 6; i++) {
      assertThat(strain[i]).isCloseTo(printed[i], within(1e-7 * Math.abs(printed[i])));
    }
  }

  /** Kaw, example 2.6 and 4.2: reduced stiffnesses of the ply; remembered. */
  @Test
  void reducedStiffness() {
    double[] q = KAW.reduced();
    assertThat(DoubleStream.of(q).map(x -> x / GPA).toArray())
        .containsExactly(new double[] {181.8, 2.897, 10.35, 7.17}, within(0.05));
    // Turned by 60 degrees, example 2.7: 23.65, 32.46, 20.05, 109.4, 54.19, 36.74 GPa.
    double[][] turned = KAW.turned(60);
    assertThat(turned[0][0] / GPA).isCloseTo(23.65, within(0.005));
    assertThat(turned[0][1] / GPA).isCloseTo(32.46, within(0.005));
    assertThat(turned[0][2] / GPA).isCloseTo(20.05, within(0.005));
    assertThat(turned[1][1] / GPA).isCloseTo(109.4, within(0.05));
    assertThat(turned[1][2] / GPA).isCloseTo(54.19, within(0.005));
    assertThat(turned[2][2] / GPA).isCloseTo(36.74, within(0.005));
  }

  /**
   * Kaw, examples 2.17 and 2.19: a ply at 60 degrees under σx = 2S, σy = −3S, τxy = 4S fails at S =
   * 16.33 MPa by maximum strain and 22.39 MPa by Tsai and Wu; remembered.
   */
  @ParameterizedTest
  @CsvSource({"MAXIMUM_STRAIN, 16.33", "TSAI_WU, 22.39"})
  void firstFailureOfAnAngledPly(Criterion criterion, double megapascals) {
    var ply = stack(KAW, 1, 60);
    var first = ply.firstPly(new Resultants(2, -3, 4, 0, 0, 0), criterion).orElseThrow();
    assertThat(first.factor() / MPA).isCloseTo(megapascals, within(0.005));
  }

  /**
   * Kaw, example 4.3: mid-plane strains of [0/30/-45] under Nx = Ny = 1000 N/m: 3.123e-7, 3.492e-6,
   * -7.598e-7; curvatures 2.971e-5, -3.285e-4, 4.101e-4; remembered.
   */
  @Test
  void midPlaneStrains() {
    double[] strain = of("kaw").stiffness().inverse().times(new double[] {1000, 1000, 0, 0, 0, 0});
    double[] printed = {3.123e-7, 3.492e-6, -7.598e-7, 2.971e-5, -3.285e-4, 4.101e-4};
    for (int i = 0; i < 6; i++) {
      assertThat(strain[i]).isCloseTo(printed[i], within(6e-4 * Math.abs(printed[i])));
    }
  }

  /** ISO 12215-5:2008, Annex C, thickness of cured glass per dry mass; reckoned twice. */
  @ParameterizedTest
  @CsvSource({
    "0.30, 2.335, 0.167",
    "0.48, 1.293, 0.302",
    "0.50, 1.224, 0.319",
    "0.55, 1.072, 0.364",
    "0.60, 0.946, 0.413"
  })
  void curedThickness(double byMass, double millimetres, double byVolume) {
    var content = new FibreContent(byMass, 2560, 1200);
    assertThat(content.thickness(1) * 1000).isCloseTo(millimetres, within(0.0005));
    assertThat(content.byVolume()).isCloseTo(byVolume, within(0.0005));
    // The small-craft form: w/3.072·(2.56/ψ − 1.36).
    assertThat(content.thickness(1) * 1000)
        .isCloseTo((2.56 / byMass - 1.36) / 3.072, within(1e-12));
  }

  /** The classic mat and roving values of the same annex; remembered. */
  @ParameterizedTest
  @CsvSource({
    "0.30, 85.0, 117.0, 152.2, 62.0, 17.25, 6400, 2750",
    "0.48, 182.9, 144.0, 222.7, 76.4, 14.1, 13240, 3056"
  })
  void glassByFormula(
      double psi, double t, double c, double f, double s, double il, double e, double g) {
    var glass = new GlassByFormula(psi);
    assertThat(glass.tension() / MPA).isCloseTo(t, within(0.05));
    assertThat(glass.compression() / MPA).isCloseTo(c, within(0.05));
    assertThat(glass.flexure() / MPA).isCloseTo(f, within(0.05));
    assertThat(glass.shear() / MPA).isCloseTo(s, within(0.05));
    assertThat(glass.interlaminarShear() / MPA).isCloseTo(il, within(0.005));
    assertThat(glass.modulus() / MPA).isCloseTo(e, within(0.5));
    assertThat(glass.shearModulus() / MPA).isCloseTo(g, within(0.5));
  }

  /**
   * Kaw, examples 3.3 to 3.10: glass/epoxy at 70 % fibre: E1 60.52 GPa, E2 10.37 GPa (mixtures) and
   * 20.20 GPa (Halpin and Tsai), ν12 0.230, G12 4.014 GPa and 6.169 GPa; remembered.
   */
  @Test
  void glassAndEpoxyAtSeventyPerCent() {
    var glass = new Fibre("glass", 2500, 85 * GPA, 85 * GPA, 35.42 * GPA, 0.2);
    var epoxy = new Matrix("epoxy", 1200, 3.4 * GPA, 1.308 * GPA, 0.3);
    var mixed = Micromechanics.RULE_OF_MIXTURES.lamina("m", glass, epoxy, 0.7);
    assertThat(mixed.e1() / GPA).isCloseTo(60.52, within(0.005));
    assertThat(mixed.e2() / GPA).isCloseTo(10.37, within(0.005));
    assertThat(mixed.nu12()).isCloseTo(0.230, within(0.0005));
    assertThat(mixed.g12() / GPA).isCloseTo(4.014, within(0.005));
    assertThat(mixed.density()).isCloseTo(2110, within(0.5));
    var halpin = Micromechanics.HALPIN_TSAI.lamina("h", glass, epoxy, 0.7);
    assertThat(halpin.e2() / GPA).isCloseTo(20.20, within(0.006));
    assertThat(halpin.g12() / GPA).isCloseTo(6.169, within(0.02));
  }
}
