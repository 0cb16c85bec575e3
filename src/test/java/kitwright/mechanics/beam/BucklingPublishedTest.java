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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Walls and flanges. Sources: NASA SP-8007 (1968) by way of public code that quotes it (axial and
 * bending factors, read 2026-11-29) and its revision of 2020 (determinant, read 2026-11-30); S. P.
 * Timoshenko, J. M. Gere, Theory of Elastic Stability, p. 229, as ansys/pymapdl vm309.dat has it
 * (targets read 2026-11-29); Wood Handbook FPL-GTR-282, eq. 9-31 (read in a public transcription);
 * A. Johnson, Structural Component Design Techniques, 6.2.
 */
class BucklingPublishedTest {
  private static final double MPA = 1e6;

  private static BeamMaterial isotropic(double e, double nu) {
    double g = e / 2 / (1 + nu);
    var elastic = new Elastic(e, g, OptionalDouble.empty(), Optional.of(new Flat(e, nu, g)));
    return new BeamMaterial("stuff", Kind.METAL, 2700, elastic, Made.strength(1e12, 1e12, 1e12));
  }

  private static Skin skin(BeamMaterial stuff, double thickness, Support support) {
    return Skin.of(List.of(0), List.of(new Skin.Leaf(stuff, thickness)), support);
  }

  /**
   * Aluminium tube 300 by 0.5 mm, E 70 GPa, ν 0.3: r/t 299.5, γ 0.5168, 73.1 of 141.4 MPa, and
   * π·r²·t times that 2574 N·m; 2571 here with the tube's own second moment.
   */
  @Test
  void aThinTubeInBendingBucklesLongBeforeItYields() {
    var tube = Shapes.tube(isotropic(70_000 * MPA, 0.3), 0.300, 0.0005);
    var limit = Bending.of(tube).moment(Sense.SAGGING).governing().orElseThrow();
    assertThat(limit.mode()).isEqualTo(FailureMode.WALL_BUCKLING);
    assertThat(limit.allowable() / MPA).isCloseTo(73.1, within(0.05));
    assertThat(limit.capacity()).isCloseTo(2574, within(5.0));
  }

  /**
   * The table of factors at r/t 100 and 500: γ 0.5813 and 0.3217 pushed evenly, 0.6603 and 0.4497
   * bent.
   */
  @Test
  void aTubePushedEvenlyBucklesSooner() {
    double whole = 70_000 * MPA / 100 / Math.sqrt(3 * (1 - 0.09));
    Skin hundred = skin(isotropic(70_000 * MPA, 0.3), 0.001, new Support.Round(0.1));
    assertThat(hundred.axialBuckling().orElseThrow() / whole).isCloseTo(0.5813, within(1e-4));
    assertThat(hundred.buckling().orElseThrow() / whole).isCloseTo(0.6603, within(1e-4));
    Skin thinner = skin(isotropic(70_000 * MPA, 0.3), 0.0002, new Support.Round(0.1));
    assertThat(thinner.axialBuckling().orElseThrow() / whole * 5).isCloseTo(0.3217, within(1e-4));
    assertThat(thinner.buckling().orElseThrow() / whole * 5).isCloseTo(0.4497, within(1e-4));
  }

