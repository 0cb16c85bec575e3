package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.Sample;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Trust;
import kitwright.assessment.sheet.Verdict.Outcome;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** No value is filled in, no load left out and no limit passed over without a word. */
class NothingFilledInTest {
  private static final String STUFF =
      """
      materials:
        - {id: spruce, kind: timber, density: 415 kg/m3, E: 10.9 GPa, G: 0.7 GPa, tensile-strength: 72 MPa, compressive-strength: 38 MPa, bending-strength: 69 MPa, shear-strength: 7.7 MPa, source: t, basis: mean}
        - {id: skin, kind: laminate, isotropic: yes, poisson: 0.3, density: 1700 kg/m3, E: 14 GPa, G: 3 GPa, tensile-strength: 235 MPa, compressive-strength: 205 MPa, shear-strength: 48 MPa, source: t, basis: mean}
        - {id: plank, kind: timber, density: 425 kg/m3, E: 11 GPa, E-across: 0.5 GPa, bending-strength: 70 MPa, compressive-strength: 38 MPa, tensile-strength: 70 MPa, tensile-strength-across: 2.6 MPa, compressive-strength-across: 4 MPa, shear-strength: 7.9 MPa, source: t, basis: mean}
        - {id: al, kind: metal, density: 2700 kg/m3, E: 70 GPa, yield-strength: 240 MPa, metal: aluminium, source: t, basis: mean}
      """;

  private static Result result(String more) {
    return Assessed.of(STUFF + more).result();
  }

  private static Row row(Result result, Measure measure) {
    return result.rows().stream().filter(r -> r.measure() == measure).findFirst().orElseThrow();
  }

  private static void isOpen(Result result, String why) {
    assertThat(result.verdict().outcome()).isEqualTo(Outcome.CANNOT_TELL);
    assertThat(result.verdict().because()).contains(why);
  }

  private static final String BOARDS =
      """
      ---
      materials:
        - {id: board, kind: plywood, density: 450 kg/m3, E: 8.47 GPa, veneer: 1.8 mm, bending-strength: 75 MPa, compressive-strength: 36.2 MPa, tensile-strength: 75 MPa, shear-strength: 3 MPa, %s source: t, basis: mean}
      sections:
        - {id: ply, width: 1 m, layers: [{material: board, thickness: 9 mm}]}
        - {id: planks, width: 1 m, layers: [{material: plank, thickness: 12 mm}]}
      assessments:
        - {id: a, method: panel, designed: ply, built: planks, require: {%s}, load: {pressure: 2 kPa, span: 500 mm, breadth: 500 mm, source: t}}
      """;

  /**
   * Five veneers of 1.8 mm, E/30 across: D = 8470·12.636 + 282.3·48.1 N·mm, and the outermost
   * veneer that runs with the span reaches 75 MPa at 2.7 mm (along 4.5 mm).
   */
  @Test
  void plywoodByVeneersIsItsPlies() {
    Result result = result(BOARDS.formatted("", "moment: 1"));
    double across = 8470 * 12.636 + 8470 / 30.0 * (60.75 - 12.636);
    double along = 8470 * (60.75 - 12.636) + 8470 / 30.0 * 12.636;
    assertThat(row(result, Measure.PLATE_MOMENT_ACROSS).designed().orElseThrow().value())
        .isCloseTo(75 * across / (8470 * 2.7), within(0.1));
    assertThat(row(result, Measure.PLATE_MOMENT).designed().orElseThrow().value())
        .isCloseTo(75 * along / (8470 * 4.5), within(0.1));
    assertThat(result.verdict().fails()).isTrue();
    assertThat(row(result, Measure.PLATE_MOMENT_ACROSS).ratio().orElseThrow())
        .isCloseTo(62.4 / (75 * across / (8470 * 2.7)), within(1e-3));
  }

