package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.BeamMaterial.Strength;
import kitwright.mechanics.laminate.Lamina;
import kitwright.mechanics.laminate.Laminate;
import kitwright.mechanics.laminate.Ply;
import kitwright.mechanics.laminate.Stiffness;
import kitwright.mechanics.load.BeamCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sandwich and layered beams from handbooks and benchmarks, to the digits printed. */
class SandwichPublishedTest {
  private static final double MM = 1e-3;
  private static final double MPA = 1e6;
  private static final double GPA = 1e9;

  private static BeamMaterial face(double modulus) {
    return BeamMaterial.of("face", Kind.METAL, 2700, modulus, modulus / 2.6, Strength.unknown());
  }

  private static BeamMaterial core(double modulus, double shear) {
    return Made.core("core", 80, modulus, shear, Strength.unknown());
  }

  private static Section sandwich(
      double width, BeamMaterial face, double skin, BeamMaterial core, double thick) {
    return LayeredSection.ofWidth(width)
        .layer(face, skin)
        .layer(core, thick)
        .layer(face, skin)
        .section();
  }

  /**
   * Gere, Mechanics of Materials, example 6-2, page 402: 18,984,838.497 and 197,758.734344 Pa, and
   * 19,972,260.749 Pa without the core, as the textbook companion prints them; read 2026-11-27 in
   * github FOSSEE/Python-Textbook-Companions, Mechanics_of_Materials_by_James_M._Gere,
   * chapter6.ipynb, commit d34b2ae7e5e6051f7c87531ebc73b154b082d05b. The book cuts to 19.0, 0.198
   * and 20.0 MPa and EI to 910,200 N·m²; those four are from memory.
   */
  @Test
  void aluminiumFacesOnPlastic() {
    var section = sandwich(200 * MM, face(72 * GPA), 5 * MM, core(800 * MPA, 300 * MPA), 150 * MM);
    var bending = Bending.of(section);

    assertThat(bending.stiffness()).isCloseTo(910200, within(50.0));
    var stresses = Stresses.of(bending.section(), 3000);
    assertThat(stresses.get(0).atLower()).isCloseTo(18984838.497, within(0.0005));
    assertThat(stresses.get(1).atLower()).isCloseTo(197758.734344, within(0.0000005));
    double facesAlone = 2 * 72 * GPA * 0.2 * (Math.pow(0.080, 3) - Math.pow(0.075, 3)) / 3;
    assertThat(3000 * 0.080 * 72 * GPA / facesAlone).isCloseTo(19972260.749, within(0.0005));
    double facesOnly = bending.stiffness() - 800 * MPA * 0.2 * Math.pow(0.150, 3) / 12;
    assertThat(facesOnly).isCloseTo(facesAlone, within(1e-4));
  }

  /**
   * Gere, Mechanics of Materials, problems 6.2-1, 6.2-5 and 6.2-6 of the 6th ed., 2004 (inches and
   * psi, then mm and MPa). The second is 6.2-7 of Gere and Goodno, 7th ed., read 2026-11-27 on page
   * 503 of the instructor's solutions; the others are from memory, of the third the question was
   * read there too (6.2-8), its answer not.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 0.10, 0.50, 4e6, 1.5e6, 250, 1980, 531, 5, 0.5",
    "8, 0.25, 5.5, 10.5e6, 12000, 40000, 3610, 4, 5, 0.5",
    "50, 4, 92, 75000, 1200, 275000, 14.1, 0.21, 0.05, 0.005"
  })
  void facesAndCoreOfTextbookSandwiches(
      double width,
      double skin,
      double thick,
      double faces,
      double inside,
      double moment,
      double inFace,
      double inCore,
      double faceDigit,
      double coreDigit) {
    var stresses =
        Stresses.of(sandwich(width, face(faces), skin, core(inside, inside / 3), thick), moment);
    assertThat(stresses.get(0).atLower()).isCloseTo(inFace, within(faceDigit));
    assertThat(stresses.get(1).atLower()).isCloseTo(inCore, within(coreDigit));
  }

  /** The workings of the second, from the same page: I1, I2, the sum of EI, and the faces alone. */
  @Test
  void aluminiumFacesOnFoamStepByStep() {
    var section = sandwich(8, face(10.5e6), 0.25, core(12000, 4000), 5.5);
    double inside = 8 * Math.pow(5.5, 3) / 12;
    double all = Bending.of(section).stiffness();
    assertThat(all).isCloseTo(348.7e6, within(0.05e6));
    assertThat(inside).isCloseTo(110.92, within(0.005));
    double faces = (all - 12000 * inside) / 10.5e6;
    assertThat(faces).isCloseTo(33.08, within(0.005));
    assertThat(40000 * 3 / faces).isCloseTo(3630, within(5.0));
  }

