package kitwright.assessment.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.assessment.Assessed;
import kitwright.assessment.Result;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Verdict.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Crushing where a beam bears, through the ledger. “Short timber header that crushes at its
 * support” (worked example of a public library of formulas, read whole on 2026-11-30): 3.5 x 9.25
 * in, 1950 lb/ft over 42 in, allowable stresses 900, 180 and 625 psi: bending 1.25, shear 1.14, and
 * on 1.5 in of plate 625/650.
 */
class CrushedTest {
  private static final String LEDGER =
      """
      ---
      materials:
        - {id: header, kind: timber, basis: minimum, density: 500 kg/m3, E: 1.6e6 psi, bending-strength: 900 psi, shear-strength: 180 psi, compressive-strength: 1500 psi, tensile-strength: 600 psi, compressive-strength-across: 625 psi, source: test}
        - {id: soft, kind: timber, basis: minimum, density: 500 kg/m3, E: 1.6e6 psi, bending-strength: 2900 psi, shear-strength: 580 psi, compressive-strength: 1500 psi, tensile-strength: 600 psi, compressive-strength-across: 400 psi, source: test}
        - {id: untold, kind: timber, basis: minimum, density: 500 kg/m3, E: 1.6e6 psi, bending-strength: 2900 psi, shear-strength: 580 psi, compressive-strength: 1500 psi, tensile-strength: 600 psi, source: test}
        - {id: doubtful, kind: timber, basis: minimum, density: 500 kg/m3, E: 1.6e6 psi, bending-strength: 900 psi, shear-strength: 180 psi, compressive-strength: 1500 psi, tensile-strength: 600 psi, compressive-strength-across: 625 psi, unconfirmed: [compressive-strength-across], source: test}
        - {id: hard, kind: timber, basis: minimum, density: 500 kg/m3, E: 1.6e6 psi, bending-strength: 900 psi, shear-strength: 180 psi, compressive-strength: 1500 psi, tensile-strength: 600 psi, compressive-strength-across: 4 GPa, source: test}
        - {id: skin, kind: laminate, basis: minimum, isotropic: yes, density: 1700 kg/m3, E: 14 GPa, G: 5 GPa, tensile-strength: 200 MPa, compressive-strength: 200 MPa, shear-strength: 48 MPa, source: test}
        - {id: foam, kind: core, basis: minimum, isotropic: yes, density: 80 kg/m3, E: 85 MPa, G: 27 MPa, tensile-strength: 2 MPa, compressive-strength: 1.2 MPa, shear-strength: 1 MPa, source: test}
        - {id: board, kind: plywood, basis: minimum, density: 480 kg/m3, E: 8 GPa, E-across: 5 GPa, G: 0.5 GPa, bending-strength: 40 MPa, tensile-strength: 30 MPa, tensile-strength-across: 20 MPa, compressive-strength: 25 MPa, compressive-strength-across: 20 MPa, shear-strength: 5 MPa, source: test}
      sections:
        - {id: header, shape: rectangle, material: header, dimensions: {width: 3.5 in, height: 9.25 in}}
        - {id: doubtful, width: 3.5 in, layers: [{material: doubtful, thickness: 9.25 in}]}
        - {id: hard, width: 3.5 in, layers: [{material: hard, thickness: 9.25 in}]}
        - {id: soft, width: 3.5 in, layers: [{material: soft, thickness: 9.25 in}]}
        - {id: wide, width: 6 in, layers: [{material: soft, thickness: 9.25 in}]}
        - {id: untold, width: 3.5 in, layers: [{material: untold, thickness: 9.25 in}]}
        - {id: sole, width: 300 mm, layers: [{material: skin, thickness: 3 mm}, {material: foam, thickness: 40 mm}, {material: skin, thickness: 3 mm}]}
        - {id: plate, width: 300 mm, layers: [{material: skin, thickness: 40 mm}]}
        - {id: shelf, width: 300 mm, layers: [{material: board, thickness: 40 mm}]}
        - {id: tapered, shape: rectangle, material: header, dimensions: {width: 3.5 in, height: 4 in}, tapers-to: header-end}
        - {id: header-end, shape: rectangle, material: header, dimensions: {width: 3.5 in, height: 3 in}}
      assessments:
        - {id: a, method: section, designed: %s, built: %s, require: {%s}, load: {%s, factor: 1, source: test}%s}
      """;

