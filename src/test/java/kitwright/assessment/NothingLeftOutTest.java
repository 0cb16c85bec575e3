package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import kitwright.Sample;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Verdict;
import kitwright.assessment.sheet.Verdict.Outcome;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a ledger states and nothing would take keeps a verdict open: it is never dropped. */
class NothingLeftOutTest {
  private static final String LEDGER =
      """
      ---
      materials:
        - {id: spruce, kind: timber, density: 415 kg/m3, E: 10.9 GPa, G: 0.7 GPa, tensile-strength: 72 MPa, compressive-strength: 38 MPa, bending-strength: 69 MPa, shear-strength: 7.7 MPa, source: test, basis: mean}
        - {id: jelly, kind: metal, density: 2700 kg/m3, E: 70 GPa, poisson: 3, yield-strength: 240 MPa, source: test, basis: mean}
        - {id: fibre, kind: fibre, isotropic: yes, density: 2550 kg/m3, E: 73 GPa, poisson: 0.22, source: test}
        - {id: epoxy, kind: resin, density: 1150 kg/m3, E: 3.2 GPa, poisson: 0.35, source: test}
        - {id: twill, kind: cloth, weave: woven, crimp: 0.93, fibre: fibre, resin: epoxy, areal-weight: 300 g/m2, fibre-fraction: 0.5, tensile-strength: 235 MPa, compressive-strength: 205 MPa, shear-strength: 48 MPa, source: test, basis: mean}
        - {id: wet, kind: timber, moisture: 25 %%, density: 415 kg/m3, E: 10.9 GPa, G: 0.7 GPa, bending-strength: 69 MPa, source: test, basis: mean}
        - {id: dry, kind: timber, moisture: 8 %%, density: 415 kg/m3, E: 10.9 GPa, G: 0.7 GPa, bending-strength: 69 MPa, source: test, basis: mean}
        - {id: dubious, kind: timber, density: 415 kg/m3, E: 10.9 GPa, G: 0.7 GPa, bending-strength: 69 MPa, source: my guess, basis: mean}
        - {id: rounded, kind: timber, isotropic: yes, density: 415 kg/m3, E: 10.9 GPa, G: 0.7 GPa, bending-strength: 69 MPa, source: test, basis: mean}
        - {id: cells-20, kind: core, cell: 20 mm, density: 48 kg/m3, E: 2 MPa, E-across: 2 MPa, E-through: 140 MPa, G: 40 MPa, G-across: 25 MPa, compressive-strength: 2 MPa, shear-strength: 1.2 MPa, shear-strength-across: 0.7 MPa, source: test, basis: mean}
        - {id: cells-6, kind: core, cell: 6 mm, density: 48 kg/m3, E: 2 MPa, E-across: 2 MPa, E-through: 140 MPa, G: 40 MPa, G-across: 25 MPa, compressive-strength: 2 MPa, shear-strength: 1.2 MPa, shear-strength-across: 0.7 MPa, source: test, basis: mean}
        - {id: cloth, kind: laminate, density: 1700 kg/m3, E: 14 GPa, E-across: 14 GPa, G: 3 GPa, G-across: 3 GPa, poisson: 0.15, tensile-strength: 235 MPa, tensile-strength-across: 235 MPa, compressive-strength: 205 MPa, compressive-strength-across: 205 MPa, shear-strength: 48 MPa, shear-strength-across: 48 MPa, source: test, basis: mean}
        - {id: tape, kind: laminate, density: 1800 kg/m3, E: 38 GPa, E-across: 8 GPa, G: 3.5 GPa, G-across: 3 GPa, poisson: 0.28, tensile-strength: 900 MPa, tensile-strength-across: 35 MPa, compressive-strength: 600 MPa, compressive-strength-across: 120 MPa, shear-strength: 60 MPa, shear-strength-across: 40 MPa, source: test, basis: mean}
        - {id: board, kind: plywood, density: 500 kg/m3, E: 7 GPa, E-across: 4 GPa, G: 0.6 GPa, tensile-strength: 35 MPa, compressive-strength: 25 MPa, bending-strength: 45 MPa, shear-strength: 5 MPa, source: test, basis: mean}
        - {id: plane-board, kind: plywood, density: 500 kg/m3, E: 6 GPa, E-across: 4 GPa, G: 0.6 GPa, tensile-strength: 35 MPa, compressive-strength: 25 MPa, shear-strength: 5 MPa, source: test, basis: mean}
        - {id: glass, kind: laminate, isotropic: yes, density: 1700 kg/m3, E: 14 GPa, poisson: 0.3, tensile-strength: 235 MPa, compressive-strength: 205 MPa, shear-strength: 48 MPa, source: test, basis: mean}
      sections:
        - {id: plain, width: 60 mm, layers: [{material: spruce, thickness: 90 mm}]}
        - {id: film, width: 60 mm, layers: [{material: spruce, thickness: 0.001 mm}]}
        - {id: plain-to-film, width: 60 mm, layers: [{material: spruce, thickness: 90 mm}], tapers-to: film}
        - {id: sheaf, width: 60 mm, layers: [{material: twill, plies: 5000}]}
        - {id: of-jelly, shape: tube, material: jelly, dimensions: {diameter: 100 mm, wall: 6 mm}}
        - {id: eight-far, shape: bolt, material: bolt-8-8, dimensions: {diameter: 10 mm, count: 8, edge-distance: 40 m}, layers: [{material: spruce, thickness: 40 mm, grain: along}, {material: spruce, thickness: 60 mm, grain: along}]}
        - {id: of-wet, width: 60 mm, layers: [{material: wet, thickness: 90 mm}]}
        - {id: of-dry, width: 60 mm, layers: [{material: dry, thickness: 90 mm}]}
        - {id: of-dubious, width: 60 mm, layers: [{material: dubious, thickness: 90 mm}]}
        - {id: of-rounded, width: 60 mm, layers: [{material: rounded, thickness: 90 mm}]}
        - {id: skinned, width: 60 mm, layers: [{material: spruce, thickness: 90 mm}], skins: [{material: glass, thickness: 3 mm}]}
        - {id: membered, width: 60 mm, layers: [{material: spruce, thickness: 90 mm}], members: [{what: rib, material: glass, width: 10 mm}]}
        - {id: measured, width: 60 mm, layers: [{material: spruce, thickness: 90 mm}], dimensions: {height: 120 mm}}
        - {id: of-two, width: 60 mm, material: glass, layers: [{material: spruce, thickness: 90 mm}]}
        - {id: deep, width: 20 mm, layers: [{material: spruce, thickness: 200 mm}]}
        - {id: flat, width: 200 mm, layers: [{material: spruce, thickness: 20 mm}]}
        - {id: deep-metal, shape: rectangle, material: glass, dimensions: {width: 10 mm, height: 200 mm}}
        - {id: thin, width: 40 mm, layers: [{material: spruce, thickness: 70 mm}]}
        - {id: tall, width: 40 mm, layers: [{material: spruce, thickness: 150 mm}]}
        - {id: third, width: 30 mm, layers: [{material: spruce, thickness: 90 mm}]}
        - {id: stout, width: 45 mm, layers: [{material: spruce, thickness: 90 mm}]}
        - {id: slim, width: 15 mm, layers: [{material: spruce, thickness: 90 mm}]}
        - {id: slim-stack, width: 15 mm, layers: [{material: spruce, thickness: 60 mm}, {material: glass, thickness: 30 mm}]}
        - {id: tee, width: 60 mm, layers: [{thickness: 100 mm, strips: [{void: 28 mm}, {material: glass, width: 4 mm}, {void: 28 mm}]}, {material: glass, thickness: 10 mm}]}
        - {id: standing, width: 60 mm, layers: [{material: glass, thickness: 8 mm}, {thickness: 44 mm, strips: [{material: glass, width: 8 mm}, {void: 52 mm}]}, {material: glass, thickness: 8 mm}]}
        - {id: lying, width: 60 mm, layers: [{material: glass, thickness: 8 mm}, {thickness: 20 mm, strips: [{material: glass, width: 8 mm}, {void: 44 mm}, {material: glass, width: 8 mm}]}]}
        - {id: i, shape: i, material: glass, dimensions: {width: 60 mm, height: 60 mm, web: 6 mm, flange: 6 mm}}
        - {id: slim-webs, width: 60 mm, layers: [{material: spruce, thickness: 10 mm}, {thickness: 120 mm, strips: [{material: spruce, width: 5 mm}, {void: 50 mm}, {material: spruce, width: 5 mm}]}, {material: spruce, thickness: 10 mm}]}
        - {id: split-webs, width: 60 mm, layers: [{material: spruce, thickness: 10 mm}, {thickness: 60 mm, strips: [{material: spruce, width: 5 mm}, {void: 50 mm}, {material: spruce, width: 5 mm}]}, {thickness: 60 mm, strips: [{material: spruce, width: 5 mm}, {void: 50 mm}, {material: spruce, width: 5 mm}]}, {material: spruce, thickness: 10 mm}]}
        - {id: stout-webs, width: 60 mm, layers: [{material: spruce, thickness: 10 mm}, {thickness: 60 mm, strips: [{material: spruce, width: 5 mm}, {void: 50 mm}, {material: spruce, width: 5 mm}]}, {material: spruce, thickness: 10 mm}]}
        - {id: board-up, shape: rectangle, material: board, dimensions: {width: 18 mm, height: 19 mm}}
        - {id: board-flat, shape: rectangle, material: board, dimensions: {width: 90 mm, height: 18 mm}}
        - {id: board-tube, shape: tube, material: board, dimensions: {diameter: 60 mm, wall: 18 mm}}
        - {id: board-web, width: 60 mm, layers: [{material: spruce, thickness: 20 mm}, {thickness: 50 mm, strips: [{material: board, width: 18 mm}, {void: 24 mm}, {material: board, width: 18 mm}]}, {material: spruce, thickness: 20 mm}]}
        - {id: plane-web, width: 60 mm, layers: [{material: spruce, thickness: 20 mm}, {thickness: 50 mm, strips: [{material: plane-board, width: 18 mm}, {void: 24 mm}, {material: plane-board, width: 18 mm}]}, {material: spruce, thickness: 20 mm}]}
        - {id: wide-cells, width: 60 mm, layers: [{material: glass, thickness: 1 mm}, {material: cells-20, thickness: 20 mm}, {material: glass, thickness: 1 mm}]}
        - {id: one-thin-face, width: 60 mm, layers: [{material: glass, thickness: 1 mm}, {material: cells-6, thickness: 20 mm}, {material: glass, thickness: 0.5 mm}]}
        - {id: narrow-cells, width: 60 mm, layers: [{material: glass, thickness: 1 mm}, {material: cells-6, thickness: 20 mm}, {material: glass, thickness: 1 mm}]}
        - {id: cells-in-strips, width: 60 mm, layers: [{material: glass, thickness: 1 mm}, {thickness: 20 mm, strips: [{material: glass, width: 10 mm}, {material: cells-6, width: 50 mm}]}, {material: glass, thickness: 1 mm}]}
        - {id: slab, width: 60 mm, layers: [{material: glass, thickness: 20 mm}]}
        - {id: traced-twice, shape: polygon, material: glass, outline: [{y: 0 mm, z: 0 mm}, {y: 60 mm, z: 0 mm}, {y: 60 mm, z: 40 mm}, {y: 0 mm, z: 40 mm}, {y: 0 mm, z: 0 mm}, {y: 60 mm, z: 0 mm}, {y: 60 mm, z: 40 mm}, {y: 0 mm, z: 40 mm}]}
        - {id: figure-eight, shape: polygon, material: glass, outline: [{y: 0 mm, z: 0 mm}, {y: 60 mm, z: 40 mm}, {y: 60 mm, z: 0 mm}, {y: 0 mm, z: 90 mm}]}
        - {id: star, shape: polygon, material: glass, outline: [{y: 50 mm, z: 0 mm}, {y: 79 mm, z: 90 mm}, {y: 2 mm, z: 35 mm}, {y: 98 mm, z: 35 mm}, {y: 21 mm, z: 90 mm}]}
        - {id: keyhole, shape: polygon, material: glass, outline: [{y: 0 mm, z: 0 mm}, {y: 60 mm, z: 0 mm}, {y: 60 mm, z: 60 mm}, {y: 0 mm, z: 60 mm}, {y: 0 mm, z: 0 mm}, {y: 20 mm, z: 20 mm}, {y: 20 mm, z: 40 mm}, {y: 40 mm, z: 40 mm}, {y: 40 mm, z: 20 mm}, {y: 20 mm, z: 20 mm}]}
        - {id: bored, width: 60 mm, layers: [{material: spruce, thickness: 40 mm}, {thickness: 12 mm, strips: [{void: 60 mm}]}, {material: spruce, thickness: 40 mm}]}
        - {id: sloping, shape: polygon, material: glass, outline: [{y: 10 mm, z: 0 mm, wall: 2 mm}, {y: 50 mm, z: 0 mm, wall: 3 mm}, {y: 60 mm, z: 40 mm, wall: 2 mm}, {y: 0 mm, z: 40 mm, wall: 3 mm}]}
        - {id: half-walled, shape: polygon, material: glass, outline: [{y: 10 mm, z: 0 mm, wall: 2 mm}, {y: 50 mm, z: 0 mm}, {y: 60 mm, z: 40 mm, wall: 2 mm}, {y: 0 mm, z: 40 mm}]}
        - {id: walled-twice, shape: polygon, material: glass, dimensions: {wall: 2 mm}, outline: [{y: 10 mm, z: 0 mm, wall: 2 mm}, {y: 50 mm, z: 0 mm, wall: 3 mm}, {y: 60 mm, z: 40 mm, wall: 2 mm}, {y: 0 mm, z: 40 mm, wall: 3 mm}]}
        - {id: woven, width: 1 m, layers: [{material: cloth, thickness: 2 mm, angle: 0 deg}]}
        - {id: one-way, width: 1 m, layers: [{material: tape, thickness: 2 mm, angle: 0 deg}]}
        - {id: pipe, shape: tube, material: glass, dimensions: {diameter: 100 mm, wall: 6 mm}}
        - {id: paper-pipe, shape: tube, material: glass, dimensions: {diameter: 100 mm, wall: 0.5 mm}}
        - {id: drilled, width: 60 mm, layers: [{thickness: 90 mm, strips: [{material: spruce, width: 24 mm}, {void: 12 mm}, {material: spruce, width: 24 mm}]}]}
        - {id: drilled-glass, width: 60 mm, layers: [{thickness: 20 mm, strips: [{material: glass, width: 24 mm}, {void: 12 mm}, {material: glass, width: 24 mm}]}]}
        - {id: angle, shape: polygon, material: glass, outline: [{y: 0 mm, z: 0 mm}, {y: 50 mm, z: 0 mm}, {y: 50 mm, z: 5 mm}, {y: 5 mm, z: 5 mm}, {y: 5 mm, z: 80 mm}, {y: 0 mm, z: 80 mm}]}
        - {id: stout-angle, shape: polygon, material: glass, outline: [{y: 0 mm, z: 0 mm}, {y: 60 mm, z: 0 mm}, {y: 60 mm, z: 20 mm}, {y: 20 mm, z: 20 mm}, {y: 20 mm, z: 50 mm}, {y: 0 mm, z: 50 mm}]}
        - {id: wide, width: 90 mm, shape: rectangle, material: spruce, dimensions: {width: 60 mm, height: 90 mm}}
        - {id: glued, glue: spruce, shape: rectangle, material: spruce, dimensions: {width: 60 mm, height: 90 mm}}
        - {id: wood-glued, width: 60 mm, glue: spruce, layers: [{material: spruce, thickness: 45 mm}, {material: spruce, thickness: 45 mm}]}
        - {id: turned, width: 60 mm, layers: [{material: glass, thickness: 90 mm, grain: across, angle: 0 deg}]}
        - {id: half-void, width: 60 mm, layers: [{thickness: 90 mm, strips: [{material: spruce, width: 30 mm}, {material: glass, void: 30 mm}]}]}
        - {id: low-spine, shape: foil, material: spruce, dimensions: {chord: 300 mm, thickness-ratio: 0.2}, members: [{what: spine, material: glass, width: 40 mm, height: 10 mm}]}
        - {id: eight, shape: bolt, material: bolt-8-8, dimensions: {diameter: 10 mm, cuont: 8}}
        - {id: two, shape: bolt, material: bolt-8-8, dimensions: {diameter: 10 mm, count: 2}}
      assessments:
        - {id: a, %s}
      """;