  @Test
  void theVeneersOfAPlywoodMayBeOfAWoodByItsName() {
    String own = BOARDS.formatted("", "stiffness: 0.1");
    String named =
        own.replace(
                "E: 8.47 GPa, veneer: 1.8 mm, bending-strength: 75 MPa, compressive-strength: 36.2"
                    + " MPa, tensile-strength: 75 MPa, shear-strength: 3 MPa,  source: t, basis:"
                    + " mean",
                "veneer: 1.8 mm, wood: veneer-wood, source: t")
            .replace(
                "materials:\n  - {id: board",
                "materials:\n  - {id: veneer-wood, kind: timber, density: 450 kg/m3, E: 8.47 GPa,"
                    + " bending-strength: 75 MPa, compressive-strength: 36.2 MPa,"
                    + " tensile-strength: 75 MPa, shear-strength: 3 MPa, source: t, basis: mean}\n"
                    + "  - {id: board");
    assertThat(row(result(named), Measure.PLATE_STIFFNESS).designed().orElseThrow().value())
        .isEqualTo(row(result(own), Measure.PLATE_STIFFNESS).designed().orElseThrow().value());
  }

  @Test
  void howAPanelIsHeldIsNotGuessed() {
    isOpen(
        result(
            BOARDS
                .formatted("", "stiffness: 0.01")
                .replace("breadth: 500 mm, support: simple", "breadth: 500 mm")),
        "the load does not say how the panel is held: support: simple or clamped");
  }

  @Test
  void aGlueThatIsNotThereHoldsNothing() {
    isOpen(
        result(
            BEAM.formatted("shape: uniform, force: 1 N", "")
                .replace("thickness: 90 mm}]", "thickness: 90 mm}], glue: nowhere")),
        "there is no material “nowhere”, the glue of section s");
  }

  @Test
  void plywoodThatIsHalfTold() {
    isOpen(
        result(BOARDS.formatted("tensile-strength-across: 20 MPa,", "stiffness: 0.01")),
        "plywood board states strengths across and no E-across");
  }

  @Test
  void anEvenNumberOfVeneersIsNoPlywood() {
    isOpen(
        result(
            BOARDS.formatted("", "moment: 0.01").replace("thickness: 9 mm", "thickness: 7.2 mm")),
        "board of 7.2 mm is no odd number of veneers of 1.8 mm (layer 1)");
  }

  private static final String CORE =
      """
      ---
      materials:
        - {id: cedar, kind: timber, density: 370 kg/m3, E: 7.6 GPa, E-across: 0.5 GPa, G: 0.65 GPa, tensile-strength: 54 MPa, compressive-strength: 31 MPa, tensile-strength-across: 1.5 MPa, compressive-strength-across: 3.2 MPa, bending-strength: 51 MPa, shear-strength: 6.8 MPa, %s source: t, basis: mean}
        - {id: foam, kind: core, isotropic: yes, density: 80 kg/m3, E: 85 MPa, G: 27 MPa, tensile-strength: 2.2 MPa, compressive-strength: 1.25 MPa, shear-strength: 1.05 MPa, source: t, basis: mean}
      sections:
        - {id: foamed, width: 1 m, layers: [{material: skin, thickness: 2 mm}, {material: foam, thickness: 20 mm}, {material: skin, thickness: 2 mm}]}
        - {id: wooden, width: 1 m, layers: [{material: skin, thickness: 2 mm}, {material: cedar, thickness: 20 mm, grain: across}, {material: skin, thickness: 2 mm}]}
      assessments:
        - {id: a, method: section, designed: foamed, built: wooden, require: {shear: 1}}
      """;

  @Test
  void aWoodenCoreAcrossItsGrainRolls() {
    Result rolls = result(CORE.formatted("G-across: 65 MPa, shear-strength-across: 1.5 MPa,"));
    assertThat(rolls.verdict().passes()).isTrue();
    Row shear = row(rolls, Measure.SHEAR);
    assertThat(shear.built().orElseThrow().governing())
        .contains("rolling shear across the grain of layer 2");
    assertThat(shear.ratio().orElseThrow()).isBetween(1.3, 1.5);
    isOpen(result(CORE.formatted("")), "cedar (layer 2) does not state its shear-strength-across");
  }

  @Test
  void rollingShearModulusIsAPublishedShareOfTheOther() {
    Result result = result(CORE.formatted("").replace("shear: 1}", "shear-stiffness: 0.1}"));
    assertThat(result.inputs())
        .anyMatch(
            input ->
                input.material().equals("cedar")
                    && input.property().key().equals("G-across")
                    && input.value().equals("65 MPa")
                    && input.trust() == Trust.DERIVED
                    && input.source().contains("EN 14080"));
  }