  /**
   * Gere and Goodno, 7th ed., problem 6.3-6: four strips of aluminium 3 mm thick with plastic of
   * 40, 120 and 40 mm between, 75 mm wide, under 1.0 kN·m; I of the plastic 52.934e6 and of all
   * 218.35e6 mm⁴ of plastic, 12.14 and 0.47 MPa. Page 514 of the same solutions, read 2026-11-27.
   */
  @Test
  void sevenLayersOfAluminiumAndPlastic() {
    var plastic = core(3 * GPA, GPA);
    var metal = face(75 * GPA);
    var section =
        LayeredSection.ofWidth(75 * MM)
            .layer(metal, 3 * MM)
            .layer(plastic, 40 * MM)
            .layer(metal, 3 * MM)
            .layer(plastic, 120 * MM)
            .layer(metal, 3 * MM)
            .layer(plastic, 40 * MM)
            .layer(metal, 3 * MM)
            .section();
    var bending = Bending.of(section);
    assertThat(bending.neutralAxis() / MM).isCloseTo(106, within(1e-9));
    assertThat(bending.stiffness() / (3 * GPA) * 1e12).isCloseTo(218.35e6, within(0.005e6));
    var stresses = Stresses.of(bending.section(), 1000);
    assertThat(stresses.get(0).atLower() / MPA).isCloseTo(12.14, within(0.005));
    assertThat(stresses.get(1).atLower() / MPA).isCloseTo(0.47, within(0.005));
  }

  /**
   * Pytel and Kiusalaas, Mechanics of Materials, example 9.2, page 351: wood 2 by 8 in with
   * aluminium 2 by 0.4 in above and below, 6,000 lb at a third of 72 in: 281 psi along the neutral
   * axis, 0.0968 in at the middle. Read 2026-11-27 in the companion named above,
   * Mechanics_of_Materials_by_Pytel_and_Kiusalaas, Chapter09_3.ipynb.
   */
  @Test
  void aluminiumFacesOnWood() {
    var bending = Bending.of(sandwich(2, face(1e7), 0.4, core(1.5e6, 1e5), 8));
    double most = Stresses.shear(bending.section(), 4000);
    assertThat(most).isCloseTo(281, within(0.5));
    double deflection = 6000 * 24 / (48 * bending.stiffness()) * (3 * 72 * 72 - 4 * 24 * 24);
    assertThat(deflection).isCloseTo(0.0968, within(0.00005));
  }

  /**
   * B. K. Sarkar, Strength of Materials, problem 5.12, page 133: timber 200 by 300 mm between steel
   * plates 200 by 12 mm, 220 against 11 GPa, allowed 115 and 9.2 MPa: the steel governs at
   * 98,935.78 N·m. Read 2026-11-27 in the same companion, Strength_Of_Materials_by_B_K_Sarkar,
   * Chapter05.ipynb.
   */
  @Test
  void steelFacesOnTimberByTheAllowedMoment() {
    var bending =
        Bending.of(sandwich(200 * MM, face(220 * GPA), 12 * MM, core(11 * GPA, GPA), 300 * MM));
    double steel = 115 * MPA * bending.stiffness() / (220 * GPA * 162 * MM);
    double timber = 9.2 * MPA * bending.stiffness() / (11 * GPA * 150 * MM);
    assertThat(Math.min(steel, timber)).isCloseTo(98935.78, within(0.005));
    assertThat(Stresses.of(bending.section(), 98935.78).get(0).atLower() / MPA)
        .isCloseTo(115, within(0.00001));
  }