  private static Verdict verdict(String asked) {
    return Assessed.of(LEDGER.formatted(asked)).result().verdict();
  }

  private static void isOpen(String asked, String why) {
    Verdict verdict = verdict(asked);
    assertThat(verdict.outcome()).as(verdict.because()).isEqualTo(Outcome.CANNOT_TELL);
    assertThat(verdict.because()).contains(why);
  }

  @ParameterizedTest
  @CsvSource({
    "skinned",
    "membered",
    "measured",
    "of-two",
    "wide",
    "glued",
    "turned",
    "half-void",
    "low-spine"
  })
  void aSectionStatesNothingThatItsKindDoesNotTake(String section) {
    isOpen(
        "method: section, designed: " + section + ", built: plain, require: {stiffness: 0.001}",
        "section " + section + " cannot be as it is written");
  }

  @Test
  void aBoltHasNoOtherDimensions() {
    isOpen(
        "method: bolt, designed: eight, built: two, require: {strength: 1}",
        "section eight cannot be as it is written");
  }

  /** A slip of the unit may help as well as hurt. */
  @ParameterizedTest
  @CsvSource({
    "tip-force: 10 N%% span: 2 m%% held-sideways: 0.4 mm, held-sideways: 0.4 mm",
    "tip-force: 10 N%% span: 60 m, span: 60 m",
    "speed: 5 kn%% area: 0.2 m2%% lift: 1%% density: 1.025 kg/m3%% span: 2 m, density: 1.025 kg/m3",
    "force: 10 N%% shape: point%% support: simple%% bearing: 6 m%% span: 20 m, bearing: 6 m"
  })
  void nothingPassesOnALoadOutsideWhatItPlausiblyIs(String load, String slip) {
    isOpen(
        "method: section, designed: plain, built: plain, require: {stiffness: 1}, load: {"
            + load.replace("%%", ",")
            + ", source: test}",
        "“" + slip + "” of the assessment a is outside what it plausibly is");
  }

