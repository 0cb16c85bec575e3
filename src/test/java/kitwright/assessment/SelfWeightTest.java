package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.Sample;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/**
 * The own weight of each section along its span. Closed forms: simple beam under w, M = wL²/8, V =
 * wL/2, 5wL⁴/384EI (onlinestructuraldesign.com, Simple Beam – Uniformly Distributed Load, after the
 * Manual of Steel Construction, AISC, 2005; read). Cantilever under w, M = wL²/2, V = wL, wL⁴/8EI;
 * clamped, M = wL²/12: from memory. Standard gravity 9.80665 m/s² by definition (BIPM, The
 * International System of Units, 3rd CGPM, 1901).
 *
 * <p>The beams are so stiff in shear that bending alone is left to within 1e-6.
 */
class SelfWeightTest {
  private static final double GRAVITY = 9.80665;
  private static final double LENGTH = 3;

  /** 60 by 100 mm at 500 kg/m³ is 3 kg/m; of 800 kg/m³ 4.8 kg/m. */
  private static final double LIGHT = 3 * GRAVITY;

  private static final double HEAVY = 4.8 * GRAVITY;
  private static final double EI = 10e9 * 0.06 * 0.1 * 0.1 * 0.1 / 12;
  private static final double STRENGTH = 60e6 * 0.06 * 0.1 * 0.1 / 6;

  private static final String BEAMS =
      """
      materials:
        - {id: light, kind: timber, density: 500 kg/m3, E: 10 GPa, G: 1000000 GPa, bending-strength: 60 MPa, shear-strength: 80 MPa, source: test}
        - {id: heavy, kind: timber, density: 800 kg/m3, E: 10 GPa, G: 1000000 GPa, bending-strength: 60 MPa, shear-strength: 80 MPa, source: test}
      sections:
        - {id: drawn, shape: rectangle, material: light, dimensions: {width: 60 mm, height: 100 mm}}
        - {id: made, shape: rectangle, material: heavy, dimensions: {width: 60 mm, height: 100 mm}}
      assessments:
        - id: a
          method: section
          designed: drawn
          built: made
          require: {reserve: 1.0}
          load: {%s, self-weight: yes, factor: 1, span: 3 m, source: test}
      """;

  private static Result under(String load) {
    return Assessed.of(BEAMS.formatted(load)).result();
  }

  private static Row row(Result result, Measure measure) {
    return result.rows().stream().filter(r -> r.measure() == measure).findFirst().orElseThrow();
  }

  private static void isBent(Result result, double light, double heavy, double deflection) {
    Row reserve = row(result, Measure.RESERVE);
    assertThat(reserve.designed().orElseThrow().value())
        .isCloseTo(STRENGTH / light, within(1e-9 * STRENGTH / light));
    assertThat(reserve.built().orElseThrow().value())
        .isCloseTo(STRENGTH / heavy, within(1e-9 * STRENGTH / heavy));
    double bent = row(result, Measure.DEFLECTION).built().orElseThrow().value() / 1000;
    assertThat(bent).isCloseTo(deflection, within(1e-6 * deflection));
  }

  @Test
  void aSimpleBeamHangsUnderItself() {
    double square = LENGTH * LENGTH;
    isBent(
        under("support: simple"),
        LIGHT * square / 8,
        HEAVY * square / 8,
        5 * HEAVY * square * square / 384 / EI);
  }

  @Test
  void aCantileverHangsUnderItself() {
    double square = LENGTH * LENGTH;
    isBent(
        under("support: cantilever"),
        LIGHT * square / 2,
        HEAVY * square / 2,
        HEAVY * square * square / 8 / EI);
  }

  @Test
  void aClampedBeamHangsUnderItself() {
    double square = LENGTH * LENGTH;
    isBent(
        under("support: clamped"),
        LIGHT * square / 12,
        HEAVY * square / 12,
        HEAVY * square * square / 384 / EI);
  }

