package kitwright.assessment.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.assessment.Assessed;
import kitwright.assessment.Result;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Verdict;
import kitwright.assessment.sheet.Verdict.Outcome;
import org.junit.jupiter.api.Test;

/** Bolts through wood: what it bears, how far from its ends, and under a washer. */
class WoodUnderBoltsTest {
  private static final String BOLTS =
      """
      materials:
        - {id: oak-x, kind: timber, basis: minimum, density: 560 kg/m3, E: 11 GPa, bending-strength: 80 MPa, shear-strength: 9 MPa, compressive-strength-across: 6 MPa, source: t}
        - {id: mild, kind: bolt, basis: minimum, tensile-strength: 400 MPa, proof-stress: 220 MPa, shear-strength: 240 MPa, source: t}
      sections:
        - id: s
          shape: bolt
          material: mild
          dimensions: {diameter: 12 mm, %s}
          layers: [{material: oak-x, thickness: 38 mm, grain: along}, {material: oak-x, thickness: 89 mm, grain: along}]
      assessments:
        - {id: a, method: bolt, designed: s, built: s, require: {bearing: 1, washer: 1}}
      """;

  private static Result result(String dimensions) {
    return Assessed.of(BOLTS.formatted(dimensions)).result();
  }

  private static double built(Result result, Measure measure) {
    return new Assessed(result).built(measure);
  }

  /**
   * G 0.5, F_e 38.61, F_yb 310 MPa: mode IV is 144·√(2·38.61·310/6) = 9.10 kN, IIIs comes sooner.
   */
  @Test
  void theFirstYieldModeOfTwoPieces() {
    Result result = result("end-distance: 90 mm, edge-distance: 40 mm, washer: 36 mm");
    assertThat(result.verdict().passes()).isTrue();
    double re = 1;
    double k3 =
        -1 + Math.sqrt(2 * (1 + re) / re + 2 * 310 * (2 + re) * 144 / (3 * 38.61 * 38 * 38));
    assertThat(built(result, Measure.BOLT_BEARING))
        .isCloseTo(k3 * 12 * 38 * 38.61 / 3 / 1000, within(1e-3));
    assertThat(built(result, Measure.BOLT_WASHER))
        .isCloseTo(3 * 6 * Math.PI / 4 * (36 * 36 - 169) / 1000, within(1e-9));
  }

  @Test
  void boltsOfAMaterialThatIsNotThereAreNotTold() {
    String of = BOLTS.formatted("end-distance: 90 mm, edge-distance: 40 mm, washer: 36 mm");
    assertThat(verdict(of.replace("material: mild", "material: milk")).because())
        .contains("there is no material “milk”, of which section s is");
    assertThat(verdict(of.replace("    material: mild\n", "")).because())
        .contains("section s does not name the material of its bolts");
  }

  private static Verdict verdict(String ledger) {
    return Assessed.of(ledger).result().verdict();
  }

  @Test
  void nearAnEndTheWoodSplitsFirst() {
    Verdict near = result("end-distance: 60 mm, edge-distance: 40 mm, washer: 36 mm").verdict();
    assertThat(near.outcome()).isEqualTo(Outcome.CANNOT_TELL);
    assertThat(near.because()).contains("the end-distance of section s is 60 mm, below the 84 mm");
    assertThat(result("edge-distance: 40 mm, washer: 36 mm").verdict().because())
        .contains("does not state its end-distance");
  }

  @Test
  void fourInARowCountLess() {
    String four =
        "end-distance: 90 mm, edge-distance: 40 mm, washer: 36 mm, count: 4, spacing: 60 mm";
    double one =
        built(
            result("end-distance: 90 mm, edge-distance: 40 mm, washer: 36 mm"),
            Measure.BOLT_BEARING);
    assertThat(built(result(four), Measure.BOLT_BEARING) / one).isCloseTo(2.742, within(0.001));
  }