  /**
   * Against the determinant of NASA SP-8007 (2020 rev.), 4.1.2, searched over waves along and
   * round: a wall the same every way, one weak in shear, which folds at less than half of what
   * rings of waves would take, wood, carbon along, a woven cloth, and one stiff in shear.
   */
  @ParameterizedTest
  @CsvSource({
    "70, 70, 0.3, 26.9230769, 100, 1",
    "30, 10, 0.3, 1.5, 100, 2",
    "10, 0.333333, 0.4, 0.625, 50, 10",
    "130, 9, 0.3, 4.5, 60, 2",
    "20, 20, 0.13, 3, 100, 2",
    "10, 10, 0.7, 10, 100, 2"
  })
  void aWallUnlikeAlongAndAcrossBucklesAsTheDeterminantSays(
      double along, double across, double poisson, double shear, double radius, double thick) {
    double r = radius / 1000;
    double t = thick / 1000;
    var flat = new Flat(across * 1e9, poisson, shear * 1e9);
    var elastic = new Elastic(along * 1e9, shear * 1e9, OptionalDouble.empty(), Optional.of(flat));
    var stuff =
        new BeamMaterial("wall", BeamMaterial.Kind.TIMBER, 500, elastic, Made.strength(1, 1, 1));
    double knock = 1 - 0.901 * (1 - Math.exp(-Math.sqrt(r / t) / 16));
    double ours = skin(stuff, t, new Support.Round(r)).axialBuckling().orElseThrow() / knock;
    double theirs = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 400; i++) {
      for (int j = -1; j <= 400; j++) {
        double a = 0.05 * Math.pow(100, i / 400.0) / Math.sqrt(r * t);
        double b = j < 0 ? 0 : 0.05 * Math.pow(100, j / 400.0) / Math.sqrt(r * t);
        theirs = Math.min(theirs, wave(elastic.axial() * t, flat, r, t, a, b) / t);
      }
    }
    assertThat(ours / theirs).isCloseTo(1, within(2e-4));
  }

  /** N of one wave, a along and b round, by the determinant. */
  private static double wave(double ex, Flat flat, double r, double t, double a, double b) {
    double both = 1 - flat.poisson() * flat.poisson() * flat.across() * t / ex;
    double bent = t * t / 12;
    double x = ex / both;
    double y = flat.across() * t / both;
    double xy = flat.poisson() * y;
    double g = flat.shear() * t;
    double a11 = x * a * a + g * b * b;
    double a22 = y * b * b + g * a * a;
    double a33 =
        bent * (x * Math.pow(a, 4) + (2 * xy + 4 * g) * a * a * b * b + y * Math.pow(b, 4))
            + y / r / r;
    double a12 = (xy + g) * a * b;
    double a23 = y / r * b;
    double a13 = xy / r * a;
    double whole =
        a11 * (a22 * a33 - a23 * a23)
            - a12 * (a12 * a33 - a23 * a13)
            + a13 * (a12 * a23 - a22 * a13);
    return whole / (a11 * a22 - a12 * a12) / a / a;
  }

  @Test
  void aTubeThinnerThanTheRuleReachesIsNotTold() {
    var tube = Shapes.tube(isotropic(70_000 * MPA, 0.3), 1.0, 0.0003);
    assertThat(Bending.of(tube).moment(Sense.SAGGING).missing())
        .anyMatch(missing -> missing.property() == Missing.Property.WALL);
  }

  /**
   * Cruciform column of four flanges 8 by 0.4, E 21 000, G 8077: it twists at 261.8 by elements, of
   * which 258.46 is G·(t/b)² times the area 12.8 and the rest warping of the length.
   */
  @Test
  void aFreeFlangeTwistsAtTheStressOfTheCruciformColumn() {
    var stuff = isotropic(21_000, 0.3);
    double stress = skin(stuff, 0.4, new Support.Outstanding(8)).buckling().orElseThrow();
    assertThat(stress * 4 * 8 * 0.4).isCloseTo(258.46, within(0.02));
    assertThat(stress * 4 * 8 * 0.4).isCloseTo(261.792, within(0.013 * 261.792));
  }

  /** fcr = 0.044·E·t²/b². */
  @Test
  void aFlangeOfWoodIsHeldToWhatWasTested() {
    var spruce = BeamMaterial.of("spruce", Kind.TIMBER, 400, 10e9, 0.6e9, Made.ofTimber(70, 38, 8));
    double stress = skin(spruce, 0.01, new Support.Outstanding(0.1)).buckling().orElseThrow();
    assertThat(stress).isCloseTo(0.044 * 10e9 * 0.01, within(1.0));
  }

  /** A long plate that is the same every way has k = 4 in k·π²·E/(12·(1 − ν²))·(t/b)². */
  @Test
  void aPlateThatIsTheSameEveryWayHasTheCoefficientFour() {
    double stress =
        skin(isotropic(200e9, 0.3), 0.002, new Support.OverGap(0.2)).buckling().orElseThrow();
    double plate = Math.PI * Math.PI * 200e9 / 12 / 0.91 * 0.01 * 0.01;
    assertThat(stress / plate).isCloseTo(4, within(1e-9));
  }

  /** Spruce, E/30 across and E/16 in shear: 2·(π/b)²·(√(D₁₁·D₂₂) + D₁₂ + 2·D₆₆)/t by hand. */
  @Test
  void aWallOfWoodBucklesAtAQuarterOfThat() {
    double e = 10e9;
    var elastic =
        new Elastic(e, e / 16, OptionalDouble.empty(), Optional.of(new Flat(e / 30, 0, e / 16)));
    var wood = new BeamMaterial("wood", Kind.TIMBER, 400, elastic, Strength.unknown());
    double stress = skin(wood, 0.002, new Support.OverGap(0.2)).buckling().orElseThrow();
    double byHand = 2 * Math.PI * Math.PI * 1e-4 / 12 * (e / Math.sqrt(30) + e / 8);
    assertThat(stress).isCloseTo(byHand, within(1e-6 * byHand));
    assertThat(byHand / (Math.PI * Math.PI * e / 12 * 1e-4)).isCloseTo(0.615, within(0.001));
  }

  @Test
  void anIBeamHasTwoFlangesThatStandOut() {
    var beam = Shapes.iBeam(isotropic(70e9, 0.3), 0.2, 0.1, 0.004, 0.002);
    assertThat(beam.skins()).hasSize(2);
    assertThat(beam.skins().get(0).support()).isEqualTo(new Support.Outstanding(0.098));
    assertThat(Bending.of(beam).moment(Sense.SAGGING).governing().orElseThrow().mode())
        .isEqualTo(FailureMode.FLANGE_BUCKLING);
  }

  /** A wall whose moduli are not the same both ways: E along, across, Poisson's ratio, shear. */
  private static Skin wall(double along, double across, double poisson, double shear, Support by) {
    var flat = Optional.of(new Flat(across, poisson, shear));
    var elastic = new Elastic(along, shear, OptionalDouble.empty(), flat);
    return skin(
        new BeamMaterial("wall", Kind.LAMINATE, 1500, elastic, Strength.unknown()), 0.002, by);
  }

  /** The least of D₁₁·a² + 2·(D₁₂ + 2·D₆₆)·b² + D₂₂·b⁴/a² over the half waves a, b = π/width. */
  @Test
  void aLongPlateBucklesAtTheLeastOverAllWaves() {
    double[] one = {120e9, 8e9, 0.3, 4.5e9};
    var plate = wall(one[0], one[1], one[2], one[3], new Support.OverGap(0.2));
    double both = 1 - 0.09 * 8 / 120;
    double cube = 0.002 * 0.002 * 0.002 / 12;
    double b2 = Math.pow(Math.PI / 0.2, 2);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i <= 4000; i++) {
      double a2 = Math.pow(Math.PI / (0.0005 * i), 2);
      least =
          Math.min(
              least,
              120e9 * cube / both * a2
                  + 2 * (0.3 * 8e9 * cube / both + 2 * 4.5e9 * cube) * b2
                  + 8e9 * cube / both * b2 * b2 / a2);
    }
    assertThat(plate.buckling().orElseThrow() * 0.002).isCloseTo(least, within(1e-4 * least));
  }

  /** A T upside down with two webs and a narrower flange on top of one of them. */
  @Test
  void whatStandsOutIsFoundWhereverItIs() {
    var stuff = shaped();
    var wide = Strip.of(0.1, stuff);
    var webs =
        List.of(
            Strip.gap(0.02),
            Strip.of(0.01, stuff),
            Strip.gap(0.03),
            Strip.of(0.01, stuff),
            Strip.gap(0.03));
    var cap = List.of(Strip.gap(0.01), Strip.of(0.04, stuff), Strip.gap(0.05));
    var section =
        LayeredSection.ofWidth(0.1)
            .strips(0.005, List.of(wide))
            .strips(0.08, webs)
            .strips(0.004, cap)
            .section();
    assertThat(section.skins().stream().map(skin -> skin.plies() + " " + held(skin)))
        .containsExactlyInAnyOrder(
            "[0] out 0.020", // the lower flange beyond its webs
            "[0] out 0.030",
            "[0] gap 0.030", // and between them
            "[3] out 0.010", // the cap beyond the one web that carries it
            "[3] out 0.020",
            "[3] gap 0.030", // the gap is not closed by it: on the safe side
            "[2] out 0.080"); // the web with nothing on it
  }

  private static String held(Skin skin) {
    return skin.support() instanceof Support.Outstanding out
        ? String.format(java.util.Locale.ROOT, "out %.3f", out.width())
        : String.format(
            java.util.Locale.ROOT, "gap %.3f", ((Support.OverGap) skin.support()).width());
  }

  private static BeamMaterial shaped() {
    return BeamMaterial.of(
        "stuff", BeamMaterial.Kind.METAL, 2700, 70e9, 27e9, BeamMaterial.Strength.unknown());
  }

  /** A stack of two is no softer in torsion than one of the softer, nor stiffer than known. */
  @Test
  void theLeastTorsionOfAStackIsThatOfItsSoftestLayer() {
    var soft =
        BeamMaterial.of(
            "soft", BeamMaterial.Kind.TIMBER, 400, 8e9, 0.5e9, BeamMaterial.Strength.unknown());
    var stack = LayeredSection.ofWidth(0.02).layer(shaped(), 0.06).layer(soft, 0.03).section();
    assertThat(stack.torsion()).isEmpty();
    assertThat(stack.torsionAtLeast().orElseThrow())
        .isEqualTo(
            Math.max(
                0.5e9 * Torsion.rectangle(0.02, 0.09),
                27e9 * Torsion.rectangle(0.02, 0.06) + 0.5e9 * Torsion.rectangle(0.02, 0.03)));
    var whole = Shapes.rectangle(soft, 0.02, 0.09);
    assertThat(whole.torsionAtLeast()).isEqualTo(whole.torsion());
    var thin = LayeredSection.ofWidth(0.1).layer(soft, 0.01).layer(shaped(), 0.0001).section();
    assertThat(thin.torsionAtLeast().orElseThrow())
        .isCloseTo(0.5e9 * Torsion.rectangle(0.1, 0.0101), within(1e-6));
    assertThat(Shapes.polygon(soft, triangle()).torsionAtLeast()).isEmpty();
  }

  private static Loop triangle() {
    return new Loop(List.of(new Point(0, 0), new Point(1, 0), new Point(0, 1)));
  }
}