  @Test
  void ownWeightComesOnTopOfWhatElseTheSpanCarries() {
    double square = LENGTH * LENGTH;
    isBent(
        under("support: cantilever, tip-force: 200 N"),
        200 * LENGTH + LIGHT * square / 2,
        200 * LENGTH + HEAVY * square / 2,
        200 * LENGTH * square / 3 / EI + HEAVY * square * square / 8 / EI);
    isBent(
        under("support: simple, shape: point, force: 200 N"),
        200 * LENGTH / 4 + LIGHT * square / 8,
        200 * LENGTH / 4 + HEAVY * square / 8,
        200 * LENGTH * square / 48 / EI + 5 * HEAVY * square * square / 384 / EI);
  }

  @Test
  void theSheetShowsHowEachOwnWeightCameAbout() {
    assertThat(under("tip-force: 200 N").load())
        .contains(
            "self-weight of drawn: w = m·g = 3 kg/m · 9.80665 m/s² = 29.42 N/m, as if level",
            "self-weight of made: w = m·g = 4.8 kg/m · 9.80665 m/s² = 47.07 N/m, as if level",
            "made: cantilever of 3 m: M = 811.8 N·m and V = 341.2 N at the support");
  }

  /** With 100 Pa and 10 kg/m² the plate bears 198.0665 Pa. */
  @Test
  void aPanelLaidLevelBearsItself() {
    String plate =
        """
        materials:
          - {id: sheet, kind: laminate, isotropic: yes, density: 1000 kg/m3, E: 10 GPa, poisson: 0.3, tensile-strength: 100 MPa, compressive-strength: 100 MPa, shear-strength: 50 MPa, source: test}
        sections:
          - {id: plate, width: 1000 mm, layers: [{material: sheet, thickness: 10 mm}]}
        assessments:
          - {id: a, method: panel, designed: plate, built: plate, require: {stiffness: 1.0, reserve: 1}, load: {pressure: 100 Pa, factor: 1, span: 1 m, breadth: 1 m, support: simple%s, source: test}}
        """;
    Row bare = deflection(plate.formatted(""));
    Row laden = deflection(plate.formatted(", self-weight: yes"));
    assertThat(laden.built().orElseThrow().value() / bare.built().orElseThrow().value())
        .isCloseTo(1.980665, within(1e-9));
  }

  private static Row deflection(String text) {
    return row(Assessed.of(text).result(), Measure.DEFLECTION);
  }

  @Test
  void withSelfWeightAReserveLeansOnTheDensity() {
    Ledger ledger =
        Sample.ledger(
            BEAMS
                .formatted("support: simple")
                .replace("800 kg/m3, E", "800 kg/m3, unconfirmed: [density], E"));
    assertThat(Assessments.on(Facts.of(ledger, Sample.TODAY)).all().get(0).verdict().because())
        .contains("the density of heavy not confirmed");
    Ledger without =
        Sample.ledger(
            BEAMS
                .formatted("support: simple, shape: uniform, force: 1 kN")
                .replace(", self-weight: yes", "")
                .replace("G: 1000000 GPa", "G: 0.6 GPa")
                .replace("800 kg/m3, E", "800 kg/m3, unconfirmed: [density], E"));
    assertThat(Assessments.on(Facts.of(without, Sample.TODAY)).all().get(0).verdict().passes())
        .isTrue();
  }

  /**
   * Blade and stock each weigh on their own length: 3 m of 3 kg/m on 1 m of 4.8 kg/m at 9.80665.
   */
  @Test
  void alongAWeakLinkEachPartWeighsOnItsOwnLength() {
    String text =
        BEAMS
            .formatted("support: cantilever")
            .replace(
                "require: {reserve: 1.0}",
                "weak-link: {sacrificial: drawn, protected: made, margin: 1.1, breaks-at: 1 m}");
    Result result = Assessed.of(text).result();
    double weak = STRENGTH / (LIGHT * 2 * 2 / 2);
    double safe = STRENGTH / (HEAVY * 1 * 0.5 + LIGHT * 2 * 2);
    assertThat(row(result, Measure.LINK).built().orElseThrow().value())
        .isCloseTo(safe / weak, within(1e-9));
  }
}