  /**
   * NDS: a bolt of 1/2 in through 3.5 and 1.5 in, G 0.50, Fyb 45 000 psi, along the grain, read
   * 2026-11-29 in public code that quotes the equations: mode IIIs, 615 lb after R_d = 3.2.
   */
  @Test
  void thePublishedBolt() {
    Result result =
        Assessed.of(
                BOLTS
                    .formatted("end-distance: 4 in, edge-distance: 2 in, washer: 1 1/2 in")
                    .replace("diameter: 12 mm", "diameter: 1/2 in")
                    .replace("thickness: 38 mm", "thickness: 1.5 in")
                    .replace("thickness: 89 mm", "thickness: 3.5 in")
                    .replace("400 MPa, proof-stress: 220 MPa", "60 ksi, proof-stress: 30 ksi"))
            .result();
    assertThat(result.verdict().because()).contains("ISO 261 has no coarse thread");
    assertThat(built(result, Measure.BOLT_BEARING) * 1000 / 4.4482216152605 / 3.2)
        .isCloseTo(615, within(0.6));
  }

  /** Across the grain an edge is loaded: 4 diameters, 48 mm, where 3 do along it. */
  @Test
  void anEdgeLoadedAcrossTheGrainIsFurtherAway() {
    String text =
        BOLTS
            .formatted("end-distance: 90 mm, edge-distance: 40 mm, washer: 36 mm")
            .replace("thickness: 38 mm, grain: along}", "thickness: 38 mm, grain: across}");
    assertThat(Assessed.of(text).result().verdict().because())
        .contains("the edge-distance of section s is 40 mm, below the 48 mm");
  }

  /**
   * EN 1995-1-1, 8.5.1.1: across the grain all bolts of a row count, at an angle as many as lie in
   * proportion between; a piece along its grain splits along the row whatever the other is.
   */
  @Test
  void acrossTheGrainAllInARowCount() {
    assertThat(ofFour("grain: across", "grain: across")).isCloseTo(4, within(1e-9));
    assertThat(ofFour("angle: 90 deg", "angle: -90 deg")).isCloseTo(4, within(1e-9));
    assertThat(ofFour("angle: 180 deg", "grain: along")).isCloseTo(2.7423, within(1e-4));
    assertThat(ofFour("grain: across", "grain: along")).isCloseTo(2.7423, within(1e-4));
    assertThat(ofFour("angle: 135 deg", "angle: 120 deg"))
        .isCloseTo((2.7423 + 4) / 2, within(1e-4));
    assertThat(ofFour("grain: bias", "angle: 135 deg")).isCloseTo((2.7423 + 4) / 2, within(1e-4));
  }

  private static double ofFour(String side, String main) {
    String across =
        BOLTS
            .replace("thickness: 38 mm, grain: along}", "thickness: 38 mm, " + side + "}")
            .replace("thickness: 89 mm, grain: along}", "thickness: 89 mm, " + main + "}");
    String near = "end-distance: 90 mm, edge-distance: 50 mm, washer: 36 mm";
    double one = built(told(across.formatted(near)), Measure.BOLT_BEARING);
    double four =
        built(told(across.formatted(near + ", count: 4, spacing: 60 mm")), Measure.BOLT_BEARING);
    return four / one;
  }

  /** Hankinson: P·Q/(P·sin² + Q·cos²), P 38.61, Q 211.97·0.5^1.45/√12 = 22.40 MPa. */
  @Test
  void woodBearsLessAtAnAngleToItsGrain() {
    String flat = "end-distance: 90 mm, edge-distance: 50 mm, washer: 36 mm";
    String thin =
        BOLTS.replace("thickness: 38 mm, grain: along}", "thickness: 4 mm, angle: %d deg}");
    double q = 211.97 * Math.pow(0.5, 1.45) / Math.sqrt(12);
    for (int angle : new int[] {0, 30, 45, 90, 150}) {
      double sin = Math.sin(Math.toRadians(angle));
      double bears = 38.61 * q / (38.61 * sin * sin + q * (1 - sin * sin));
      assertThat(built(told(thin.formatted(flat, angle)), Measure.BOLT_BEARING))
          .isCloseTo(12 * 4 * bears / 1000, within(1e-6));
    }
  }

