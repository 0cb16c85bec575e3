package kitwright.assessment.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.assessment.Assessed;
import kitwright.assessment.Result;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Verdict.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Parts that taper, and notches, through the ledger. Harris, strip of constant strength (a public
 * verification manual, problem 61 of p. 114, read 2026-11-29): width 0 to 3 in over 20 in, 0.5 in
 * thick, E 30e6 psi, 10 lb at the tip: deflection 0.042667 in, stress 1600 psi all along. The tip
 * is 0.035 in wide here, as it bears shear too.
 */
class TaperTest {
  private static final String LEDGER =
      """
      ---
      materials:
        - {id: steel, kind: metal, density: 7850 kg/m3, E: 30e6 psi, poisson: 0.3, tensile-strength: 48000 psi, yield-strength: 36000 psi, source: test, basis: mean}
        - {id: spruce, kind: timber, density: 415 kg/m3, E: 10.9 GPa, G: 0.7 GPa, tensile-strength: 72 MPa, bending-strength: 69 MPa, compressive-strength: 38 MPa, shear-strength: 7.7 MPa, source: test, basis: mean}
      sections:
        - {id: strip, shape: rectangle, material: steel, dimensions: {width: 3 in, height: 0.5 in}, tapers-to: strip-end}
        - {id: strip-end, shape: rectangle, material: steel, dimensions: {width: 0.035 in, height: 0.5 in}}
        - {id: spar, shape: round, material: spruce, dimensions: {diameter: 80 mm}, tapers-to: spar-end}
        - {id: spar-end, shape: round, material: spruce, dimensions: {diameter: 30 mm}}
        - {id: whole, shape: round, material: spruce, dimensions: {diameter: 80 mm}}
        - {id: tube, shape: tube, material: spruce, dimensions: {diameter: 80 mm, wall: 10 mm}}
        - {id: bent, shape: round, material: spruce, dimensions: {diameter: 80 mm}, tapers-to: tube}
        - {id: log, shape: round, material: spruce, dimensions: {diameter: 245 mm}, notch: {depth: 63 mm, corner: 24 mm}}
        - {id: bolted, width: 47 mm, layers: [{thickness: 245 mm, strips: [{material: spruce, width: 18 mm}, {void: 11 mm}, {material: spruce, width: 18 mm}]}], notch: {depth: 63 mm, corner: 24 mm}}
        - {id: beam, width: 47 mm, layers: [{material: spruce, thickness: 245 mm}]}
        - {id: notched, width: 47 mm, layers: [{material: spruce, thickness: 245 mm}], notch: {depth: 63 mm, corner: 24 mm}}
      assessments:
        - {id: a, method: section, %s}
      """;

  private static Result result(String asked) {
    return Assessed.of(LEDGER.formatted(asked)).result();
  }

  private static Row row(Result result, Measure measure) {
    return result.rows().stream().filter(one -> one.measure() == measure).findFirst().orElseThrow();
  }

  @Test
  void theStripOfConstantStrength() {
    Result result =
        result(
            "designed: strip, built: strip, require: {reserve: 1}, load: {tip-force: 10 lbf, span:"
                + " 20 in, factor: 1, source: test}");
    assertThat(row(result, Measure.DEFLECTION).built().orElseThrow().value() / 25.4)
        .isCloseTo(0.042667, within(0.042667 * 0.02));
    assertThat(row(result, Measure.RESERVE).built().orElseThrow().value())
        .isCloseTo(36_000 / 1600.0, within(0.02));
    assertThat(result.verdict().passes()).as(result.verdict().because()).isTrue();
    assertThat(result.rows()).isNotEmpty().allMatch(one -> one.built().isPresent());
  }

  /**
   * A round spar under a force at its tip is bent most where its diameter is 1.5 times that of the
   * tip: 45 mm, 0.7 of the way out. M = P·0.3·L; edge 50 mm in 2 m.
   */
  @Test
  void theWorstPlaceLiesAlongTheSpar() {
    Result result =
        result(
            "designed: whole, built: spar, require: {reserve: 1}, load: {tip-force: 200 N, span: 2"
                + " m, source: test}");
    double modulus = Math.PI / 32 * Math.pow(0.045, 3);
    double edge = 1 / Math.hypot(1, 0.025 * 69 / 7.7);
    Row reserve = row(result, Measure.RESERVE);
    assertThat(reserve.built().orElseThrow().value())
        .isCloseTo(edge * 69e6 * modulus / (200 * 0.6), within(0.01));
    assertThat(reserve.built().orElseThrow().governing().orElseThrow())
        .contains("1400 mm from the support");
  }

  @Test
  void whatIsOfOnePlaceDoesNotPassForAll() {
    String load = ", load: {tip-force: 200 N, span: 2 m%s, factor: 1, source: test}";
    isOpen(
        "designed: whole, built: spar, require: {stiffness: 0.5}" + load.formatted(""),
        "spar tapers, and this is of its first section only");
    isOpen("designed: whole, built: spar, require: {strength: 0.1}", "spar tapers");
    isOpen(
        "designed: whole, built: bent, require: {reserve: 1}" + load.formatted(""),
        "section bent tapers to section tube, which is made otherwise");
    isOpen(
        "designed: whole, built: spar, require: {reserve: 1}"
            + load.formatted(", thrust: 1 kN, ends: fixed-free"),
        "a thrust or torque on a part that tapers is not worked out");
  }

