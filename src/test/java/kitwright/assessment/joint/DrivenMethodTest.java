package kitwright.assessment.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.assessment.Assessed;
import kitwright.assessment.Result;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Verdict.Outcome;
import org.junit.jupiter.api.Test;

/** Screws as drawn beside screws as built, through the ledger. */
class DrivenMethodTest {
  private static final String LEDGER =
      """
      ---
      materials:
        - {id: oak, kind: timber, density: 784 kg/m3, compressive-strength-across: 7 MPa, source: test, basis: mean}
        - {id: cedar, kind: timber, density: 370 kg/m3, compressive-strength-across: 3.2 MPa, source: test, basis: mean}
        - {id: bronze, kind: metal, density: 8500 kg/m3, E: 105 GPa, tensile-strength: 480 MPa, yield-strength: 260 MPa, source: test, basis: mean}
      sections:
        - {id: drawn, shape: screw, material: bronze, dimensions: {diameter: 4.17 mm, penetration: 25.4 mm, root: 2.9 mm, head: 8 mm, count: 2, end-distance: 42 mm, edge-distance: 17 mm, spacing: 30 mm}, layers: [{material: cedar, thickness: 15 mm}, {material: oak, thickness: 40 mm}]}
        - {id: built, shape: screw, material: bronze, dimensions: {diameter: 4.17 mm, penetration: 25.4 mm, root: 2.9 mm, head: 8 mm, count: 2, end-distance: 42 mm, edge-distance: 17 mm, spacing: 30 mm}, layers: [{material: cedar, thickness: 15 mm}, {material: %s, thickness: 40 mm}]}
      assessments:
        - {id: a, method: bolt, designed: drawn, built: built, require: {strength: 1}%s}
      """;

  private static Result result(String wood, String more) {
    return Assessed.of(LEDGER.formatted(wood, more)).result();
  }

  private static Row row(Result result, Measure measure) {
    return result.rows().stream().filter(one -> one.measure() == measure).findFirst().orElseThrow();
  }

  /** G = 784/1120 = 0.70: twice 1262 lb (DrivenPublishedTest). */
  @Test
  void whatPullsTheScrewOut() {
    Result result = result("oak", "");
    assertThat(row(result, Measure.WITHDRAWAL).built().orElseThrow().value())
        .isCloseTo(2 * 1262 * 4.4482e-3, within(0.04));
    assertThat(result.verdict().passes()).as(result.verdict().because()).isTrue();
    assertThat(result.verdict()).isEqualTo(result("oak", "").verdict());
  }

  @Test
  void aLighterWoodLetsGoEarlier() {
    Result result = result("cedar", "");
    assertThat(result.verdict().because())
        .contains("pull at which it comes out of the wood is 0.222 of the design");
  }

  /** 3·3.2 MPa·π/4·(8² − 4.17²) mm² of two. */
  @Test
  void theHeadSinksIn() {
    assertThat(row(result("oak", ""), Measure.HEAD).built().orElseThrow().value())
        .isCloseTo(2 * 3 * 3.2e-3 * Math.PI / 4 * (64 - 4.17 * 4.17), within(1e-9));
  }

  @Test
  void aFactorOnTheWoodTakesFromWhatItHolds() {
    Result result =
        result("oak", ", knock-downs: [{for: moisture, value: 0.7, on: built, source: test}]");
    assertThat(row(result, Measure.WITHDRAWAL).ratio().orElseThrow()).isCloseTo(0.7, within(1e-9));
    assertThat(result.verdict().fails()).isTrue();
  }