  @Test
  void nothingPassesOnASectionOutsideWhatItPlausiblyIs() {
    isOpen(
        "method: section, designed: film, built: plain, require: {stiffness: 1}",
        "“thickness: 0.001 mm” of the section film is outside what it plausibly is");
    isOpen(
        "method: section, designed: plain, built: plain, require: {stiffness: 1}, weak-link:"
            + " {sacrificial: film, protected: plain, breaks-at: 1 m, margin: 1}, load: {tip-force:"
            + " 10 N, span: 2 m, factor: 1, source: test}",
        "“thickness: 0.001 mm” of the section film is outside what it plausibly is");
    isOpen(
        "method: section, designed: plain, built: plain-to-film, require: {stiffness: 1}",
        "“thickness: 0.001 mm” of the section film is outside what it plausibly is");
    isOpen(
        "method: section, designed: plain, built: sheaf, require: {stiffness: 1}",
        "section sheaf cannot be as it is written");
    isOpen(
        "method: bolt, designed: eight-far, built: two, require: {strength: 0.1}",
        "section eight-far cannot be as it is written");
  }

  @Test
  void nothingPassesOnAPoissonsRatioThatIsNone() {
    isOpen(
        "method: section, designed: of-jelly, built: pipe, require: {torsion: 0.001}",
        "the poisson of material jelly is 3, and no metal lies outside 0 to 0.5");
  }