  private static final String SPREAD =
      "support: simple, shape: uniform, force: 6825 lbf, span: 42 in, held-sideways: 21 in";
  private static final String POINT =
      "support: simple, shape: point, force: 1000 lbf, span: 42 in, held-sideways: 21 in";

  private static Result result(String drawn, String built, String asked, String load) {
    return result(drawn, built, asked, load, "");
  }

  private static Result result(String drawn, String built, String asked, String load, String more) {
    String text = LEDGER.formatted(drawn, built, asked, load, more);
    return Assessed.of(text).result();
  }

  private static Figure reserve(Result result) {
    return result.rows().stream()
        .filter(row -> row.measure() == Measure.RESERVE)
        .findFirst()
        .flatMap(Row::built)
        .orElseThrow();
  }

  @Test
  void aHeaderIsCrushedOnAPlateAndNotOnAPost() {
    Result plate = result("header", "header", "reserve: 1", SPREAD + ", bearing: 1.5 in");
    assertThat(reserve(plate).value()).isCloseTo(625.0 / 650, within(1e-6));
    assertThat(reserve(plate).governing()).contains("crushing of header at a support");
    assertThat(plate.verdict().fails()).isTrue();
    Result post = result("header", "header", "reserve: 1", SPREAD + ", bearing: 3.5 in");
    assertThat(reserve(post).value()).isCloseTo(1.14, within(0.005));
    assertThat(post.verdict().passes()).as(post.verdict().because()).isTrue();
    assertThat(post.working().toString())
        .contains("crushed at a support: reserve", "383.1 N/mm", "88.9 mm", "2.244");
  }

  /** Under a force at the middle the wood beside helps: (12.7 + 9.525)/12.7 = 1.75. */
  @Test
  void aForceAtTheMiddleStandsOnSomethingToo() {
    Result result = result("header", "header", "reserve: 0.5", POINT + ", bearing: 0.5 in");
    assertThat(result.working().toString())
        .contains("crushed under the force at one place: reserve", "1.75", "1.914");
    assertThat(reserve(result).governing())
        .contains("crushing of header under the force at one place");
    assertThat(reserve(result).value()).isCloseTo(1.75 * 625 * 3.5 * 0.5 / 1000, within(1e-6));
  }

  @Test
  void withoutABearingASofterWoodIsNotTold() {
    isOpen(
        result("header", "soft", "reserve: 1", SPREAD),
        "as built it is crushed there at 245.2 N/mm (soft), as drawn at 383.1 N/mm: add bearing to"
            + " the load; under it, with its factor, 62 mm are needed for a reserve of 1");
    isOpen(result("header", "soft", "strength: 1", SPREAD), "does not state how long its supports");
    isOpen(
        result("header", "untold", "reserve: 1", SPREAD),
        "untold does not state its compressive-strength-across");
    isOpen(
        result("untold", "soft", "reserve: 1", SPREAD),
        "and as drawn untold does not state its compressive-strength-across");
    isOpen(result("plate", "wide", "reserve: 1", SPREAD), "as drawn it is of no wood or core");
    assertThat(
            result("header", "soft", "reserve: 1", SPREAD + ", bearing: 63 mm").verdict().passes())
        .isTrue();
    assertThat(
            result("header", "soft", "reserve: 1", SPREAD + ", bearing: 61 mm").verdict().fails())
        .isTrue();
  }