  private static final String ONE =
      """
      ---
      materials:
        - {id: odd, kind: %s, density: 1600 kg/m3, E: 110 GPa, G: 4 GPa, tensile-strength: 1200 MPa, compressive-strength: 700 MPa, shear-strength: 60 MPa, source: t, basis: mean}
      sections:
        - {id: s, width: 1 m, layers: [{material: odd, thickness: 2 mm}]}
      assessments:
        - {id: a, method: laminate, designed: s, built: s, require: {strength-across: 1}}
      """;

  @Test
  void aLaminateIsNotTheSameEveryWayUnlessItSaysSo() {
    for (String kind : new String[] {"laminate", "other"}) {
      isOpen(result(ONE.formatted(kind)), "material odd does not state its E-across");
    }
    String same =
        ONE.formatted("laminate").replace("E: 110", "isotropic: yes, poisson: 0.3, E: 110");
    assertThat(result(same).verdict().passes()).isTrue();
  }

  @Test
  void aFibreIsNotGlassByItsName() {
    String cloth =
        """
        ---
        materials:
          - {id: cf, what: carbon fibre with glass tracer, kind: fibre, density: 1770 kg/m3, E: 240 GPa, poisson: 0.2, source: t}
          - {id: ep, kind: resin, density: 1120 kg/m3, E: 3.1 GPa, poisson: 0.35, source: t}
          - {id: cl, kind: cloth, weave: unidirectional, fibre: cf, resin: ep, areal-weight: 300 g/m2, fibre-fraction: 0.6, tensile-strength: 900 MPa, compressive-strength: 500 MPa, shear-strength: 40 MPa, source: t, basis: mean}
        sections:
          - {id: s, width: 1 m, layers: [{material: cl, plies: 4}]}
        assessments:
          - {id: a, method: section, designed: s, built: s, require: {stiffness: 1}}
        """;
    isOpen(result(cloth), "the fibre cf does not state its E-across and G");
  }

  private static final String BEAM =
      """
      sections:
        - {id: s, width: 60 mm, layers: [{material: spruce, thickness: 90 mm}]}
      assessments:
        - {id: a, method: section, designed: s, built: s, require: {reserve: 0.001}, load: {%s, span: 1 m, source: t}%s}
      """;

  private static double moment(String load) {
    Result result = result(BEAM.formatted(load, ""));
    double strength = row(result, Measure.MOMENT_SAGGING).built().orElseThrow().value();
    return strength / row(result, Measure.RESERVE).built().orElseThrow().value();
  }

  @Test
  void loadsOfSeveralKindsActTogether() {
    assertThat(moment("shape: uniform, force: 100 N")).isCloseTo(50, within(1e-9));
    assertThat(moment("shape: uniform, force: 100 N, pressure: 1 kPa, breadth: 400 mm"))
        .isCloseTo(250, within(1e-9));
    assertThat(moment("shape: uniform, force: 100 N, tip-force: 10 N")).isCloseTo(60, within(1e-9));
    assertThat(moment("shape: triangular, force: 90 N")).isCloseTo(30, within(1e-9));
    assertThat(
            moment("support: simple, shape: point, force: 100 N, pressure: 1 kPa, breadth: 80 mm"))
        .isCloseTo(25 + 10, within(1e-9));
    String triangle = BEAM.formatted("support: simple, shape: triangular, force: 90 N", "");
    assertThat(result(triangle).load().toString()).contains("M = 11.55 N·m, V = 60 N");
  }

  /** A pressure times a breadth times the span: 8 kPa on 300 mm of 1 m are 2400 N. */
  @Test
  void aPressureStandsOnABreadthOfTheSpan() {
    assertThat(moment("support: simple, pressure: 8 kPa, breadth: 300 mm"))
        .isCloseTo(2400 / 8.0, within(1e-9));
    Result longer =
        result(
            BEAM.formatted("support: simple, pressure: 8 kPa, breadth: 300 mm", "")
                .replace("span: 1 m", "span: 2 m, held-sideways: 300 mm"));
    assertThat(
            row(longer, Measure.MOMENT_SAGGING).built().orElseThrow().value()
                / row(longer, Measure.RESERVE).built().orElseThrow().value())
        .isCloseTo(8000 * 0.3 * 4 / 8, within(1e-9));
  }