  /** By Euler a pipe of E·I = 35.3 kN·m² that stands 2 m high bears 21.8 kN at the most. */
  @Test
  void whatBucklesUnderItsThrustGivesWithoutBound() {
    String pushed =
        "method: section, designed: pipe, built: pipe, require: {stiffness: 1}, allow: {deflection:"
            + " 1}, load: {tip-force: 10 N, thrust: %s, ends: fixed-free, span: 2 m, factor: 1,"
            + " source: test}";
    isOpen(pushed.formatted("24 kN"), "pipe buckles under the thrust: it gives without bound");
    assertThat(verdict(pushed.formatted("10 kN")).because()).doesNotContain("without bound");
  }

  @Test
  void woodIsNoGlue() {
    isOpen(
        "method: section, designed: plain, built: wood-glued, require: {shear: 0.5}",
        "the glue of section wood-glued is spruce, which is none");
  }

  @Test
  void noWoodIsTheSameEveryWay() {
    isOpen(
        "method: section, designed: plain, built: of-rounded, require: {stiffness: 0.5}",
        "material rounded says “isotropic: yes”, and no wood is the same every way");
  }

  @Test
  void aGuessIsNoSource() {
    isOpen(
        "method: section, designed: plain, built: of-dubious, require: {stiffness: 0.5}",
        "the E of dubious has no source");
    isOpen(
        "method: section, designed: plain, built: plain, require: {reserve: 1}, load: {shape:"
            + " uniform, force: 10 N, span: 1 m, source: unknown}",
        "the load has no source");
  }

  @Test
  void valuesOfWetWoodAreNotComparedWithThoseOfDryWood() {
    String wet = "method: section, designed: of-wet, built: of-dry, require: {moment: 1}";
    isOpen(
        wet,
        "the values of wet hold at 25 % moisture and those of dry at 8 %: state values at one"
            + " moisture, or a knock-down for moisture on one part");
    assertThat(
            verdict(
                    wet
                        + ", knock-downs: [{for: moisture, value: 1.3, on: designed, source:"
                        + " test}]")
                .fails())
        .isTrue();
  }

  /** Tables are at 12 %: what is stated away from that is not set beside what says nothing. */
  @Test
  void aWoodThatDoesNotSayHowMoistIsNotSetBesideWetWood() {
    isOpen(
        "method: section, designed: of-wet, built: plain, require: {moment: 1}",
        "the values of wet hold at 25 % moisture, and spruce does not say at which its values hold,"
            + " mostly 12 %: state values at one moisture, or a knock-down for moisture on one"
            + " part");
  }

  /** Half of the strength of the part as drawn alone is half of what is asked. */
  @ParameterizedTest
  @CsvSource({"moisture, what stands in its place is as wet", "temperature, is as hot"})
  void whatActsOnThePlaceIsNotOnThePartAsDrawnAlone(String cause, String why) {
    String asked =
        "method: section, designed: plain, built: plain, require: {moment: 1}, knock-downs: [{for: "
            + cause
            + ", value: 0.5, source: test, on: ";
    isOpen(asked + "designed}]", why);
    assertThat(verdict(asked + "both}]").passes()).isTrue();
    assertThat(verdict(asked + "built}]").fails()).isTrue();
  }

  @Test
  void howTheEndsOfAPanelAreHeldIsNotPassedOver() {
    isOpen(
        "method: panel, designed: woven, built: woven, require: {reserve: 1}, load: {pressure: 1"
            + " kPa, span: 300 mm, breadth: 200 mm, support: simple, ends: fixed, factor: 1,"
            + " source: test}",
        "its load also states how its ends are held (ends)");
  }