  @Test
  void whatIsOutsideTheFormulasIsNotTold() {
    String shallow = LEDGER.replace("penetration: 25.4 mm", "penetration: 12 mm");
    isOpen(shallow, "it stands less than 4 diameters in the wood that holds it (12 mm)");
    isOpen(
        LEDGER.replace("thickness: 40 mm", "thickness: 20 mm"),
        "the piece that holds the point is not known to be as thick as the penetration");
    isOpen(
        LEDGER.replace("density: 784 kg/m3", "density: 1100 kg/m3"),
        "oak is outside the woods that the formulas of bolts, nails and screws are from");
    isOpen(LEDGER.replace("head: 8 mm, ", ""), "does not state the diameter of its head or washer");
    isOpen(LEDGER.replace("root: 2.9 mm, ", ""), "does not state the root of its thread");
    isOpen(
        LEDGER.replace("{strength: 1}", "{bearing: 1}"),
        "the end-distance of section drawn is 42 mm, below the 62.55 mm");
    isOpen(
        LEDGER.replace("end-distance: 42 mm", "end-distance: 41 mm"),
        "the end-distance of section drawn is 41 mm, below the 41.7 mm");
    isOpen(
        LEDGER.replace("edge-distance: 17 mm", "edge-distance: 16 mm"),
        "the edge-distance of section drawn is 16 mm, below the 16.68 mm");
    isOpen(
        LEDGER.replace("spacing: 30 mm", "spacing: 29 mm"),
        "the spacing of section drawn is 29 mm, below the 29.19 mm");
    isOpen(
        LEDGER.replace("shape: screw", "shape: nail").replace("root: 2.9 mm, ", ""),
        "the end-distance of section drawn is 42 mm, below the 83.4 mm");
    isOpen(
        LEDGER.replace("{material: cedar, thickness: 15 mm}, ", ""),
        "lists no outer piece, which the head may sink into");
    isOpen(
        LEDGER.replace("root: 2.9 mm", "root: 29 mm"), "section drawn cannot be as it is written");
    isOpen(
        LEDGER.replace("root: 2.9 mm", "root: 4.0 mm"), "section drawn cannot be as it is written");
    isOpen(
        LEDGER.replace("cedar, thickness: 15 mm", "cedar, thickness: 7.9 mm"),
        "is not known to be as thick as that is wide (8 mm), and may let it through");
    isOpen(LEDGER.replace("head: 8 mm", "head: 8 cm"), "section drawn cannot be as it is written");
    isOpen(
        LEDGER.replace("penetration: 25.4 mm", "penetraton: 25.4 mm"),
        "section drawn cannot be as it is written");
  }

  /** EN 1995-1-1, table 8.2, whatever the angle: to 420, to 500 kg/m³, and 5 mm and thicker. */
  @Test
  void nailsInHeavierWoodStandFartherFromEndsAndEdges() {
    String nails =
        LEDGER
            .replace("shape: screw", "shape: nail")
            .replace(", end-distance: 42 mm, edge-distance: 17 mm, spacing: 30 mm", "")
            .replace("{strength: 1}", "{bearing: 1}")
            .replace("root: 2.9 mm, head", "head")
            .replace("4.17 mm", "4 mm")
            .replace("25.4 mm", "60 mm")
            .replace("thickness: 40 mm", "thickness: 70 mm");
    isOpen(nails, "a nail in wood of 784 kg/m³ needs a lead hole (above 500 kg/m³)");
    String heavy = nails.replace("784", "450");
    isOpen(heavy, "end-distance (at least 80 mm)");
    isOpen(heavy, "edge-distance (at least 36 mm)");
    isOpen(heavy, "spacing (at least 60 mm)");
    String light = nails.replace("784", "410");
    isOpen(light, "end-distance (at least 60 mm)");
    isOpen(light, "edge-distance (at least 28 mm)");
    isOpen(light, "spacing (at least 48 mm)");
    isOpen(light.replace("diameter: 4 mm", "diameter: 5 mm"), "edge-distance (at least 50 mm)");
    isOpen(heavy.replace("diameter: 4 mm", "diameter: 5 mm"), "edge-distance (at least 60 mm)");
  }

  private static void isOpen(String ledger, String why) {
    Result result = Assessed.of(ledger.formatted("oak", "")).result();
    assertThat(result.verdict().outcome())
        .as(result.verdict().because())
        .isEqualTo(Outcome.CANNOT_TELL);
    assertThat(result.verdict().because()).contains(why);
  }
}