  @Test
  void aLoadThatCannotBeTakenWholeIsNotTaken() {
    isOpen(
        result(
            BEAM.formatted("shape: uniform, force: 1 N, speed: 6 kn, area: 0.2 m2, lift: 1.1", "")),
        "the load states a force and the speed, area and lift that give one");
    isOpen(
        result(BEAM.formatted("shape: uniform, force: 1 N, speed: 6 kn", "")),
        "speed without area and lift");
    isOpen(
        result(BEAM.formatted("shape: uniform, force: 1 N, pressure: 1 kPa", "")),
        "a pressure without the breadth");
    isOpen(result(BEAM.formatted("support: simple, tip-force: 100 N", "")), "has no tip");
    isOpen(
        result(BEAM.formatted("force: 1 N", "")),
        "the load does not say how its force lies along the span: add shape: point");
    isOpen(
        result(BEAM.formatted("force: 1 N", "")),
        "“reserve” is not told by this method, since its load could not be taken");
    isOpen(result(BEAM.formatted("force: 0 N", "")), "the load’s force is zero");
    isOpen(
        result(BEAM.formatted("tip-force: 1 N, ends: pinned", "")),
        "how the ends are held, and no thrust");
    isOpen(
        result(BEAM.formatted("tip-force: 1 N, shape: point", "")),
        "how a force lies along the span (shape), and no force");
  }

  @Test
  void aSafetyFactorDoesNotTakeFromTheLoad() {
    for (String factor : new String[] {"0.001", "0", "0.99"}) {
      isOpen(
          result(BEAM.formatted("shape: uniform, force: 1 N, factor: " + factor, "")),
          "the load’s safety factor is " + factor + ", and it is at least 1");
    }
    assertThat(
            result(BEAM.formatted("shape: uniform, force: 1 N, factor: 1", "")).verdict().passes())
        .isTrue();
  }

  @Test
  void aReserveAgainstALoadWithoutASourceIsOpen() {
    isOpen(
        result(BEAM.formatted("shape: uniform, force: 1 N", "").replace(", source: t}}", "}}")),
        "the load has no source");
  }

  @Test
  void whatIsAskedAndHasNoNumberDoesNotPass() {
    Result result =
        result(
            """
            sections:
              - {id: s, width: 60 mm, layers: [{material: spruce, thickness: 30 mm}, {material: al, thickness: 2 mm}]}
            assessments:
              - {id: a, method: section, designed: s, built: s, require: {torsion: 1}}
            """);
    isOpen(result, "s is of a kind whose torsion is not known here");
  }

  @Test
  void aMisspeltFactorIsNotTakenForAnother() {
    isOpen(
        result(
            BEAM.formatted(
                "shape: uniform, force: 1 N, factor: 1",
                ", factors: {moistur: 0.5}, sources: [\"moistur: t\"]")),
        "“moistur” is no factor: did you mean “moisture”?");
    isOpen(
        result(
            BEAM.formatted("shape: uniform, force: 1 N, factor: 1", ", factors: {moisture: 0.5}")),
        "the factor “moisture” has no source");
    Result sourced =
        result(
            BEAM.formatted(
                "shape: uniform, force: 1 N, factor: 1",
                ", factors: {moisture: 0.5}, sources: [\"moisture: WH\"]"));
    assertThat(sourced.verdict().passes()).isTrue();
    assertThat(sourced.factors())
        .containsExactly(
            "strengths of timber and plywood times 0.5 for moisture as designed and as built;"
                + " source: WH");
  }

  @Test
  void aKnockDownMayBeOnThePartAsBuiltOrOnOneLayer() {
    String built = ", knock-downs: [{for: scarf, value: 0.8, on: built, source: t}]";
    Result one = result(BEAM.formatted("shape: uniform, force: 1 N", built));
    assertThat(row(one, Measure.MOMENT_SAGGING).ratio().orElseThrow())
        .isCloseTo(0.8, within(1e-12));
    String layer = built.replace("on: built", "on: built, layer: 2");
    isOpen(
        result(BEAM.formatted("shape: uniform, force: 1 N", layer)),
        "section s has no layer for the knock-down for scarf as built, layer 2");
    isOpen(
        result(
            BEAM.formatted(
                "shape: uniform, force: 1 N",
                built.replace("value: 0.8", "slope: 12").replace(", source: t", ""))),
        "is not confirmed in its source");
  }