  @Test
  void aSectionSetBesideItselfIsSaidSo() {
    String said = "the section as built is the one as designed, plain: nothing is compared";
    String asked = "method: section, designed: plain, built: %s, require: {moment: 0.1}";
    assertThat(cautions(asked.formatted("plain"))).contains(said);
    assertThat(cautions(asked.formatted("thin"))).isEmpty();
    assertThat(
            cautions(
                asked.formatted("plain")
                    + ", knock-downs: [{for: grade, value: 0.5, on: built, source: test}]"))
        .isEmpty();
  }

  private static List<String> cautions(String asked) {
    return Assessments.on(Facts.of(Sample.ledger(LEDGER.formatted(asked)), Sample.TODAY))
        .all()
        .get(0)
        .cautions();
  }

  /** As a sheet in its plane a core does nothing: half of it would pass. */
  @Test
  void facesOnACoreAreNoSheet() {
    isOpen(
        "method: laminate, designed: one-thin-face, built: one-thin-face, require: {strength: 1}",
        "one-thin-face has a core, on which its faces wrinkle before they are pushed in");
  }

  @Test
  void aFactorTakesFromSomething() {
    String asked =
        "method: section, designed: plain, built: plain, require: {moment: 1}, knock-downs: [%s]";
    isOpen(
        asked.formatted("{for: laminate, value: 0.5, on: built, source: test}"),
        "the factor for laminate as built is on strengths of cloths and laminates, and there are"
            + " none");
    isOpen(
        asked.formatted("{for: grade, value: 1.2, on: built, source: test}"),
        "the factor “grade” lies outside 0 to 1");
    isOpen(
        asked.formatted(
            "{for: duration, value: 0.5, source: test}, {for: duration, value: 2, on: built,"
                + " source: test}"),
        "there are two factors for duration as built: keep the one that is meant");
  }

  @Test
  void aReserveNeedsASafetyFactorThatSomebodyStates() {
    String asked =
        "method: section, designed: plain, built: plain, require: {reserve: 1}, load: {shape:"
            + " uniform, force: 10 N, span: 1 m, source: test%s}";
    isOpen(asked.formatted(""), "its load states no safety factor: add factor to the load");
    assertThat(verdict(asked.formatted(", factor: 1")).passes()).isTrue();
    assertThat(
            verdict(
                    "method: section, designed: plain, built: plain, require: {moment: 1}, load:"
                        + " {shape: uniform, force: 10 N, span: 1 m, source: test}")
                .passes())
        .isTrue();
  }

  /** 20 by 200 mm over 4 m: it tips free, and bears its load where it is held every 300 mm. */
  @Test
  void aDeepNarrowBeamTipsOverBeforeItBreaks() {
    String beam =
        "method: section, designed: %1$s, built: %1$s, require: {reserve: 1}, load: {shape:"
            + " uniform, force: %2$s, support: simple, span: 4 m, factor: 1, source: test%3$s}";
    assertThat(verdict(beam.formatted("deep", "1.5 kN", "")).because())
        .contains("(tipping over sideways)");
    assertThat(verdict(beam.formatted("deep", "1.5 kN", ", held-sideways: 300 mm")).passes())
        .isTrue();
    assertThat(verdict(beam.formatted("flat", "1 kN", "")).passes()).isTrue();
    isOpen(
        beam.formatted("deep-metal", "1 kN", ""),
        "deep-metal is deep for its width and may tip over sideways before it breaks");
    isOpen(
        beam.formatted("deep-metal", "1 kN", ", held-sideways: 3.5 m"),
        "hold its side oftener than each 3.5 m (held-sideways), or make it wider");
  }

  /** A moment beside a moment, and what breaks first, say nothing of a beam that tips over. */
  @Test
  void aDeepNarrowBeamIsNotComparedByItsMomentAlone() {
    String bare = "method: section, designed: %s, built: %s, require: {moment: 0.01}%s";
    String tips = "may tip over sideways before it breaks, sooner than";
    isOpen(bare.formatted("flat", "deep", ""), "deep is deep for its width and " + tips + " flat");
    isOpen(bare.formatted("plain", "slim", ""), tips);
    isOpen(bare.formatted("plain", "slim-stack", ""), tips);
    assertThat(verdict(bare.formatted("deep", "deep", "")).passes()).isTrue();
    assertThat(verdict(bare.formatted("deep", "flat", "")).passes()).isTrue();
    assertThat(verdict(bare.formatted("flat", "stout", "")).passes()).isTrue();
    isOpen(
        "method: section, designed: deep, built: flat, require: {moment-across: 0.001}",
        "flat is deep for its width and may tip over sideways before it breaks, sooner than deep");
    String load =
        ", load: {shape: uniform, force: 10 N, support: simple, span: 4 m, factor: 1, source:"
            + " test%s}";
    isOpen(bare.formatted("flat", "third", load.formatted("")), tips);
    String held = load.formatted(", held-sideways: 50 mm");
    assertThat(verdict(bare.formatted("flat", "third", held)).passes()).isTrue();
    isOpen(
        bare.formatted("flat", "deep-metal", load.formatted("")),
        "deep-metal is deep for its width and may tip over sideways before it breaks, which is not"
            + " worked out for it: say how often its side is held (held-sideways), or make it"
            + " wider");
  }

  @Test
  void whichOfTwoDeepPartsGoesFirstIsNotToldWhereOneTips() {
    String linked =
        "method: section, designed: plain, built: plain, require: {stiffness: 1}, weak-link:"
            + " {sacrificial: thin, protected: %s, breaks-at: 1 m, margin: 1.5}, load: {tip-force:"
            + " 10 N, span: 2 m, factor: 1, source: test%s}";
    isOpen(
        linked.formatted("tall", ""),
        "tall may tip over sideways before it breaks, and which part goes first is not told then");
    assertThat(verdict(linked.formatted("tall", ", held-sideways: 50 mm")).because())
        .doesNotContain("tip over");
    assertThat(verdict(linked.formatted("plain", "")).because()).doesNotContain("tip over");
  }