  @Test
  void aWasherPressesOnWhatItCovers() {
    String near = "end-distance: 90 mm, edge-distance: 40 mm, ";
    isOpen(near + "washer: 49 mm", "a washer of 49 mm may bend: without its washer-thickness at");
    isOpen(
        near + "washer: 37 mm, washer-thickness: 3 mm",
        "a washer of 37 mm and 3 mm thick bends: at most 36 mm");
    isOpen(
        "end-distance: 90 mm, edge-distance: 17 mm, washer: 36 mm",
        "the edge-distance of section s is 17 mm, and its washer asks for 18 mm");
    isOpen("end-distance: 90 mm, washer: 36 mm", "a washer asks for at least 18 mm");
    isOpen(
        near + "washer: 36 mm, count: 2, spacing: 35 mm",
        "the spacing of section s is 35 mm, and its washer asks for 36 mm");
    isOpen(near + "washer: 36 mm, count: 2", "does not state its spacing: a washer asks for");
    isOpen(
        near + "washer: 36 mm, count: 2, spacing: 59 mm",
        "the spacing of section s is 59 mm, below the 60 mm");
    isOpen(near + "washer: 36 mm, count: 1.5", "cannot be as it is written");
    isOpen(near + "washer: 36 mm, count: 0.5", "cannot be as it is written");
    assertThat(result(near + "washer: 38 mm").verdict().passes()).isTrue();
    isOpen(near + "washer: 39 mm", "the piece under the washer or head of section s is not known");
  }

  private static void isOpen(String dimensions, String why) {
    Verdict verdict = result(dimensions).verdict();
    assertThat(verdict.outcome()).as(verdict.because()).isEqualTo(Outcome.CANNOT_TELL);
    assertThat(verdict.because()).contains(why);
  }

  /** Loaded across its grain oak bears 0.83 of what it bears along: nobody says which is meant. */
  @Test
  void howTheGrainRunsAgainstTheLoadIsAsked() {
    String of = BOLTS.formatted("end-distance: 90 mm, edge-distance: 50 mm, washer: 36 mm");
    assertThat(verdict(of.replace("38 mm, grain: along", "38 mm")).because())
        .isEqualTo(
            "layer 1 of section s does not say how its grain runs against the load on its bolts:"
                + " grain: along, grain: across, or angle: 30 deg");
    assertThat(verdict(of.replace("89 mm, grain: along", "89 mm, angle: 30 deg")).passes())
        .isTrue();
  }

  @Test
  void whatIsNoSolidTimberIsNamed() {
    String of = BOLTS.formatted("end-distance: 90 mm, edge-distance: 50 mm, washer: 36 mm");
    assertThat(
            verdict(of.replace("{material: oak-x, thickness: 38", "{material: mild, thickness: 8"))
                .because())
        .contains(
            "layer 1 of section s is of mild, and bolts are worked out between two pieces of solid"
                + " timber only")
        .doesNotContain("does not state what its bolts go through");
  }

  @Test
  void roomInWoodThatIsNotListedIsAsked() {
    String of = BOLTS.formatted("end-distance: 20 mm, washer: 36 mm");
    String bare = of.replaceFirst(" *layers: .*\n", "").replace("bearing: 1, washer", "shear");
    assertThat(verdict(bare).because())
        .isEqualTo(
            "section s states its end-distance, washer and not what its bolts go through: list the"
                + " pieces under “layers”, the one under the head first");
    assertThat(verdict(bare.replace(", end-distance: 20 mm, washer: 36 mm", "")).passes()).isTrue();
  }

  @Test
  void whatOnlyOneOfBothListsIsSaid() {
    String of =
        BOLTS
            .formatted("end-distance: 90 mm, edge-distance: 50 mm, washer: 36 mm")
            .replace("bearing: 1, washer", "shear")
            .replace("built: s", "built: t")
            .replace(
                "assessments:",
                "  - {id: t, shape: bolt, material: mild, dimensions: {diameter: 12 mm, count:"
                    + " 1}}\n"
                    + "assessments:")
            .replace("diameter: 12 mm, end", "diameter: 12 mm, count: 1, end");
    assertThat(verdict(of).because())
        .contains(
            "only one of both sections lists what its bolts go through: so the load at which");
  }