  /**
   * A bending panel after ASTM C393 and Allen, worked by hand in github
   * khizarsiddiqui2/Sandwich-Panel-Flexure-Validation-Study, README; read 2026-11-27. Faces of 0.39
   * mm and 68,000 MPa on 10 mm of 70 and 24 MPa: wrinkling at 242 MPa by Hoff and Mautner. Its core
   * shear of 0.654 MPa under 500 N on 75 mm takes 10.195 mm between the faces, one ply and not one
   * face more than the core; by its own words ("core + one skin thickness") d is 10.39 mm and the
   * shear 0.642 MPa. A disagreement of the source with itself: both are checked.
   */
  @Test
  void wrinklingOfCarbonFacesOnFoam() {
    var foam = core(70 * MPA, 24 * MPA);
    var section = sandwich(75 * MM, face(68 * GPA), 0.39 * MM, foam, 10 * MM);
    // Half of 485.2 is 242.6; the source writes half of 485 and cuts it to 242.
    assertThat(section.skins().get(0).buckling().orElseThrow() / MPA).isBetween(242.0, 243.0);
    var thin = section.thinFaces().orElseThrow();
    assertThat(thin.spacing() / MM).isCloseTo(10.39, within(1e-9));
    double theirs = 500 / (75 * 10.195);
    assertThat(theirs).isCloseTo(0.654, within(0.0005));
    assertThat(coreShear(Bending.of(section), 500))
        .isCloseTo(0.642, within(0.001)); // of thin faces
  }

  /**
   * NAFEMS, Composites Benchmarks, R0031 test 1, issue of 17 December 1998: strip of seven plies on
   * two supports. Targets 683.9 MPa, 4.1 MPa, 1.06 mm, read 2026-11-27 with the data at
   * help.altair.com, OptiStruct verification OS-V:0500.
   */
  @Test
  void stripOfSevenPlies() {
    var along = BeamMaterial.of("0", Kind.LAMINATE, 1600, 100 * GPA, 2 * GPA, Strength.unknown());
    var across = BeamMaterial.of("90", Kind.LAMINATE, 1600, 5 * GPA, 2 * GPA, Strength.unknown());
    var stack = LayeredSection.ofWidth(10 * MM);
    double[] plies = {0.1, 0.1, 0.1, 0.4, 0.1, 0.1, 0.1};
    for (int i = 0; i < plies.length; i++) {
      stack.layer(i % 2 == 0 ? along : across, plies[i] * MM);
    }
    var section = stack.section();
    var bending = Bending.of(section);

    double moment = BeamCase.SIMPLE_CENTRE.moment(100, 30 * MM);
    assertThat(Stresses.of(bending.section(), moment).get(0).atLower() / MPA)
        .isCloseTo(683.9, within(0.05));
    var lowest =
        section.bonds().stream().min(Comparator.comparingDouble(b -> b.from().z())).orElseThrow();
    assertThat(Stresses.shear(bending.section(), lowest.where(), 50) / MPA)
        .isCloseTo(4.1, within(0.05));
    var deflection =
        BeamCase.SIMPLE_CENTRE.deflection(
            100, 30 * MM, bending.stiffness(), bending.shearStiffness());
    // A second reckoning, by summing the shear energy over 200,000 slices.
    assertThat(deflection.shear() / MM).isCloseTo(0.042337, within(0.0000005));
    // By laminate theory, where the plies hold each other across: b/d11 in place of EI.
    double held = 100 * Math.pow(30 * MM, 3) / 48 * stripLaminate(plies).inverse().d(1, 1) / 0.01;
    assertThat((held + deflection.shear()) / MM).isCloseTo(1.06, within(0.005));
    // A beam leaves that out and comes to 1.068 mm: softer, by less than 1/(1 - ν12·ν21) of a ply.
    assertThat(deflection.bending() / held).isBetween(1.0, 1 / (1 - 0.4 * 0.02));
  }

  private static Stiffness stripLaminate(double[] plies) {
    var ud = new Lamina("ud", 100 * GPA, 5 * GPA, 3 * GPA, 0.4, 1600, Optional.empty());
    return new Laminate(
            IntStream.range(0, plies.length)
                .mapToObj(i -> new Ply(ud, plies[i] * MM, i % 2 == 0 ? 0 : 90))
                .toList())
        .stiffness();
  }