  @Test
  void whichOfTwoGoesFirstIsNotToldOfOneThatTwists() {
    String linked =
        "method: section, designed: plain, built: plain, require: {stiffness: 1}, weak-link:"
            + " {sacrificial: thin, protected: %s, breaks-at: 1 m, margin: 1}, load: {tip-force: 10"
            + " N, span: 2 m, factor: 1, source: test}";
    assertThat(verdict(linked.formatted("standing")).because())
        .contains("a part of its weak link is open at one side or lies askew");
    assertThat(verdict(linked.formatted("plain")).because()).doesNotContain("open at one side");
  }

  @Test
  void whereAWeakLinkShallBreakIsSaid() {
    isOpen(
        "method: section, designed: plain, built: plain, require: {stiffness: 1}, weak-link:"
            + " {sacrificial: thin, protected: plain, margin: 1}, load: {tip-force: 10 N, span: 2"
            + " m, factor: 1, source: test}",
        "its weak link does not say where along the part the break is meant: add breaks-at");
  }

  @Test
  void aThinLegOfAPolygonMayBuckle() {
    String bare = "method: section, designed: %1$s, built: %1$s, require: {moment: 1}";
    isOpen(
        bare.formatted("angle"),
        "angle has a leg or wall of 80 mm that is 5 mm thick and may buckle first");
    assertThat(verdict(bare.formatted("stout-angle")).passes()).isTrue();
  }

  /** 5.4 GPa·(4/100)², under the 205 MPa at which it would be crushed. */
  @Test
  void theFreeEdgeOfATeeBuckles() {
    String bare = "method: section, designed: tee, built: tee, require: {moment: 1}";
    var edge =
        Assessed.of(LEDGER.formatted(bare)).result().rows().stream()
            .filter(row -> row.measure() == Measure.MOMENT_HOGGING)
            .findFirst()
            .flatMap(Row::built)
            .flatMap(Figure::governing);
    assertThat(edge).contains("buckling of the free edge of layer 1 strip 2");
  }

  /** 12 mm of 60: 0.8·(0.284 + 2/0.8 − 0.6·0.8 + 1.32·0.8²) = 2.519. */
  @Test
  void aHoleThroughALaminateIsNotToldAndThroughWoodItIs() {
    String bare = "method: section, designed: %1$s, built: %1$s, require: {moment: 1}";
    isOpen(
        bare.formatted("drilled-glass"),
        "drilled-glass has a hole through glass, which does not yield: beside one round hole its"
            + " stress is 2.519 times the mean of what is left");
    assertThat(verdict(bare.formatted("drilled")).because()).doesNotContain("hole");
  }

  @ParameterizedTest
  @CsvSource({"'allow: {mass: 1}'", "'require: {mass: 0.5}'", "'allow: {thickness: 1, mass: 1}'"})
  void whoAsksForWeightOrSizeAloneHearsNothingOfStrength(String asked) {
    isOpen(
        "method: section, designed: plain, built: plain, " + asked,
        "nothing about strength was asked: add what the part must bear");
    assertThat(
            verdict(
                    "method: section, designed: plain, built: plain, allow: {mass: 1}, require:"
                        + " {moment: 1}")
                .passes())
        .isTrue();
  }

  @Test
  void aLimitOfNoughtAsksNothing() {
    isOpen(
        "method: section, designed: plain, built: plain, require: {moment: 0}",
        "of moment it asks for zero, which everything meets");
  }

  /** EN 1995-1-1, table 3.1: 0.70 for a load of less than a week in the open. */
  @Test
  void howLongALoadLiesOnWoodIsAPublishedFactor() {
    String asked =
        "method: section, designed: plain, built: plain, require: {moment: 0.7}, knock-downs: [%s]";
    assertThat(verdict(asked.formatted("{for: duration, lasts: short, service-class: 3}")).passes())
        .isTrue();
    String reserve =
        "method: section, designed: plain, built: plain, require: {reserve: 1}, load: {tip-force:"
            + " 3.5 kN, span: 1 m, factor: 1, source: test}, knock-downs: [{for: duration, lasts:"
            + " %s, service-class: 3}]";
    assertThat(verdict(reserve.formatted("short")).passes()).isTrue();
    assertThat(verdict(reserve.formatted("long")).fails()).isTrue();
    isOpen(
        asked.formatted("{for: duration, lasts: short, service-class: 3, on: built}"),
        "the factor for duration is on one part alone");
    isOpen(
        asked.formatted("{for: duration, lasts: short}"),
        "the knock-down “duration” states no value, and none follows for it");
    isOpen(
        asked.formatted("{for: duration, lasts: short, value: 1, source: test}"),
        "states more than its value asks for");
  }

  /** What acts on both parts takes from both, and for as long. */
  @Test
  void aFactorOfTheLoadIsOnBothParts() {
    String asked =
        "method: section, designed: plain, built: plain, require: {moment: 0.1}, knock-downs: [%s]";
    for (String side : new String[] {"designed", "built"}) {
      isOpen(
          asked.formatted("{for: design-stress, value: 0.5, on: " + side + ", source: test}"),
          "the factor for design-stress is on one part alone, and what it is for acts on both:"
              + " state it on the part as "
              + (side.equals("built") ? "designed" : "built")
              + " too");
    }
    isOpen(
        asked.formatted(
            "{for: duration, value: 0.5, on: designed, source: test}, {for: duration, value: 0.9,"
                + " on: built, source: test}"),
        "the load lasts as long on both parts, and their factors for duration differ");
    assertThat(
            verdict(
                    asked.formatted(
                        "{for: design-stress, value: 0.5, on: designed, source: test}, {for:"
                            + " design-stress, value: 0.4, on: built, source: test}"))
                .passes())
        .isTrue();
  }

  @Test
  void aScarfSteeperThanFourToOneIsNotTrustedByAnyFactor() {
    isOpen(
        "method: section, designed: plain, built: plain, require: {moment: 0.1}, knock-downs:"
            + " [{for: scarf, slope: 3.9, value: 0.9, on: built, source: test}]",
        "a scarf of 3.9 to 1 is steeper than any is trusted");
    assertThat(
            verdict(
                    "method: section, designed: plain, built: plain, require: {moment: 0.1},"
                        + " knock-downs: [{for: scarf, slope: 4, value: 0.6, on: built, source:"
                        + " test}]")
                .passes())
        .isTrue();
  }