  @Test
  void boltsBearByTheRuleOfWoodsThatItIsFrom() {
    String light =
        BOLTS
            .formatted("end-distance: 90 mm, edge-distance: 40 mm, washer: 36 mm")
            .replace("560 kg/m3", "300 kg/m3");
    assertThat(told(light).verdict().because()).contains("oak-x is outside the woods");
  }

  @Test
  void aThinBoltBearsByAnotherRule() {
    String thin =
        BOLTS
            .formatted("end-distance: 90 mm, edge-distance: 40 mm, washer: 36 mm")
            .replace("diameter: 12 mm", "diameter: 6 mm");
    assertThat(told(thin).verdict().because()).contains("bolts thinner than 6.4 mm");
  }

  private static Result told(String yaml) {
    return Assessed.of(yaml).result();
  }

  /**
   * A bolt of 1/2-13 UNC: 0.7854·(D − 0.9743/n)² = 0.1419 in² (ASME B1.1, appendix B), which stated
   * is taken; of 60 ksi two break at 2 · 8 514 lbf = 75.74 kN. A fine thread may be stated as well.
   */
  @Test
  void aThreadInInchesIsTakenByItsStressArea() {
    String inch =
        BOLTS
            .formatted("end-distance: 4 in, edge-distance: 2 in, washer: 1 1/2 in, %s")
            .replace("diameter: 12 mm", "diameter: 1/2 in")
            .replace("thickness: 38 mm", "thickness: 1.5 in")
            .replace("thickness: 89 mm", "thickness: 3.5 in")
            .replace("400 MPa, proof-stress: 220 MPa", "60 ksi, proof-stress: 30 ksi");
    double area = 0.7854 * Math.pow(0.5 - 0.9743 / 13, 2);
    Result result = of(inch.formatted("stress-area: 0.1419 in2"));
    assertThat(result.verdict().because()).doesNotContain("thread");
    double count = built(result, Measure.BOLT_TENSION) * 1000 / (area * 60000 * 4.4482216152605);
    assertThat(count).isCloseTo(Math.rint(count), within(0.001));
    for (String wrong : java.util.List.of("0.2 in2", "0.05 in2", "12 mm")) {
      assertThat(of(inch.formatted("stress-area: " + wrong)).verdict().because())
          .contains("cannot be as it is written");
    }
    assertThat(of(inch.formatted("count: 2")).verdict().because())
        .contains(
            "has bolts of 12.7 mm, of which ISO 261 has no coarse thread: write the stress area of"
                + " their thread among its dimensions, as a table of that thread has it, such as"
                + " stress-area: 91.5 mm2 for 1/2-13 UNC");
  }

  private static Result of(String yaml) {
    return Assessed.of(yaml).result();
  }

  private static final String ROOM = "end-distance: 90 mm, edge-distance: 40 mm";

  /** What is pulled bears no more than the wood under its washers, whichever of them was asked. */
  @Test
  void aPullAsksTheWasherToo() {
    for (String asked : java.util.List.of("strength", "proof")) {
      String pulled = BOLTS.replace("{bearing: 1, washer: 1}", "{" + asked + ": 1}");
      assertThat(told(pulled.formatted(ROOM + ", washer: 36 mm")).verdict().passes()).isTrue();
      Verdict bare = told(pulled.formatted(ROOM)).verdict();
      assertThat(bare.outcome()).isEqualTo(Outcome.CANNOT_TELL);
      assertThat(bare.because())
          .contains(
              "state the washer of section s (washer, its diameter, among the dimensions)",
              "and it bears what “" + asked + "” asks");
    }
  }

  /** In a hole of 13 mm one of 13 mm holds nothing, and told less than nothing. */
  @Test
  void aWasherIsWiderThanItsHole() {
    Verdict small = told(BOLTS.formatted(ROOM + ", washer: 13 mm")).verdict();
    assertThat(small.outcome()).isEqualTo(Outcome.CANNOT_TELL);
    assertThat(small.because()).contains("is no wider than the hole of its bolt, 13 mm");
  }