  /**
   * Lloyd's Register, Guidance Notes, Calculation Procedures for Composite Construction, July 2013,
   * chapter 4: sums of a strip 10 mm wide about its base, EA 103,699 · 10 N, EI 1,510,439,396
   * N·mm², neutral axis at 27.36 mm, EI about it 734.2e6 N·mm²; read. The ply table behind the sums
   * is in no copy that could be read, so an end-to-end check is not possible: two thin strips with
   * the same three sums stand for the plies, and the test proves only the shift to the neutral
   * axis.
   */
  @Test
  void movesTheSumsFromTheBaseToTheNeutralAxis() {
    double aboutBase = 1_510_439_396;
    double axial = 103_699 * 10;
    double neutral = 27.36;
    double apart = Math.sqrt(aboutBase / axial - neutral * neutral);
    double thin = 0.001;
    var strip = face(axial / 2 / (10 * thin));
    var nothing = core(1e-6, 1e-6);
    var section =
        LayeredSection.ofWidth(10)
            .layer(nothing, neutral - apart - thin / 2)
            .layer(strip, thin)
            .layer(nothing, 2 * apart - thin)
            .layer(strip, thin)
            .section();
    var bending = Bending.of(section);
    assertThat(bending.neutralAxis()).isCloseTo(neutral, within(0.005));
    assertThat(bending.stiffness()).isCloseTo(734.2e6, within(0.05e6));
    // Its panel of 700 mm under 0.05 N/mm², a strip of 1 mm held at both ends; reckoned by hand.
    assertThat(BeamCase.FIXED_EVEN.moment(0.05 * 700, 700)).isCloseTo(2041.7, within(0.05));
    assertThat(BeamCase.FIXED_EVEN.shear(0.05 * 700)).isCloseTo(17.5, within(1e-9));
  }

  /**
   * Hexcel Composites, Honeycomb Sandwich Design Technology, AGU 075b, December 2000, pages 12 and
   * 13; from memory. The handbook leaves the bending of faces and core by themselves out.
   */
  @Test
  void honeycombUnderAnEvenLoad() {
    var section = sandwich(0.5, face(70 * GPA), 0.5 * MM, core(1, 220 * MPA), 25 * MM);
    var thin = section.thinFaces().orElseThrow();
    assertThat(thin.bendingStiffness()).isCloseTo(5690, within(0.5));
    double moment = BeamCase.SIMPLE_EVEN.moment(1500, 2);
    var exact = Bending.of(section);
    var face = Stresses.of(exact.section(), moment).get(0); // the handbook’s is that of its middle
    assertThat((face.atLower() + face.atUpper()) / 2 / MPA).isCloseTo(58.8, within(0.05));
    assertThat(coreShear(exact, 750)).isCloseTo(0.059, within(0.0005));
    var deflection =
        BeamCase.SIMPLE_EVEN.deflection(1500, 2, exact.stiffness(), exact.shearStiffness());
    assertThat(deflection.bending() / MM).isCloseTo(27.46, within(0.02));
    assertThat(deflection.shear() / MM).isCloseTo(0.13, within(0.005));
  }

  /** Reckoned by an independent script, not published. */
  @Test
  void glassFacesOnFoam() {
    var section = sandwich(1, face(15 * GPA), 1.5 * MM, core(70 * MPA, 20 * MPA), 20 * MM);
    var bending = Bending.of(section);
    assertThat(bending.stiffness()).isCloseTo(5255.42, within(0.01));
    var thin = section.thinFaces().orElseThrow();
    assertThat(thin.bendingStiffness()).isCloseTo(5200.31, within(0.01));
    assertThat(thin.shearStiffness()).isCloseTo(462250, within(1.0));
    assertThat(bending.shearStiffness()).isCloseTo(462250, within(1500.0));
    assertThat(coreShear(bending, 500)).isCloseTo(0.02334, within(0.000005));
    assertThat(Stresses.shear(section, section.bonds().get(0).where(), 500) / MPA)
        .isCloseTo(0.02301, within(0.000005));
    assertThat(Stresses.of(bending.section(), 200).get(0).atLower() / MPA)
        .isCloseTo(6.565, within(0.0005));
    assertThat(section.skins().get(0).buckling().orElseThrow() / MPA)
        .isCloseTo(137.9, within(0.05));
    var deflection =
        BeamCase.SIMPLE_CENTRE.deflection(1000, 0.8, bending.stiffness(), thin.shearStiffness());
    assertThat(deflection.bending() / MM).isCloseTo(2.0297, within(0.00005));
    assertThat(deflection.shear() / MM).isCloseTo(0.4327, within(0.00005));
  }

  /** The greatest in the core, MPa. */
  private static double coreShear(Bending bending, double force) {
    return Stresses.shear(bending.section(), "layer 2", force) / MPA;
  }
}
