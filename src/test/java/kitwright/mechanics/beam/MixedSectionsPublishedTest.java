package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.BeamMaterial.Strength;
import kitwright.mechanics.load.BeamCase;
import org.junit.jupiter.api.Test;

/**
 * Beams of two or three materials from textbooks, to the digits printed. "Read" means the numbers
 * were read in a copy of the source; "remembered" that they were not, but agree with a second
 * reckoning by hand.
 */
class MixedSectionsPublishedTest {
  private static final double MM = 1e-3;
  private static final double MPA = 1e6;
  private static final double GPA = 1e9;
  private static final double INCH = 0.0254;
  private static final double PSI = 6894.757293168;
  private static final double KSI = 1000 * PSI;
  private static final double POUND = 4.4482216152605;

  private static BeamMaterial stuff(String name, Kind kind, double modulus) {
    return BeamMaterial.of(name, kind, 1000, modulus, modulus / 3, Strength.unknown());
  }

  private static BeamMaterial wood(double modulus) {
    return stuff("wood", Kind.TIMBER, modulus);
  }

  private static BeamMaterial steel(double modulus) {
    return stuff("steel", Kind.METAL, modulus);
  }

  /** Goodno and Gere, Mechanics of Materials, 9th ed., example with a steel plate; read in part. */
  @Test
  void woodOnASteelPlate() {
    var section =
        LayeredSection.ofWidth(4 * INCH)
            .layer(steel(30000 * KSI), 0.5 * INCH)
            .layer(wood(1500 * KSI), 6 * INCH)
            .section();
    var bending = Bending.of(section);

    double fromTop = 6.5 * INCH - bending.neutralAxis();
    assertThat(fromTop / INCH).isCloseTo(5.031, within(0.0005));
    assertThat(bending.neutralAxis() / INCH).isCloseTo(1.469, within(0.0005));
    var stresses = bending.stresses(60000 * INCH * POUND);
    assertThat(stresses.get(1).atUpper() / PSI).isCloseTo(-1310, within(10.0));
    assertThat(stresses.get(1).atLower() / PSI).isCloseTo(251, within(0.5));
    assertThat(stresses.get(0).atUpper() / PSI).isCloseTo(5030, within(5.0));
    assertThat(stresses.get(0).atLower() / PSI).isCloseTo(7620, within(5.0));
  }

  /** Singer, Strength of Materials, problems 1005 and 1007; read, plate size inferred. */
  @Test
  void timberWithAPlateBelowByItsAllowableLoad() {
    var fibre =
        new Strength(OptionalDouble.of(1200 * PSI), OptionalDouble.of(1200 * PSI), no(), no());
    var plate =
        new Strength(OptionalDouble.of(18000 * PSI), OptionalDouble.of(18000 * PSI), no(), no());
    var section =
        LayeredSection.ofWidth(6 * INCH)
            .narrow(with(steel(20 * 1500 * KSI), plate), 0.5 * INCH, 4 * INCH)
            .layer(with(wood(1500 * KSI), fibre), 10 * INCH)
            .section();
    var bending = Bending.of(section);

    assertThat((10.5 * INCH - bending.neutralAxis()) / INCH).isCloseTo(7.1, within(0.05));
    double inertia = bending.stiffness() / (1500 * KSI) / Math.pow(INCH, 4);
    assertThat(inertia).isCloseTo(1160, within(5.0));

    var governing = bending.moment(Sense.SAGGING).governing().orElseThrow();
    assertThat(governing.mode()).isEqualTo(FailureMode.COMPRESSION);
    assertThat(governing.where()).isEqualTo("layer 2");
    double load = governing.capacity() / (18 * 12 * INCH) * 4 / POUND;
    assertThat(load).isCloseTo(3631, within(10.0));

    double moment = BeamCase.SIMPLE_EVEN.moment(300 * 20 * POUND, 20 * 12 * INCH);
    assertThat(-bending.stresses(moment).get(1).atUpper() / PSI).isCloseTo(1102, within(3.0));
    assertThat(bending.stresses(moment).get(0).atLower() / PSI).isCloseTo(10552, within(30.0));
  }

  /**
   * Singer, problems 1008 and 1009, inputs read, answers reckoned a second time: the governing
   * material changes from one to the other.
   */
  @Test
  void platesAboveAndBelowUntilTheyAreWideEnough() {
    assertThat(plated(94.57, 250, 10, 15, 10, 120, "steel") / 1000).isCloseTo(40, within(0.01));
    assertThat(plated(62.82, 200, 6, 5, 10, 80, "wood") / 1000).isCloseTo(14, within(0.01));
  }

  private static double plated(
      double wide,
      double deep,
      double plate,
      double ratio,
      double inWood,
      double inMetal,
      String material) {
    var timber = with(wood(10 * GPA), Strength.of(inWood * MPA, inWood * MPA, MPA));
    var metal = with(steel(ratio * 10 * GPA), Strength.of(inMetal * MPA, inMetal * MPA, MPA));
    var capacity =
        Bending.of(
                LayeredSection.ofWidth(150 * MM)
                    .narrow(metal, plate * MM, wide * MM)
                    .layer(timber, deep * MM)
                    .narrow(metal, plate * MM, wide * MM)
                    .section())
            .moment(Sense.SAGGING);
    var governing = capacity.governing().orElseThrow();
    assertThat(governing.where().equals("layer 2") ? "wood" : "steel").isEqualTo(material);
    return governing.capacity();
  }

