package kitwright.assessment.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.assessment.Assessed;
import kitwright.assessment.Result;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Verdict.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Washers on a sandwich. Compressive strengths of cores by ISO 12215-5:2008, Annex D (read by way
 * of one public implementation on 2026-11-29): cross-linked PVC of 80 kg/m³ 1.31 MPa, end-grain
 * balsa of 150 kg/m³ 10.3 MPa.
 */
class CoreUnderFittingsTest {
  private static final String LEDGER =
      """
      ---
      materials:
        - {id: foam, kind: core, isotropic: yes, density: 80 kg/m3, E: 78 MPa, G: 25.4 MPa, compressive-strength: 1.31 MPa, shear-strength: 1.07 MPa, source: ISO 12215-5 Annex D, basis: minimum}
        - {id: balsa, kind: core, density: 150 kg/m3, E: 3255 MPa, G: 128.8 MPa, compressive-strength: 10.3 MPa, shear-strength: 2.33 MPa, source: ISO 12215-5 Annex D, basis: minimum}
        - {id: skin, kind: laminate, density: 1700 kg/m3, E: 14 GPa, G: 3 GPa, source: test, basis: minimum}
        - {id: mild, kind: bolt, tensile-strength: 400 MPa, proof-stress: 220 MPa, source: test, basis: minimum}
      sections:
        - {id: drawn, shape: bolt, material: mild, dimensions: {diameter: 8 mm, washer: 24 mm, count: 4, edge-distance: 50 mm, spacing: 100 mm}, layers: [{material: skin, thickness: 3 mm}, {material: balsa, thickness: 20 mm}, {material: skin, thickness: 3 mm}]}
        - {id: built, shape: bolt, material: mild, dimensions: {diameter: 8 mm, washer: %s, washer-thickness: 6 mm, count: 4, edge-distance: 50 mm, spacing: 100 mm}, layers: [{material: skin, thickness: %s}, {material: foam, thickness: 20 mm}, {material: skin, thickness: 3 mm}]}
      assessments:
        - {id: a, method: bolt, designed: drawn, built: built, require: {crushing: 1}%s}
      """;

  private static Result result(String washer, String face, String more) {
    return Assessed.of(LEDGER.formatted(washer, face, more)).result();
  }

  private static double built(Result result) {
    return result.rows().stream()
        .filter(row -> row.measure() == Measure.CRUSHING)
        .findFirst()
        .flatMap(Row::built)
        .orElseThrow()
        .value();
  }

  /** Four of 24 mm on M8: 4·10.3 MPa·π/4·(24² − 9²) = 16.02 kN; foam asks for wider washers. */
  @Test
  void foamForBalsaAsksForWiderWashers() {
    Result same = result("24 mm", "3 mm", "");
    assertThat(built(same)).isCloseTo(4 * 1.31 * Math.PI / 4 * (576 - 81) / 1000, within(1e-9));
    assertThat(same.verdict().because()).contains("is 0.127 of the design");
    Result wide = result("66 mm", "3 mm", "");
    assertThat(built(wide)).isCloseTo(4 * 1.31 * Math.PI / 4 * (66 * 66 - 81) / 1000, within(1e-9));
    assertThat(wide.verdict().passes()).as(wide.verdict().because()).isTrue();
  }

  @Test
  void aThinnerFaceSpreadsLess() {
    isOpen(
        result("66 mm", "2 mm", ""),
        "the face under the washer is 2 mm as built and 3 mm as drawn");
  }

  @Test
  void aWasherIsWiderThanItsBolt() {
    isOpen(result("9 mm", "3 mm", ""), "state the washer of section built, wider than the hole");
    isOpen(result("73 mm", "3 mm", ""), "a washer of 73 mm and 6 mm thick bends: at most 72 mm");
  }

  /** Foam under the same washer bears 0.127 of what balsa does: the bolt alone says nothing. */
  @Test
  void aPullAsksTheCoreToo() {
    Result pulled =
        Assessed.of(LEDGER.formatted("24 mm", "3 mm", "").replace("{crushing: 1}", "{strength: 1}"))
            .result();
    isOpen(pulled, "crushed under the washer is 0.127 of the design value, and only “strength”");
  }

  @Test
  void aFactorOnTheCoreCounts() {
    Result less =
        result(
            "66 mm", "3 mm", ", knock-downs: [{for: core, value: 0.8, on: built, source: test}]");
    assertThat(built(less)).isCloseTo(0.8 * built(result("66 mm", "3 mm", "")), within(1e-9));
  }

  private static void isOpen(Result result, String why) {
    assertThat(result.verdict().outcome())
        .as(result.verdict().because())
        .isEqualTo(Outcome.CANNOT_TELL);
    assertThat(result.verdict().because()).contains(why);
  }
}