  /** 6 in of the softer wood bear 400·6 lb to the inch, 3.5 of the other 625·3.5. */
  @Test
  void withoutABearingOneThatIsCrushedNoSoonerPasses() {
    for (String built : new String[] {"header", "wide"}) {
      Result result = result("header", built, "reserve: 1", SPREAD);
      assertThat(result.verdict().passes()).as(result.verdict().because()).isTrue();
    }
    Result both = result("untold", "untold", "reserve: 1", SPREAD);
    assertThat(both.verdict().passes()).as(both.verdict().because()).isTrue();
  }

  /**
   * 300 mm · 1.2 MPa · 20 mm = 7.2 kN at each support, of 1 kN: 7.2; half as much by its factor.
   */
  @Test
  void aCoreIsCrushedUnderItsFace() {
    String load = "support: simple, shape: uniform, force: 2 kN, span: 1 m, bearing: 20 mm";
    assertThat(result("sole", "sole", "reserve: 1", load).working().toString())
        .contains("360 N/mm", "7.2]");
    assertThat(
            result(
                    "sole",
                    "sole",
                    "reserve: 1",
                    load,
                    ", knock-downs: [{for: core, value: 0.5, on: built, source: test}]")
                .working()
                .toString())
        .contains("180 N/mm", "3.6]");
  }

  /** R₂ = P·(l + a)/l: 1 kN half a span beyond the second support presses it with 1.5 kN. */
  @Test
  void anOverhangPressesItsSecondSupport() {
    String load = "support: overhang, tip-force: 1 kN, span: 1 m, overhang: 500 mm, bearing: 20 mm";
    assertThat(result("header", "header", "reserve: 1", load).working().toString())
        .contains("· 1500 N", "· 1000 N");
  }

  /** What cannot be, or nobody confirmed, is not known: neither lets the other pass. */
  @Test
  void aValueThatNobodyVouchesForIsNotLeanedOn() {
    String doubted = SPREAD + ", bearing: 3.5 in";
    isOpen(
        result("header", "doubtful", "reserve: 1", SPREAD),
        "the compressive-strength-across of doubtful not confirmed in its source: it may be");
    isOpen(
        result("doubtful", "header", "reserve: 1", SPREAD),
        "and as drawn the compressive-strength-across of doubtful not confirmed");
    isOpen(result("header", "hard", "reserve: 1", SPREAD), "of hard cannot be");
    Result stated = result("header", "doubtful", "reserve: 1", doubted);
    assertThat(stated.working().toString()).contains("383.1 N/mm");
    isOpen(stated, "not confirmed");
    Result drawn = result("doubtful", "header", "reserve: 1", doubted);
    assertThat(drawn.verdict().passes()).as(drawn.verdict().because()).isTrue();
    assertThat(drawn.notes().toString()).contains("where doubtful bears it is not worked out");
    isOpen(result("doubtful", "header", "strength: 0.9", doubted), "not confirmed");
    isOpen(result("header", "header", "reserve: 1", SPREAD + ", bearing: 0 mm"), "bearing is zero");
  }

  @Test
  void whatCannotBeTakenIsTold() {
    isOpen(
        result("shelf", "shelf", "reserve: 0.5", SPREAD + ", bearing: 40 mm"),
        "what crushes shelf where it bears is not worked out");
    isOpen(
        result("untold", "untold", "reserve: 1", SPREAD + ", bearing: 40 mm"),
        "untold does not state its compressive-strength-across, which crushes it");
    isOpen(
        result("header", "header", "reserve: 1", SPREAD + ", bearing: 22 in"),
        "bearing is more than half its span");
    isOpen(
        result(
            "header",
            "header",
            "reserve: 1",
            "shape: uniform, force: 100 lbf, span: 42 in, bearing: 1 in"),
        "nothing here lies on one");
    isOpen(
        result("tapered", "tapered", "reserve: 1", "tip-force: 1 lbf, span: 42 in, bearing: 1 in"),
        "leave bearing out");
  }

  private static void isOpen(Result result, String why) {
    assertThat(result.verdict().outcome())
        .as(result.verdict().because())
        .isEqualTo(Outcome.CANNOT_TELL);
    assertThat(result.verdict().because()).contains(why);
  }
}