  @Test
  void aSourceVouchesForWhatItNames() {
    String bare =
        BEAM.replace("%s, span", "shape: uniform, force: 1 N, factor: 1, span")
            .replace("%s}", ", sources: [\"%s\"]}");
    String unsourced =
        """
        ---
        materials:
          - {id: ply, kind: timber, density: 500 kg/m3, E: 9 GPa, bending-strength: 40 MPa, shear-strength: 5 MPa}
        """
            + bare.replace("material: spruce", "material: ply");
    isOpen(
        result(unsourced.formatted("reply of the yard on the phone")),
        "the E of ply has no source");
    isOpen(result(unsourced.formatted("plywood: test")), "the E of ply has no source");
    assertThat(result(unsourced.formatted("ply: reply of the yard")).verdict().passes()).isTrue();
  }

  @Test
  void slipsOfAUnitAreNoStuff() {
    String slip =
        BEAM.formatted("shape: uniform, force: 1 N", "")
            .replace("material: spruce", "material: soft");
    String soft =
        """
        ---
        materials:
          - {id: soft, kind: timber, density: 400 kg/m3, E: 12.4 MPa, bending-strength: 45 MPa, shear-strength: 5 MPa, source: t}
        """;
    isOpen(
        result(soft + slip),
        "the E of material soft is 12.4 MPa, and no timber lies outside 1.5 to 30 GPa");
  }

  @Test
  void twoRecordsOfOneIdAreNotChosenBetween() {
    String twice =
        BEAM.formatted("shape: uniform, force: 1 N", "")
            .replace(
                "sections:\n",
                "sections:\n"
                    + "  - {id: s, width: 60 mm, layers: [{material: spruce, thickness: 99"
                    + " mm}]}\n");
    var out = new kitwright.finding.Findings();
    var ledger =
        Sample.read(
                java.util.Map.of(
                    "kitwright.yaml",
                    "build: {name: S, currency: EUR, started: 2026-01-05}\n" + STUFF + twice),
                out)
            .orElseThrow();
    assertThat(Assessments.on(Facts.of(ledger, Sample.TODAY)).all().get(0).verdict().because())
        .contains("two sections are called “s”");
  }

  @Test
  void aBoltClassHoldsForItsDiameters() {
    String bolts =
        """
        sections:
          - {id: s, shape: bolt, material: %s, dimensions: {diameter: %s mm}}
        assessments:
          - {id: a, method: bolt, designed: s, built: s, require: {strength: 1}}
        """;
    assertThat(result(bolts.formatted("bolt-8-8", "16")).verdict().passes()).isTrue();
    assertThat(result(bolts.formatted("bolt-8-8-over-m16", "20")).verdict().passes()).isTrue();
    isOpen(result(bolts.formatted("bolt-8-8", "22")), "bolt-8-8 on M22: it states 800 MPa");
    isOpen(result(bolts.formatted("bolt-8-8-over-m16", "8")), "bolt-8-8-over-m16 on M8: it states");
    isOpen(
        result(bolts.formatted("bolt-a4-70", "27")), "has no strength of its standard above M24");
  }

  @Test
  void aBuiltInMaterialThatIsOverriddenIsTold() {
    String own =
        """
        ---
        materials:
          - {id: white-oak, kind: timber, basis: mean, density: 755 kg/m3, E: 26 GPa, bending-strength: 104.8 MPa, shear-strength: 13.8 MPa, source: my guess}
        """
            + BEAM.formatted("shape: uniform, force: 1 N", "")
                .replace("material: spruce", "material: white-oak");
    assertThat(result(own).cautions())
        .anyMatch(
            caution ->
                caution.equals(
                    "white-oak of this ledger stands in place of the built-in one: E 26 GPa (built"
                        + " in: 12.27 GPa)"));
  }