  /** Washers of 36 and 30 mm on M12: (30² − 13²)/(36² − 13²) is 0.648. */
  @Test
  void aSmallerWasherIsNotPassedByItsBolt() {
    Verdict less = smaller("strength: 1");
    assertThat(less.outcome()).isEqualTo(Outcome.CANNOT_TELL);
    assertThat(less.because())
        .contains(
            "sinks into the wood is 0.648 of the design value, and only “strength” was asked");
    assertThat(smaller("strength: 1, washer: 1").fails()).isTrue();
    assertThat(smaller("strength: 1, washer: 0.6").passes()).isTrue();
    assertThat(smaller("strength: 0.6").passes()).isTrue();
  }

  private static Verdict smaller(String asked) {
    return told(BOLTS
            .formatted(ROOM + ", washer: 36 mm")
            .replace("assessments:", built(ROOM + ", washer: 30 mm") + "assessments:")
            .replace("built: s", "built: t")
            .replace("bearing: 1, washer: 1", asked))
        .verdict();
  }

  private static String built(String dimensions) {
    return """
      - id: t
        shape: bolt
        material: mild
        dimensions: {diameter: 12 mm, %s}
        layers: [{material: oak-x, thickness: 38 mm, grain: along}, {material: oak-x, thickness: 89 mm, grain: along}]
    """
        .formatted(dimensions);
  }

  /** Sheared, it bears no more than the wood that it bears on; 60 mm from an end it may split. */
  @Test
  void aShearAsksTheBearingToo() {
    String sheared = BOLTS.replace("bearing: 1, washer: 1", "shear: 1");
    assertThat(told(sheared.formatted(ROOM)).verdict().passes()).isTrue();
    Verdict near = told(sheared.formatted("end-distance: 60 mm, edge-distance: 40 mm")).verdict();
    assertThat(near.outcome()).isEqualTo(Outcome.CANNOT_TELL);
    assertThat(near.because()).contains("it bears what “shear” asks");
  }

  /** The washer may hold where the bolt does not: what is built breaks at half. */
  @Test
  void aWasherAsksItsBoltToo() {
    String weak =
        BOLTS
            .formatted(ROOM + ", washer: 36 mm")
            .replace("assessments:", built(ROOM + ", washer: 36 mm") + "assessments:")
            .replace("bearing: 1, washer: 1", "washer: 1");
    String soft =
        "  - {id: soft, kind: bolt, basis: minimum, tensile-strength: 200 MPa, proof-stress:"
            + " 110 MPa, shear-strength: 120 MPa, source: t}\nsections:";
    Verdict half =
        told(weak.replace("sections:", soft)
                .replace("built: s", "built: t")
                .replaceFirst("(?s)(id: t.*?)material: mild", "$1material: soft"))
            .verdict();
    assertThat(half.outcome()).isEqualTo(Outcome.CANNOT_TELL);
    assertThat(half.because())
        .contains("breaking load in tension is 0.5 of the design value, and only “washer”");
  }

  /** A washer lies under the nut as well: of two woods the softer lets it in. */
  @Test
  void theSofterOfTheOuterPiecesGivesFirst() {
    String pine =
        BOLTS
            .formatted(ROOM + ", washer: 36 mm")
            .replace(
                "  - {id: mild",
                "  - {id: pine-x, kind: timber, basis: minimum, density: 560 kg/m3, E: 11 GPa,"
                    + " bending-strength: 80 MPa, shear-strength: 9 MPa,"
                    + " compressive-strength-across: 3 MPa, source: t}\n  - {id: mild")
            .replace("{material: oak-x, thickness: 89 mm", "{material: pine-x, thickness: 89 mm");
    double soft = 3 * 3 * Math.PI / 4 * (36 * 36 - 169) / 1000;
    assertThat(built(told(pine), Measure.BOLT_WASHER)).isCloseTo(soft, within(1e-9));
    String turned =
        pine.replace("oak-x, thickness", "z, thickness")
            .replace("pine-x, thickness", "oak-x, thickness")
            .replace("z, thickness", "pine-x, thickness");
    assertThat(built(told(turned), Measure.BOLT_WASHER)).isCloseTo(soft, within(1e-9));
    assertThat(told(pine.replace("thickness: 89", "thickness: 30")).verdict().because())
        .contains("may let it through before it is pressed in");
    assertThat(told(pine.replace(" compressive-strength-across: 3 MPa,", "")).verdict().because())
        .contains("pine-x does not state its compressive-strength-across");
  }
}