  /** TRADA F6: k_v 0.630 (NotchPublishedTest): of 2/3·7.7 MPa·47·245 mm² are left 0.630·182/245. */
  @Test
  void aNotchSplitsFirst() {
    String asked =
        "designed: beam, built: notched, require: {shear: 1}, load: {shape: uniform, force: 100 N,"
            + " span: 3 m, support: %s, source: test}";
    Result result = result(asked.formatted("simple"));
    assertThat(row(result, Measure.SHEAR).ratio().orElseThrow())
        .isCloseTo(0.6303 * 182 / 245, within(2e-4));
    assertThat(result.verdict().because()).contains("splitting from the notch at the support");
    for (String other : new String[] {"log", "bolted"}) {
      isOpen(
          asked.formatted("simple").replace("notched", other).replace("shear: 1", "shear: 0.01"),
          "is no rectangle of solid wood, and its notch is not worked out");
    }
    isOpen(
        asked.formatted("cantilever").replace("shear: 1", "shear: 0.1"),
        "a notch is worked out at the supports of a beam that lies on two");
  }

  /**
   * What is left bends where the notch reaches far: 47 by 182 mm of 69 MPa bear 17.9 kN·m, a square
   * notch on the other side splits nothing and shears at 43.9 kN: 408 mm from the support at the
   * most.
   */
  @Test
  void aNotchThatReachesFarMayBendFirst() {
    String asked =
        "designed: beam, built: notched, require: {shear: 0.01}, load: {shape: uniform, force: 100"
            + " N, span: 3 m, support: simple, source: test}";
    for (String reach : new String[] {"corner: 407 mm", "corner: 0 mm, slope: 4"}) {
      assertThat(result(notched(reach + ", opposite: yes"), asked).verdict().passes()).isTrue();
    }
    for (String far :
        new String[] {"corner: 409 mm", "corner: 0 mm, slope: 20", "corner: 300 mm, slope: 8"}) {
      assertThat(result(notched(far + ", opposite: yes"), asked).verdict().because())
          .contains("notched so far from its support that what is left may bend before it splits");
    }
    assertThat(result(notched("opposite: yes"), asked).verdict().because())
        .contains("does not state how far the corner of its notch is from the support’s force");
  }

  private static String notched(String how) {
    return LEDGER.replace(
        "- {id: notched, width: 47 mm, layers: [{material: spruce, thickness: 245 mm}], notch:"
            + " {depth: 63 mm, corner: 24 mm}}",
        "- {id: notched, width: 47 mm, layers: [{material: spruce, thickness: 245 mm}], notch:"
            + " {depth: 63 mm, "
            + how
            + "}}");
  }

  private static Result result(String ledger, String asked) {
    return Assessed.of(ledger.formatted(asked)).result();
  }

  /** Narrower by 20 mm in 2 m: grain runs out of its sides too, 1/√(1 + (0.01·69/7.7)²). */
  @Test
  void aTaperInWidthIsSawnAsWell() {
    String narrow =
        LEDGER.replace(
            "sections:\n",
            "sections:\n"
                + "  - {id: wide, shape: rectangle, material: spruce, dimensions: {width: 60 mm,"
                + " height: 60 mm}, tapers-to: narrow}\n"
                + "  - {id: narrow, shape: rectangle, material: spruce, dimensions: {width: 40 mm,"
                + " height: 60 mm}}\n");
    Result result =
        result(
            narrow,
            "designed: whole, built: wide, require: {reserve: 1}, load: {tip-force: 100 N, span: 2"
                + " m, factor: 1, source: test}");
    double edge = 1 / Math.hypot(1, 0.01 * 69 / 7.7);
    assertThat(row(result, Measure.RESERVE).built().orElseThrow().value())
        .isCloseTo(edge * 69e6 * Math.pow(0.06, 3) / 6 / 200, within(0.01));
  }

  @Test
  void ofTwoSectionsForTheTipNobodyCanTellWhichIsMeant() {
    String twice =
        LEDGER.replace(
            "sections:\n",
            "sections:\n  - {id: spar-end, shape: round, material: spruce, dimensions: {diameter:"
                + " 60 mm}}\n");
    Result result =
        Assessed.of(
                twice.formatted(
                    "designed: whole, built: spar, require: {reserve: 1}, load: {tip-force:"
                        + " 200 N, span: 2 m, source: test}"))
            .result();
    assertThat(result.verdict().outcome()).isEqualTo(Outcome.CANNOT_TELL);
    assertThat(result.verdict().because()).contains("two sections are called “spar-end”");
  }

  private static void isOpen(String asked, String why) {
    Result result = result(asked);
    assertThat(result.verdict().outcome())
        .as(result.verdict().because())
        .isEqualTo(Outcome.CANNOT_TELL);
    assertThat(result.verdict().because()).contains(why);
  }
}