  /** A part that gives more, or bears at the most as much, is what is too weak. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "require: {deflection: 1}",
        "allow: {moment: 1, stiffness: 1}",
        "allow: {reserve: 999}"
      })
  void whatTheWeakPartHasAsWellIsNoStrength(String asked) {
    isOpen(
        "method: section, designed: plain, built: slim, load: {tip-force: 1 N, span: 1 m, factor:"
            + " 2, source: test}, "
            + asked,
        "nothing about strength was asked");
  }

  @Test
  void aPartThatGivesLessIsAsked() {
    assertThat(
            verdict(
                    "method: section, designed: plain, built: plain, load: {tip-force: 1 N, span: 1"
                        + " m, factor: 2, source: test}, allow: {deflection: 1}")
                .passes())
        .isTrue();
  }

  /** 60 by 90 mm: three times as long as deep where it lies on two, half of that where it hangs. */
  @Test
  void whatIsHardlyLongerThanDeepIsNoBeam() {
    String load =
        "method: section, designed: plain, built: plain, require: {reserve: 1}, load: {force: 10 N,"
            + " shape: point, support: %s, span: %s, factor: 1, source: test}";
    isOpen(load.formatted("simple", "269 mm"), "plain is too short for its depth");
    assertThat(verdict(load.formatted("simple", "270 mm")).passes()).isTrue();
    isOpen(load.formatted("clamped", "269 mm"), "its span is less than 3 times that");
    isOpen(load.formatted("cantilever", "134 mm"), "its span is less than 1.5 times that");
    assertThat(verdict(load.formatted("cantilever", "135 mm")).passes()).isTrue();
  }

  /** A channel on its back is alike at both sides; standing up it twists under its load. */
  @Test
  void aPartThatIsOpenAtOneSideTwistsUnderItsLoad() {
    String channels =
        "method: section, designed: %1$s, built: %1$s, require: {%2$s: 1}, load: {tip-force: 10 N,"
            + " span: 1 m, factor: 1, source: test}";
    isOpen(
        channels.formatted("standing", "reserve"),
        "standing is open at one side and twists under its load");
    isOpen(channels.formatted("standing", "shear"), "twists under its load");
    assertThat(verdict(channels.formatted("lying", "reserve")).passes()).isTrue();
    String pushed =
        "method: section, designed: %1$s, built: %1$s, require: {reserve: 1}, load: {thrust: 10 N,"
            + " ends: pinned, span: 1 m, factor: 1, source: test}";
    for (String open : new String[] {"standing", "lying", "tee"}) {
      isOpen(pushed.formatted(open), "it may twist as it buckles under a thrust");
    }
  }

  /**
   * Wood of 10.9 GPa, E/30 across, G 0.7: a web 24 times as high as thick buckles in shear at some
   * 5.9 of 7.7 MPa, written in one layer or in two; one 12 times as high does not.
   */
  @Test
  void aSlimWebBucklesInShear() {
    String bare = "method: section, designed: plain, built: %s, require: {stiffness: 0.001}";
    isOpen(bare.formatted("slim-webs"), "is 24 times as high as thick and may buckle in shear");
    isOpen(bare.formatted("split-webs"), "is 24 times as high as thick and may buckle in shear");
    assertThat(verdict(bare.formatted("stout-webs")).passes()).isTrue();
  }

  /** What a board states for bending as it lies flat says too much where it stands on edge. */
  @Test
  void plywoodOnEdgeIsNotTakenAsIfItLayFlat() {
    String bare = "method: section, designed: %1$s, built: %1$s, require: {%2$s: 1}";
    for (String upright : new String[] {"board-up", "board-tube", "board-web"}) {
      isOpen(bare.formatted(upright, "stiffness"), "plywood board stands on edge in section");
    }
    assertThat(verdict(bare.formatted("board-flat", "moment")).passes()).isTrue();
    assertThat(verdict(bare.formatted("plane-web", "stiffness")).because())
        .doesNotContain("on edge");
  }

  @Test
  void aHoleBoredFromSideToSideIsNotWorkedOut() {
    isOpen(
        "method: section, designed: plain, built: bored, require: {moment: 0.001}",
        "section bored cannot be as it is written");
    var ledger =
        Sample.ledger(
            LEDGER.formatted("method: section, designed: bored, built: bored, require: {mass: 1}"));
    assertThat(Sample.findings(new SectionImpossible(), ledger, Sample.TODAY))
        .anyMatch(
            one ->
                one.what().contains("layer 2 is void, as where a hole is bored from side to side"));
  }

  /** 2·14 GPa/(1 − …)·(1/20)² = 70 MPa, under the 205 MPa at which the face is crushed. */
  @Test
  void aFaceDimplesIntoTheCellsOfAHoneycomb() {
    String bare = "method: section, designed: %1$s, built: %1$s, require: {stiffness: 1}";
    isOpen(
        bare.formatted("wide-cells"),
        "a face of wide-cells, 1 mm thick, may dimple into cells of 20 mm at 70 MPa");
    isOpen(bare.formatted("one-thin-face"), "a face of one-thin-face, 0.5 mm thick, may dimple");
    isOpen(bare.formatted("cells-in-strips"), "cells-in-strips has a honeycomb that is no layer");
    assertThat(verdict(bare.formatted("narrow-cells")).passes()).isTrue();
    assertThat(assumptions(bare.formatted("narrow-cells"), ""))
        .noneMatch(one -> one.contains("cell"));
    assertThat(assumptions(bare.formatted("narrow-cells"), "cell: 6 mm, "))
        .contains(
            "cells-6 states no cell: it is taken to be without cells, as end-grain balsa is; of a"
                + " honeycomb state the cell, into which a face may dimple");
  }

  private static List<String> assumptions(String asked, String less) {
    String ledger = LEDGER.formatted(asked);
    return Assessed.of(less.isEmpty() ? ledger : ledger.replace(less, "")).result().notes();
  }

