package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.BeamMaterial.Strength;
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
    return BeamMaterial.core("core", 80, modulus, shear, Strength.unknown());
  }

  private static Section sandwich(
      double width, BeamMaterial face, double skin, BeamMaterial core, double thick) {
    return LayeredSection.ofWidth(width)
        .layer(face, skin)
        .layer(core, thick)
        .layer(face, skin)
        .section();
  }

  /** Gere, Mechanics of Materials, examples 6-2 and 6-3 in several editions; remembered. */
  @Test
  void aluminiumFacesOnPlastic() {
    var section = sandwich(200 * MM, face(72 * GPA), 5 * MM, core(800 * MPA, 300 * MPA), 150 * MM);
    var bending = Bending.of(section);

    assertThat(bending.stiffness()).isCloseTo(910200, within(60.0));
    assertThat(bending.stresses(3000).get(0).atLower() / MPA).isCloseTo(19.0, within(0.05));
    assertThat(bending.stresses(3000).get(1).atLower() / MPA).isCloseTo(0.198, within(0.0005));
    // Without the core the book has 20.0 at the outer edge of the faces.
    double facesAlone = 2 * 72 * GPA * 0.2 * (Math.pow(0.080, 3) - Math.pow(0.075, 3)) / 3;
    assertThat(3000 * 0.080 * 72 * GPA / facesAlone / MPA).isCloseTo(20.0, within(0.05));
    double facesOnly = bending.stiffness() - 800 * MPA * 0.2 * Math.pow(0.150, 3) / 12;
    assertThat(facesOnly).isCloseTo(facesAlone, within(1e-4));
  }

  /**
   * Gere, Mechanics of Materials, 6th ed., 2004, problems 6.2-1, 6.2-5 and 6.2-6 with the answers
   * at the end of the book (inches and psi, then mm and MPa); remembered.
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
        Bending.of(sandwich(width, face(faces), skin, core(inside, inside / 3), thick))
            .stresses(moment);
    assertThat(stresses.get(0).atLower()).isCloseTo(inFace, within(faceDigit));
    assertThat(stresses.get(1).atLower()).isCloseTo(inCore, within(coreDigit));
  }

  /**
   * NAFEMS, Composites Benchmarks, R0031 test 1, issue of 17 December 1998: strip of seven plies on
   * two supports. Targets read: 684 MPa, 4.1 MPa, 1.06 mm.
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
    assertThat(bending.stresses(moment).get(0).atLower() / MPA).isCloseTo(683.9, within(0.05));
    var lowest =
        section.bonds().stream().min(Comparator.comparingDouble(b -> b.from().z())).orElseThrow();
    assertThat(bending.bondShear(lowest, 50) / MPA).isCloseTo(4.1, within(0.05));
    var deflection =
        BeamCase.SIMPLE_CENTRE.deflection(
            100, 30 * MM, bending.stiffness(), bending.shearStiffness());
    assertThat(deflection.total() / MM).isCloseTo(1.06, within(0.01));
    assertThat(deflection.shear() / MM).isBetween(0.0387, 0.04235);
  }

  /**
   * Lloyd's Register, Guidance Notes, Calculation Procedures for Composite Construction, July 2013,
   * chapter 4: sums of a strip 10 mm wide about its base; read. The ply table is not in the copy
   * read, so only the last step is checked.
   */
  @Test
  void movesTheSumsFromTheBaseToTheNeutralAxis() {
    double aboutBase = 1_510_439_396;
    double axial = 103_699 * 10;
    double neutral = 27.36;
    assertThat(aboutBase - axial * neutral * neutral).isCloseTo(734.2e6, within(0.05e6));
  }

  /**
   * Hexcel Composites, Honeycomb Sandwich Design Technology, AGU 075b, December 2000, pages 12 and
   * 13; remembered. The handbook leaves the bending of faces and core by themselves out.
   */
  @Test
  void honeycombUnderAnEvenLoad() {
    var section = sandwich(0.5, face(70 * GPA), 0.5 * MM, core(1, 220 * MPA), 25 * MM);
    var thin = section.thinFaces().orElseThrow();
    assertThat(thin.bendingStiffness()).isCloseTo(5690, within(0.5));
    double moment = BeamCase.SIMPLE_EVEN.moment(1500, 2);
    assertThat(thin.lowerFaceStress(moment) / MPA).isCloseTo(58.8, within(0.05));
    assertThat(thin.coreShear(750) / MPA).isCloseTo(0.059, within(0.0005));
    var exact = Bending.of(section);
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
    var shear = bending.shearStresses(500);
    double most =
        shear.stream()
            .filter(s -> s.where().equals("layer 2"))
            .mapToDouble(ShearStress::stress)
            .max()
            .orElseThrow();
    assertThat(most / MPA).isCloseTo(0.02334, within(0.000005));
    assertThat(bending.bondShear(section.bonds().get(0), 500) / MPA)
        .isCloseTo(0.02301, within(0.000005));
    assertThat(thin.coreShear(500) / MPA).isCloseTo(0.02326, within(0.000005));
    assertThat(bending.stresses(200).get(0).atLower() / MPA).isCloseTo(6.565, within(0.0005));
    assertThat(section.skins().get(0).buckling().orElseThrow() / MPA)
        .isCloseTo(137.9, within(0.05));
  }
}
