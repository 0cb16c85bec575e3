package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Step;
import kitwright.assessment.sheet.Working;
import org.junit.jupiter.api.Test;

/** What a sheet shows beside the results: coupling of a stack, thin faces, depth of a timber. */
class WorkingTest {
  private static final String STUFF =
      """
      materials:
        - {id: along, kind: laminate, density: 1700 kg/m3, E: 20 GPa, E-across: 5 GPa, G: 3 GPa, G-across: 2 GPa, poisson: 0.3, tensile-strength: 300 MPa, compressive-strength: 200 MPa, shear-strength: 60 MPa, source: test}
        - {id: face, kind: laminate, isotropic: yes, density: 1700 kg/m3, E: 15 GPa, G: 4 GPa, poisson: 0.25, tensile-strength: 250 MPa, compressive-strength: 200 MPa, shear-strength: 60 MPa, source: test}
        - {id: foam, kind: core, isotropic: yes, density: 80 kg/m3, E: 70 MPa, G: 20 MPa, poisson: 0.3, tensile-strength: 2 MPa, compressive-strength: 1.2 MPa, shear-strength: 1.0 MPa, source: test}
        - {id: spruce, kind: timber, density: 400 kg/m3, E: 10 GPa, bending-strength: 60 MPa, shear-strength: 7 MPa, source: test}
        - {id: oak, kind: timber, density: 700 kg/m3, E: 12.5 GPa, bending-strength: 93.75 MPa, shear-strength: 12 MPa, source: test}
      """;

  private static Result result(String more) {
    return Assessed.of(STUFF + more).result();
  }

  private static Step step(Result result, int part, String what) {
    return result.working().get(part).steps().stream()
        .filter(step -> step.what().contains(what))
        .findFirst()
        .orElseThrow();
  }

  private static final String STACKS =
      """
      sections:
        - {id: even, width: 1000 mm, layers: [{material: along, thickness: 1 mm}, {material: along, thickness: 2 mm, angle: 90 deg}, {material: along, thickness: 1 mm}]}
        - {id: crossed, width: 1000 mm, layers: [{material: along, thickness: 1 mm}, {material: along, thickness: 1 mm, angle: 90 deg}]}
        - {id: slanted, width: 1000 mm, layers: [{material: along, thickness: 1 mm, angle: 45 deg}, {material: along, thickness: 1 mm, angle: -45 deg}]}
      assessments:
        - {id: a, method: laminate, designed: even, built: %s, require: {stiffness: 0.1}}
      """;

  @Test
  void aStackAlikeOnBothSidesStaysFlat() {
    Step coupling = step(result(STACKS.formatted("crossed")), 0, "coupling of stretch and bend");
    assertThat(coupling.what()).contains("nil").contains("stays flat");
    assertThat(coupling.result()).isEqualTo("0 N");
  }

  /**
   * Two crossed plies of t: B₁₁ = (Q₂₂ − Q₁₁)·t²/2 = −B₂₂, and no more (Kaw, Mechanics of Composite
   * Materials, eq. 4.28b, from memory). ν₂₁ = 0.075, Q₁₁ = 20/0.9775 = 20.460 GPa, Q₂₂ = 5.1151
   * GPa: 15.345·10⁹ · 10⁻⁶ / 2 = 7673 N.
   */
  @Test
  void twoCrossedPliesBendWhenTheyArePulled() {
    Step coupling = step(result(STACKS.formatted("crossed")), 1, "coupling of stretch and bend");
    assertThat(coupling.what()).contains("it bends when it is pulled").contains("may warp");
    assertThat(coupling.numbers()).isEqualTo("B₁₁, B₁₂, B₂₂, B₆₆");
    assertThat(coupling.result()).isEqualTo("−7673, 0, 7673, 0 N");
  }

  /** Of plies at plus and minus 45 degrees only B₁₆ and B₂₆ are not nought (Kaw, section 5.2). */
  @Test
  void plusAndMinusFortyFiveTwists() {
    Step coupling = step(result(STACKS.formatted("slanted")), 1, "coupling of stretch and bend");
    assertThat(coupling.what()).contains("it twists when it is pulled");
    assertThat(coupling.numbers()).isEqualTo("B₁₁, B₁₂, B₂₂, B₆₆, B₁₆, B₂₆");
    assertThat(coupling.result()).startsWith("0, 0, 0, 0, ");
    Working working = result(STACKS.formatted("slanted")).working().get(1);
    assertThat(working.pieces()).extracting(row -> row.get(2)).containsExactly("45", "−45");
  }