  /** Hibbeler, Mechanics of Materials, wood with a steel strap; remembered. */
  @Test
  void woodWithASteelStrap() {
    var bending =
        Bending.of(
            LayeredSection.ofWidth(150 * MM)
                .layer(steel(200 * GPA), 20 * MM)
                .layer(wood(12 * GPA), 150 * MM)
                .section());
    assertThat(bending.neutralAxis() / MM).isCloseTo(36.38, within(0.005));
    assertThat(bending.stiffness() / (200 * GPA) * 1e12).isCloseTo(9.358e6, within(0.001e6));
    var stresses = bending.stresses(2000);
    assertThat(stresses.get(0).atLower() / MPA).isCloseTo(7.78, within(0.006));
    assertThat(-stresses.get(1).atUpper() / MPA).isCloseTo(1.71, within(0.005));
  }

  /** Lecture example CIVN2009, transformed sections: aluminium, timber, steel strip; read. */
  @Test
  void threeMaterials() {
    var timber = wood(6 * GPA);
    var bending =
        Bending.of(
            LayeredSection.ofWidth(90 * MM)
                .strips(
                    30 * MM,
                    List.of(
                        Strip.of(40 * MM, timber),
                        Strip.of(10 * MM, steel(210 * GPA)),
                        Strip.of(40 * MM, timber)))
                .layer(timber, 75 * MM)
                .layer(stuff("aluminium", Kind.METAL, 70 * GPA), 15 * MM)
                .section());
    assertThat(bending.neutralAxis() / MM).isCloseTo(68.4, within(0.05));
    assertThat(bending.stiffness() / (6 * GPA) * 1e12).isCloseTo(7.19e7, within(0.005e7 + 1e4));
    double moment = BeamCase.SIMPLE_CENTRE.moment(10000, 3);
    assertThat(bending.stresses(moment).get(0).atLower() / MPA).isCloseTo(7.14, within(0.005));
  }

  /**
   * Steel plate 200 x 8 mm on timber 140 x 400 mm, M 30 kN·m; table of answers read at
   * transtutors.com question 13676926.
   */
  @Test
  void steelPlateOnTopOfTimber() {
    var bending =
        Bending.of(
            LayeredSection.ofWidth(200 * MM)
                .narrow(wood(12.5 * GPA), 400 * MM, 140 * MM)
                .layer(steel(200 * GPA), 8 * MM)
                .section());
    var stresses = bending.stresses(30000);
    assertThat(stresses.get(0).atLower() / MPA).isCloseTo(5.36, within(0.005));
    assertThat(-stresses.get(0).atUpper() / MPA).isCloseTo(2.76, within(0.005));
    assertThat(-stresses.get(1).atUpper() / MPA).isCloseTo(46.8, within(0.05));
  }

  /**
   * Beer, Johnston, DeWolf and Mazurek, Mechanics of Materials, 6th ed., sample problem 4.3: a
   * steel T between two oak timbers; remembered. The book rounds I to 2.19e-3 first.
   */
  @Test
  void steelTeeBetweenOakTimbers() {
    var oak = wood(12.5 * GPA);
    var steel = steel(200 * GPA);
    var bending =
        Bending.of(
            LayeredSection.ofWidth(200 * MM)
                .layer(steel, 20 * MM)
                .strips(
                    300 * MM,
                    List.of(
                        Strip.gap(15 * MM),
                        Strip.of(75 * MM, oak),
                        Strip.of(20 * MM, steel),
                        Strip.of(75 * MM, oak),
                        Strip.gap(15 * MM)))
                .section());
    assertThat(bending.stiffness() / (12.5 * GPA)).isCloseTo(2.19e-3, within(0.005e-3));
    var stresses = bending.stresses(50000);
    assertThat(-stresses.get(1).atUpper() / MPA).isCloseTo(4.57, within(0.01));
    assertThat(stresses.get(0).atLower() / MPA).isCloseTo(43.8, within(0.15));
  }

  /** The same book, example 4.03: brass, steel and brass side by side, M 40 kip·in; remembered. */
  @Test
  void brassAndSteelSideBySide() {
    var brass = stuff("brass", Kind.METAL, 15e6 * PSI);
    var bending =
        Bending.of(
            LayeredSection.ofWidth(1.55 * INCH)
                .strips(
                    3 * INCH,
                    List.of(
                        Strip.of(0.4 * INCH, brass),
                        Strip.of(0.75 * INCH, steel(29e6 * PSI)),
                        Strip.of(0.4 * INCH, brass)))
                .section());
    assertThat(bending.stiffness() / (15e6 * PSI) / Math.pow(INCH, 4))
        .isCloseTo(5.063, within(0.001));
    var stresses = bending.stresses(40000 * INCH * POUND);
    assertThat(stresses.get(0).atLower() / KSI).isCloseTo(11.85, within(0.005));
    assertThat(stresses.get(1).atLower() / KSI).isCloseTo(22.9, within(0.05));
  }

  private static BeamMaterial with(BeamMaterial m, Strength strength) {
    return new BeamMaterial(m.name(), m.kind(), m.density(), m.elastic(), strength);
  }

  private static OptionalDouble no() {
    return OptionalDouble.empty();
  }
}