  /** Each side has its wall, or all have one; what is told of some is told of none. */
  @Test
  void everySideOfAHollowPolygonHasAWall() {
    String bare = "method: section, designed: %1$s, built: %1$s, require: {torsion: 1}";
    assertThat(verdict(bare.formatted("sloping")).passes())
        .as(verdict(bare.formatted("sloping")).because())
        .isTrue();
    for (String other : new String[] {"half-walled", "walled-twice"}) {
      isOpen(bare.formatted(other), "section " + other + " cannot be as it is written");
    }
  }

  @ParameterizedTest
  @CsvSource({"traced-twice", "figure-eight", "star"})
  void aPolygonGoesRoundOnce(String outline) {
    isOpen(
        "method: section, designed: plain, built: " + outline + ", require: {moment: 0.001}",
        "section " + outline + " cannot be as it is written");
  }

  @Test
  void aPolygonMayHaveASlitToItsHollow() {
    assertThat(
            verdict("method: section, designed: keyhole, built: keyhole, require: {stiffness: 1}")
                .because())
        .doesNotContain("cannot be as it is written");
  }

  /** Fibres of one direction in place of a woven skin: 35 of 235 MPa across, 60 of 48 sheared. */
  @Test
  void aLaminateThatIsWeakerAcrossIsNotJudgedByWhatItBearsAlong() {
    String asked = "method: laminate, designed: woven, built: one-way, require: {%s}%s";
    isOpen(
        asked.formatted("strength: 1", ""),
        "pull at first ply failure, across is 0.148 of the design value, and only what it bears"
            + " along was asked: ask for strength-across too");
    isOpen(asked.formatted("stiffness: 1", ""), "ask for stiffness-across too");
    assertThat(
            verdict(
                    asked.formatted(
                        "strength: 1, strength-across: 0.05, shear: 0.5",
                        ", less-because: {strength-across: a strip, shear: a strip}"))
                .passes())
        .isTrue();
    assertThat(verdict(asked.formatted("strength: 1", "").replace("one-way", "woven")).passes())
        .isTrue();
    assertThat(verdict(asked.formatted("strength-across: 1", "")).fails()).isTrue();
  }

  /** Too little by a least value is no failure, and what is drawn by one is no measure. */
  @Test
  void whatAWallBearsAtLeastNeitherFailsNorIsAMeasure() {
    String twisted =
        "method: section, designed: %s, built: %s, require: {%s: %s}, load: {torque: 10 Nm, span: 1"
            + " m, factor: 1, source: test}";
    isOpen(
        twisted.formatted("pipe", "paper-pipe", "torsion-strength", "1"),
        "buckles in shear at the least at less than is asked, and may bear more");
    isOpen(
        twisted.formatted("paper-pipe", "pipe", "torsion-strength", "1"),
        "a wall of the part as drawn buckles in shear at the least at the load told");
    assertThat(verdict(twisted.formatted("pipe", "paper-pipe", "reserve", "1")).passes()).isTrue();
    isOpen(
        twisted.formatted("pipe", "paper-pipe", "reserve", "1").replace("10 Nm", "1 kNm"),
        "buckles in shear at the least at less than is asked, and may bear more");
  }

  @Test
  void aPanelHardlyWiderThanThickIsNoPlate() {
    String asked =
        "method: panel, designed: slab, built: slab, require: {reserve: 1}, load: {pressure: 1 kPa,"
            + " span: 1 m, breadth: %s, support: simple, factor: 1, source: test}";
    isOpen(asked.formatted("59 mm"), "slab is too small for its thickness to be worked out");
    assertThat(verdict(asked.formatted("60 mm")).passes()).isTrue();
  }

  @Test
  void aTorqueOnAnIBendsItsFlanges() {
    isOpen(
        "method: section, designed: i, built: i, require: {reserve: 1}, load: {tip-force: 10 N,"
            + " torque: 1 Nm, span: 1 m, factor: 1, source: test}",
        "i is open: where its end is held a torque bends its flanges too");
  }

  /** A share of the scantling standard is stated with its clause. */
  @Test
  void aDesignStressIsStatedWithItsClause() {
    String asked =
        "method: section, designed: plain, built: plain, require: {reserve: 1}, load: {tip-force: 1"
            + " kN, span: 3 m, source: test}, knock-downs: [{for: design-stress%s}]";
    assertThat(verdict(asked.formatted(", value: 0.5, source: \"ISO 12215-5, table 9\"")).fails())
        .isTrue();
    isOpen(asked.formatted(""), "the knock-down “design-stress” states no value");
    isOpen(asked.formatted(", value: 0.6"), "the knock-down “design-stress” has no source");
    isOpen(
        asked.formatted(", source: \"NMA 5\""), "the knock-down “design-stress” states no value");
  }

  /** 0.4 of wood, 0.5 of glass: told, and nothing passes on what was read at second hand. */
  @Test
  void aDesignStressWithoutAValueIsThatOfTheStandardUnconfirmed() {
    String asked =
        "method: section, designed: %1$s, built: %1$s, require: {moment: 1}, knock-downs: [{for:"
            + " design-stress, source: \"ISO 12215-5:2008\"}]";
    isOpen(asked.formatted("plain"), "the shares of ISO 12215-5 that a design stress takes");
    assertThat(moment(asked.formatted("plain")))
        .isCloseTo(0.4 * 69e6 * 0.06 * 0.09 * 0.09 / 6, within(1e-6));
    assertThat(moment(asked.formatted("slab")))
        .isCloseTo(0.5 * 205e6 * 0.06 * 0.02 * 0.02 / 6, within(1e-6));
  }

  private static double moment(String asked) {
    return Assessed.of(LEDGER.formatted(asked)).result().rows().stream()
        .filter(row -> row.measure() == Measure.MOMENT_SAGGING)
        .findFirst()
        .flatMap(Row::built)
        .orElseThrow()
        .value();
  }
}