  private static final String PANELS =
      """
      sections:
        - {id: thin, width: 1000 mm, layers: [{material: face, thickness: 1 mm}, {material: foam, thickness: 40 mm}, {material: face, thickness: 1 mm}]}
        - {id: thick, width: 1000 mm, layers: [{material: face, thickness: 6 mm}, {material: foam, thickness: 10 mm}, {material: face, thickness: 6 mm}]}
      assessments:
        - {id: a, method: panel, designed: thin, built: thick, require: {stiffness: 0.1}, load: {pressure: 5 kPa, span: 900 mm, breadth: 600 mm, support: simple, source: test}}
      """;

  /**
   * Faces of 6 mm 16 mm apart: d²·E't/2 = 0.016²·16·10⁹·0.006/2 = 12 288 N·m with E' = 15/(1 −
   * 0.25²) = 16 GPa; their own 2·16·10⁹·0.006³/12 = 576 N·m is 4.5 % of the whole, and the core's
   * is 6 N·m: thin faces miss 4.5 %. Faces of 8 mm on 10 mm miss 2·8³/(12·18²·8/2 + 2·8³) = 6.2 %.
   */
  @Test
  void thinFacesAreShownOnlyWhereTheyMissMoreThanFiveHundredths() {
    Result four = result(PANELS);
    assertThat(four.working().get(1).steps()).noneMatch(s -> s.what().contains("D₁₁ by"));
    Result eight = result(PANELS.replace("face, thickness: 6 mm", "face, thickness: 8 mm"));
    Step shown = step(eight, 1, "D₁₁ by the thin-face formula");
    assertThat(shown.result()).isEqualTo("20736 N·m");
    assertThat(shown.numbers()).startsWith("differs by −6.2 % from the exact 221");
    assertThat(eight.working().get(0).steps()).noneMatch(s -> s.what().contains("thin-face"));
  }

  private static final String BEAMS =
      """
      sections:
        - {id: drawn, shape: rectangle, material: spruce, dimensions: {width: 50 mm, height: 80 mm}}
        - {id: made, shape: rectangle, material: oak, dimensions: {width: %s mm, height: 70 mm}}
      assessments:
        - {id: a, method: timber, designed: drawn, built: made, require: {stiffness: 0.1}%s}
      """;

  /** 80·(10/12.5)^⅓ = 74.27, 80·(60/93.75)^½ = 64, 50·0.8 = 40, 50·0.64 = 32: by hand. */
  @Test
  void aTimberSwapTellsHowDeepAndHowBroadItMustBe() {
    Result result = result(BEAMS.formatted("50", ""));
    Step stiff = step(result, 2, "depth for equal stiffness");
    assertThat(stiff.formula()).isEqualTo("h = h₁·(E₁/E₂)^⅓");
    assertThat(stiff.numbers()).isEqualTo("80 mm · (10000 MPa / 12500 MPa)^⅓");
    assertThat(stiff.result()).isEqualTo("74.27 mm");
    assertThat(step(result, 2, "depth for equal strength").result()).isEqualTo("64 mm");
    assertThat(step(result, 2, "breadth for equal stiffness").result()).isEqualTo("40 mm");
    assertThat(step(result, 2, "breadth for equal strength").result()).isEqualTo("32 mm");
    assertThat(step(result, 2, "as built").result()).isEqualTo("70 mm deep, 50 mm broad");
  }

  /** A part of the depth that the sheet asks for is as stiff and as strong as the one drawn. */
  @Test
  void whatTheSheetAsksForIsEnough() {
    Result narrow = result(BEAMS.formatted("40", ""));
    assertThat(step(narrow, 2, "depth for equal stiffness, as broad as built").result())
        .isEqualTo("80 mm");
    String deep = BEAMS.formatted("40", "").replace("height: 70 mm", "height: 80 mm");
    Row stiffness =
        result(deep).rows().stream()
            .filter(row -> row.measure() == Measure.STIFFNESS)
            .findFirst()
            .orElseThrow();
    assertThat(stiffness.ratio().orElseThrow()).isCloseTo(1, within(1e-9));
  }

  @Test
  void oneTimberForItselfOrAMixedPartHasNoDepthToTell() {
    Result same = result(BEAMS.formatted("50", "").replace("oak, dim", "spruce, dim"));
    assertThat(same.working()).hasSize(2);
  }

