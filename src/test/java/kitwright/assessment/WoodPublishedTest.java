package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import kitwright.assessment.sheet.Measure;
import org.junit.jupiter.api.Test;

/**
 * Wood by what a sheet prints. Sources, read 2026-11-29: CLT Handbook, Canadian edition, 8.5.10,
 * and PRG 320, as cslotboom/limitstates test_section_clt_3_prg.py and test_design_clt.py have them;
 * Y. Benoit, B. Legrand, V. Tastet, Calcul de structures en bois, ex. 2.3.1, as xcfem/xc
 * timber_beam_test_01.py has it; S. Timoshenko, Theory of Elasticity, art. 20, as ansys/pymapdl
 * vm78.dat has it.
 */
class WoodPublishedTest {
  /** Grade E1: along 11 700 and 731 MPa; the cross layers are 9000/30 and 731/13 MPa across. */
  private static final String CROSSED =
      """
      materials:
        - {id: l, kind: timber, density: 500 kg/m3, E: 11700 MPa, G: 731 MPa, bending-strength: 28.2 MPa, compressive-strength: 19.3 MPa, tensile-strength: 15.4 MPa, shear-strength: 50 MPa, source: PRG 320}
        - {id: x, kind: timber, density: 500 kg/m3, E: 9000 MPa, E-across: 300 MPa, G: 731 MPa, G-across: 56.2308 MPa, tensile-strength-across: 5 MPa, compressive-strength-across: 5 MPa, shear-strength: 50 MPa, shear-strength-across: 0.5 MPa, source: PRG 320}
      sections:
        - {id: s, width: 1 m, layers: [%s]}
      assessments:
        - {id: a, method: section, designed: s, built: s, require: {stiffness: 1, shear-stiffness: 1, shear: 1}}
      """;

  private static final String ALONG = "{material: l, thickness: 35 mm, grain: along}";
  private static final String ACROSS = "{material: x, thickness: 35 mm, grain: across}";

  private static Assessed crossed(int layers) {
    var all = new java.util.ArrayList<String>();
    for (int i = 0; i < layers; i++) {
      all.add(i % 2 == 0 ? ALONG : ACROSS);
    }
    return Assessed.of(CROSSED.formatted(String.join(", ", all)));
  }

  /** 105 mm: EI 1088·10⁹ N·mm² a metre; 245 mm: 10 306·10⁹. */
  @Test
  void crossedBoardsAreAsStiffAsTheHandbookSays() {
    assertThat(crossed(3).passes().built(Measure.STIFFNESS) / 1000).isCloseTo(1088, within(0.5));
    assertThat(crossed(7).built(Measure.STIFFNESS) / 1000).isCloseTo(10_306, within(0.5));
  }

  /**
   * GA 7.3·10⁶ and 22·10⁶ N by its rule a²·b/Σ(t/G), which lets no face bear shear by its own
   * bending; by the energy of the shear flow 8.65 and 22.26 here. {@code CalculixIT} finds which of
   * them three boards of solids give by.
   */
  @Test
  void crossedBoardsGiveInRollingShear() {
    assertThat(crossed(7).built(Measure.SHEAR_STIFFNESS)).isCloseTo(21.93e6, withPercentage(2));
    assertThat(crossed(3).built(Measure.SHEAR_STIFFNESS)).isBetween(7.31e6, 1.2 * 7.31e6);
  }

  /**
   * Five layers, rolling strength 0.5 MPa: ⅔·f·A = 58.33 kN is the code's round rule; the shear
   * flow of the outer board and the cross board, 0.5 MPa · EI/(b·ΣES), gives more, and never less.
   */
  @Test
  void crossedBoardsRollWhereTheShearFlowSays() {
    Assessed five = crossed(5);
    double flow = 11_700 * 35 * 70 + 300 * 35 * 35;
    double bent =
        11_700 * (3 * 35 * 35 * 35 / 12.0 + 2 * 35 * 70 * 70)
            + 300 * (2 * 35 * 35 * 35 / 12.0 + 2 * 35 * 35 * 35);
    assertThat(five.built(Measure.SHEAR)).isCloseTo(0.5 * bent * 1000 / flow, within(1.0));
    assertThat(five.row(Measure.SHEAR).built().orElseThrow().governing().orElseThrow())
        .contains("layer 2");
    assertThat(five.built(Measure.SHEAR)).isBetween(58_330.0, 58_330 * 1.3);
  }

  private static final String C24 =
      """
      materials:
        - {id: c24, kind: timber, density: 420 kg/m3, E: 11000 MPa, G: 690 MPa, bending-strength: 24 MPa, shear-strength: 4 MPa, source: EN 338, basis: characteristic}
      sections:
        - {id: s, width: 75 mm, layers: [{material: c24, thickness: 200 mm}]}
      assessments:
        - {id: a, method: section, designed: s, built: s, require: {reserve: 1}, factors: {duration: %s, grade: %s}, sources: ["duration: EN 1995-1-1, 3.1.3", "grade: partial and depth factor"], load: {shape: uniform, support: simple, force: %s, span: 4.5 m, factor: 1, source: the book}}
      """;

  /** q 1.4625 kN/m: 7.404 of 24·0.8/1.3·1.1 = 16.25 MPa, used 0.4557. */
  @Test
  void aBeamOfC24IsUsedAsTheBookHasIt() {
    double share = 1.1 / 1.3;
    Assessed beam = Assessed.of(C24.formatted("0.8", "%.9f".formatted(share), "6581.25 N"));
    assertThat(1 / beam.passes().built(Measure.RESERVE)).isCloseTo(0.4557, within(5e-5));
  }

  /** 7.501 mm at 0.75 kN/m and 10.001 mm at 1.0 kN/m, shear coefficient 1.2. */
  @Test
  void aBeamOfC24GivesAsTheBookHasIt() {
    assertThat(Assessed.of(C24.formatted("1", "1", "3375 N")).built(Measure.DEFLECTION))
        .isCloseTo(7.501, within(5e-4));
    assertThat(Assessed.of(C24.formatted("1", "1", "4.5 kN")).built(Measure.DEFLECTION))
        .isCloseTo(10.001, within(5e-4));
  }

  /** One wide, two deep, 10 000 lb: 7500 psi at the middle. */
  @Test
  void aShortBeamIsShearedMostAtItsMiddle() {
    Assessed beam =
        Assessed.of(
            """
            materials:
              - {id: m, kind: metal, density: 7850 kg/m3, E: 30e6 psi, yield-strength: 90000 psi, shear-strength: 7500 psi, source: t}
            sections:
              - {id: s, shape: rectangle, material: m, dimensions: {width: 1 in, height: 2 in}}
            assessments:
              - {id: a, method: section, designed: s, built: s, require: {shear: 1}}
            """);
    assertThat(beam.passes().built(Measure.SHEAR) / 4.4482216152605).isCloseTo(10_000, within(1.0));
  }
}
