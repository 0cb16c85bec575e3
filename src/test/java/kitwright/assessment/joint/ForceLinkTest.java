package kitwright.assessment.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.assessment.Assessed;
import kitwright.assessment.Result;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Verdict.Outcome;
import kitwright.mechanics.scatter.Scattered;
import kitwright.mechanics.scatter.StressStrength;
import org.junit.jupiter.api.Test;

/**
 * A link that is pulled or sheared with what it holds: the order of two lognormal strengths, in
 * closed form after Kapur and Lamberson, Reliability in Engineering Design, 1977, chapter 6.
 */
class ForceLinkTest {
  private static final String LEDGER =
      """
      ---
      materials:
        - {id: steel, kind: metal, density: 7850 kg/m3, E: 210 GPa, tensile-strength: 500 MPa, yield-strength: 400 MPa, scatter: 4 %%, source: test, basis: mean}
        - {id: spruce, kind: timber, density: 415 kg/m3, E: 10.9 GPa, tensile-strength: 72 MPa, bending-strength: 69 MPa, compressive-strength: 38 MPa, shear-strength: 7.7 MPa, scatter: 18 %%, source: test, basis: mean}
        - {id: half-known, kind: timber, density: 415 kg/m3, E: 10.9 GPa, bending-strength: 69 MPa, compressive-strength: 38 MPa, shear-strength: 7.7 MPa, scatter: 18 %%, source: test, basis: mean}
        - {id: pin-steel, kind: bolt, density: 7850 kg/m3, E: 210 GPa, tensile-strength: 400 MPa, shear-strength: 240 MPa, proof-stress: 240 MPa, scatter: 4 %%, source: test, basis: mean}
      sections:
        - {id: strap, shape: rectangle, material: steel, dimensions: {width: 30 mm, height: 4 mm}}
        - {id: post, width: 50 mm, layers: [{material: spruce, thickness: 60 mm}]}
        - {id: half-post, width: 50 mm, layers: [{material: half-known, thickness: 60 mm}]}
        - {id: pin, shape: bolt, material: pin-steel, dimensions: {diameter: 8 mm}}
      assessments:
        - {id: a, method: section, designed: post, built: post, require: {stiffness: 1}, weak-link: {%s}}
      """;

  private static Result result(String link) {
    return Assessed.of(LEDGER.formatted(link)).result();
  }

  /** 30·4 mm at the yield of 400 MPa bear 48 kN, 50·60 mm of spruce at 72 MPa bear 216 kN. */
  @Test
  void theStrapGoesBeforeThePost() {
    Result result = result("sacrificial: strap, protected: post, by: tension, margin: 2");
    assertThat(new Assessed(result).built(Measure.LINK)).isCloseTo(216.0 / 48, within(1e-9));
    assertThat(result.verdict().passes()).as(result.verdict().because()).isTrue();
    assertThat(result.notes()).anyMatch(note -> note.contains("strap breaks at 48 kN"));
    assertThat(
            result("sacrificial: post, protected: strap, by: tension, margin: 1").verdict().fails())
        .isTrue();
  }

  @Test
  void howOftenTheWrongOneGoesFirst() {
    Result result =
        result(
            "sacrificial: strap, rating: {load: 52 kN, basis: mean, scatter: 5 %, source: sheet},"
                + " by: tension, margin: 1.05");
    double exact =
        StressStrength.below(
            new Scattered(52, 0.05, Scattered.Shape.LOGNORMAL),
            new Scattered(48, 0.04, Scattered.Shape.LOGNORMAL));
    assertThat(new Assessed(result).built(Measure.LINK_CHANCE) / 100)
        .isCloseTo(exact, within(0.003));
    assertThat(result.verdict().fails()).isTrue();
  }

  /** A maker's least counts as it stands: 60/48. */
  @Test
  void aKnownLoadStandsForAPart() {
    String rated = "sacrificial: strap, rating: {load: 60 kN%s}, by: tension, margin: 1.2";
    Result result = result(rated.formatted(", basis: minimum, source: the maker's sheet"));
    assertThat(new Assessed(result).built(Measure.LINK)).isCloseTo(1.25, within(1e-9));
    assertThat(result.verdict().passes()).as(result.verdict().because()).isTrue();
    isOpen(rated.formatted(", basis: minimum"), "the rating of its weak link has no source");
    isOpen(rated.formatted(", source: sheet"), "does not say what it is");
    isOpen(
        rated.formatted(", basis: characteristic, source: sheet"),
        "is no minimum and does not state its scatter");
  }

  /** M8: 36.6 mm² at 240 MPa are 8.786 kN; 2/3·7.7 MPa·50·60 mm² of spruce bear 15.4 kN. */
  @Test
  void aPinShearsBeforeThePost() {
    Result result = result("sacrificial: pin, protected: post, by: shear, margin: 1.5");
    assertThat(new Assessed(result).built(Measure.LINK)).isCloseTo(15.4 / 8.786, within(1e-3));
  }

  @Test
  void whatShallBreakStatesItsTensileStrength() {
    isOpen(
        "sacrificial: half-post, rating: {load: 400 kN, basis: minimum, source: sheet}, by:"
            + " tension, margin: 1.2",
        "half-known (layer 1) does not state its tensile-strength");
  }

  @Test
  void nothingIsLeftOutOfALink() {
    isOpen(
        "sacrificial: strap, protected: post, by: tension, margin: 2, breaks-at: 100 mm",
        "“breaks-at” is a place along a bent one");
    isOpen(
        "sacrificial: strap, protected: post, rating: {load: 60 kN, basis: minimum, source: s}, by:"
            + " tension, margin: 2",
        "either a section (“protected”) or a rating");
    isOpen(
        "sacrificial: strap, rating: {load: 60 kN, basis: minimum, source: s}, margin: 1",
        "the rating of its weak link is a force");
  }

  private static void isOpen(String link, String why) {
    Result result = result(link);
    assertThat(result.verdict().outcome())
        .as(result.verdict().because())
        .isEqualTo(Outcome.CANNOT_TELL);
    assertThat(result.verdict().because()).contains(why);
  }
}