  /** Knock-downs multiply: 60·0.9·0.8 = 43.2 MPa against 93.75·0.72 = 67.5 MPa, the same share. */
  @Test
  void factorsStandInTheNumbersOfTheDepth() {
    Result result = result(BEAMS.formatted("50", ", factors: {duration: 0.9, grade: 0.8}"));
    assertThat(step(result, 2, "depth for equal strength").numbers())
        .isEqualTo("80 mm · (43.2 MPa / 67.5 MPa)^½");
    List<String> parts = result.working().stream().map(Working::part).toList();
    assertThat(parts).contains("how deep oak must be in place of spruce");
  }

  /**
   * By hand: ψ = 0.55 of glass 2550 in resin 1150 kg/m³ gives φ = 2.1569/(2.1569 + 3.9130) =
   * 0.35534; t = 0.45/(2550·0.35534) = 0.49663 mm; m = 0.45/0.55 = 0.81818 kg/m²; E_L = 0.35534·73
   * + 0.64466·3.2 = 28.003 GPa. E_T by η = (22.8125 − 1)/(22.8125 + 2) = 0.87909:
   * 3.2·1.62475/0.68762 = 7.561 GPa. Half each way: Q's over 1 − 0.30381²·7561/28003 = 0.97508:
   * (28.719 + 7.754)/2 = 18.237, Q₁₂ = 2.356, so E₁ = 18.237 − 2.356²/18.237 = 17.93 GPa.
   */
  @Test
  void aClothTellsHowItBecameThePlyThatItIs() {
    Result result =
        result(
            """
            ---
            materials:
              - {id: glass, kind: fibre, isotropic: yes, density: 2550 kg/m3, E: 73 GPa, poisson: 0.22, source: test}
              - {id: epoxy, kind: resin, density: 1150 kg/m3, E: 3.2 GPa, poisson: 0.35, source: test}
              - {id: biax, kind: cloth, fibre: glass, resin: epoxy, weave: biaxial, areal-weight: 450 g/m2, fibre-fraction: 0.55, source: test}
            sections:
              - {id: two, width: 1000 mm, layers: [{material: biax, plies: 2}]}
            assessments:
              - {id: a, method: laminate, designed: two, built: two, require: {stiffness: 1.0}}
            """);
    Working ply = result.working().get(0);
    assertThat(ply.part()).isEqualTo("one ply of biax, cured in epoxy");
    assertThat(ply.steps())
        .extracting(Step::result)
        .containsExactly(
            "0.3553",
            "0.4966 mm",
            "0.8182 kg/m²",
            "28003 MPa",
            "7561, 2344 MPa",
            "17932, 17932, 2344 MPa");
  }

  /**
   * A box of 100 x 50 outside with walls of 2 mm, along their middle (public verification file,
   * case of Bredt’s formula, read 2026-11-29): A 98 · 48, Σ s/t 146, J 0.6062e-6 m⁴; by G of 4000
   * MPa 146/4000.
   */
  @Test
  void aClosedWallTellsWhatItClosesRound() {
    String sections =
        """
        sections:
          - {id: box, width: 100 mm, layers: [{material: face, thickness: 2 mm}, {thickness: 46 mm, strips: [{material: face, width: 2 mm}, {void: 96 mm}, {material: face, width: 2 mm}]}, {material: face, thickness: 2 mm}]}
          - {id: drum, shape: polygon, material: face, outline: [{y: 0 mm, z: 0 mm, wall: 2 mm}, {y: 100 mm, z: 0 mm, wall: 2 mm}, {y: 100 mm, z: 50 mm, wall: 2 mm}, {y: 0 mm, z: 50 mm, wall: 2 mm}]}
          - {id: bar, shape: i, material: face, dimensions: {width: 50 mm, height: 80 mm, web: 3 mm, flange: 4 mm}}
        assessments:
          - {id: a, method: section, designed: box, built: %s, require: {torsion: 0.1}}
        """;
    for (String built : List.of("box", "drum")) {
      Step twisted = step(result(sections.formatted(built)), 1, "torsional stiffness");
      assertThat(twisted.formula())
          .isEqualTo("GJ = 4·A²/∮ ds/(G·t) along the middle of the closed wall");
      assertThat(twisted.numbers())
          .isEqualTo("G of face 4000 MPa, A 4704 mm², ∮ ds/(G·t) 0.0365 mm²/N");
      assertThat(twisted.result()).isEqualTo("2425 N·m²");
    }
    Step open = step(result(sections.formatted("bar")), 1, "torsional stiffness");
    assertThat(open.formula()).isEqualTo("GJ = Σ G·b·t³/3 of open walls");
    assertThat(open.numbers()).isEqualTo("G of face 4000 MPa");
  }
}