  /** Isotropic and square, ν 0.3: 0.0325·q·a² at the corner (Timoshenko, table 8), 6·M/t² there. */
  @Test
  void aSimplySupportedPanelIsTwistedAtItsCorners() {
    Result result =
        result(
            """
            ---
            materials:
              - {id: weak, kind: laminate, isotropic: yes, poisson: 0.3, density: 1700 kg/m3, E: 14 GPa, tensile-strength: 235 MPa, compressive-strength: 205 MPa, shear-strength: 10 MPa, source: t, basis: mean}
            sections:
              - {id: s, width: 1 m, layers: [{material: weak, thickness: 4 mm}]}
            assessments:
              - {id: a, method: panel, designed: s, built: s, require: {reserve: 1}, load: {pressure: 2 kPa, span: 300 mm, breadth: 300 mm, support: simple, source: t}}
            """);
    Figure reserve = row(result, Measure.RESERVE).built().orElseThrow();
    assertThat(reserve.governing())
        .contains("shear in its plane from twist of layer 1, at a corner");
    assertThat(reserve.value()).isCloseTo(10e6 * 16e-6 / 6 / (0.0325 * 2000 * 0.09), within(0.03));
  }

  @Test
  void aPanelThatGivesMoreThanItsThicknessHasNoReserve() {
    String panel =
        """
        sections:
          - {id: s, width: 1 m, layers: [{material: skin, thickness: 2 mm}]}
        assessments:
          - {id: a, method: panel, designed: s, built: s, require: {reserve: 0.01}, load: {pressure: %s kPa, span: 500 mm, breadth: 500 mm, support: simple, factor: 1, source: t}}
        """;
    isOpen(result(panel.formatted("2")), "times its own thickness under the load");
    Result half = result(panel.formatted("0.06"));
    assertThat(half.verdict().passes()).isTrue();
    assertThat(half.cautions()).anyMatch(caution -> caution.contains("more than half its 2 mm"));
  }

  /**
   * E 14 GPa, ν 0.3, 2 mm: A₁₁ = E·t/(1 − ν²), free E·t, D₁₁ free to narrow E·t³/12, 235 MPa · 2
   * mm.
   */
  @Test
  void aLaminateByHand() {
    Result result =
        result(
            """
            sections:
              - {id: s, width: 1 m, layers: [{material: skin, thickness: 2 mm}]}
            assessments:
              - {id: a, method: laminate, designed: s, built: s, require: {stiffness: 1, strength: 1}}
            """);
    assertThat(row(result, Measure.STRETCH).built().orElseThrow().value())
        .isCloseTo(28 / 0.91, within(1e-9));
    assertThat(row(result, Measure.STRETCH_FREE).built().orElseThrow().value())
        .isCloseTo(28, within(1e-9));
    assertThat(row(result, Measure.STRETCH_ACROSS).built().orElseThrow().value())
        .isCloseTo(28 / 0.91, within(1e-9));
    assertThat(row(result, Measure.SHEAR_IN_PLANE).built().orElseThrow().value())
        .isCloseTo(6, within(1e-9));
    assertThat(row(result, Measure.BENDING).built().orElseThrow().value())
        .isCloseTo(14e9 * 8e-9 / 12, within(1e-6));
    assertThat(row(result, Measure.TENSION).built().orElseThrow().value())
        .isCloseTo(470, within(1.0));
    assertThat(row(result, Measure.COMPRESSION).built().orElseThrow().value())
        .isCloseTo(410, within(1.0));
    assertThat(row(result, Measure.SHEAR_STRENGTH).built().orElseThrow().value())
        .isCloseTo(96, within(1e-6));
    assertThat(row(result, Measure.THICKNESS).built().orElseThrow().value())
        .isCloseTo(2, within(1e-12));
    assertThat(row(result, Measure.PLATE_MASS).built().orElseThrow().value())
        .isCloseTo(3.4, within(1e-12));
  }

  /**
   * Else the core as drawn would be told as strong as its glue, and a sound one failed beside it.
   */
  @Test
  void aCapacityThatLeansOnAMissingValueIsNotToldAtAll() {
    Result open =
        result(
            CORE.formatted("")
                .replace("designed: foamed, built: wooden", "designed: wooden, built: foamed"));
    isOpen(open, "cedar (layer 2) does not state its shear-strength-across");
    assertThat(row(open, Measure.SHEAR).designed()).isEmpty();
    assertThat(row(open, Measure.SHEAR).ratio()).isEmpty();
  }
}
