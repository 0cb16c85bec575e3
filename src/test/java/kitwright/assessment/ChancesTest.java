package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import kitwright.Sample;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Ledger;
import kitwright.mechanics.scatter.Chance;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/**
 * Chances of an assessment against the closed form: P(R &lt; S) = Φ(−β), β = (μ_R − μ_S)/√(σ_R² +
 * σ_S²) for two normal values, and the same of their logarithms for two lognormal ones (Kapur and
 * Lamberson, Reliability in Engineering Design, 1977, chapter 6; from memory). Φ by Apache Commons
 * Statistics.
 */
class ChancesTest {
  private static final String BOLTS =
      """
      materials:
        - {id: hard, kind: bolt, basis: %s, tensile-strength: 800 MPa, shear-strength: 480 MPa, proof-stress: 640 MPa, scatter: 6 %%, source: test}
        - {id: mild, kind: bolt, basis: %s, tensile-strength: 560 MPa, shear-strength: 300 MPa, scatter: 9 %%, source: test}
      sections:
        - {id: drawn, shape: bolt, material: hard, dimensions: {diameter: 10 mm, count: 4}}
        - {id: made, shape: bolt, material: mild, dimensions: {diameter: 12 mm, count: 4}}
      assessments:
        - {id: a, method: bolt, designed: drawn, built: made, require: {strength: 1.0}}
      """;

  /** Stress areas of ISO 898-1:2013, table 4: 58.0 and 84.3 mm²; here by the formula there. */
  private static final double AREAS = 84.2665 / 57.9896;

  private static Chances.Told told(String text) {
    Ledger ledger = Sample.ledger(text);
    return Chances.of(ledger.assessments().get(0), ledger);
  }

  private static Chance chance(Chances.Told told, String words) {
    return told.lines().stream()
        .filter(line -> line.what().contains(words))
        .findFirst()
        .orElseThrow()
        .chance();
  }

  private static double sigma(double variation) {
    return Math.sqrt(Math.log1p(variation * variation));
  }

  /** Φ(−β) of the logarithms, each about the logarithm of its median. */
  private static double below(double built, double sigma, double designed, double other) {
    double beta = Math.log(built / designed) / Math.hypot(sigma, other);
    return NormalDistribution.of(0, 1).cumulativeProbability(-beta);
  }

  private static double median(double mean, double sigma) {
    return mean * Math.exp(-sigma * sigma / 2);
  }

  @Test
  void boltsOfKnownMeanAreBelowAsOftenAsTheClosedFormSays() {
    Chances.Told told = told(BOLTS.formatted("mean", "mean"));
    double mild = sigma(0.09);
    double hard = sigma(0.06);
    Chance tension = chance(told, "tension");
    assertThat(tension.samples()).isEqualTo(100_000);
    assertThat(tension.probability())
        .isCloseTo(
            below(median(560 * AREAS, mild), mild, median(800, hard), hard),
            within(4 * tension.standardError()));
    Chance shear = chance(told, "shear");
    assertThat(shear.probability())
        .isCloseTo(
            below(median(300 * AREAS, mild), mild, median(480, hard), hard),
            within(4 * shear.standardError()));
    assertThat(told.notes()).anyMatch(note -> note.contains("proof load"));
  }

  /** Least values are passed by nineteen in twenty: ln of the median is ln of it + 1.6449·σ. */
  @Test
  void leastValuesAreTakenAsThoseThatOneInTwentyFallsBelow() {
    Chances.Told told = told(BOLTS.formatted("minimum", "minimum"));
    double mild = sigma(0.09);
    double hard = sigma(0.06);
    double z = NormalDistribution.of(0, 1).inverseCumulativeProbability(0.95);
    Chance tension = chance(told, "tension");
    assertThat(tension.probability())
        .isCloseTo(
            below(560 * AREAS * Math.exp(z * mild), mild, 800 * Math.exp(z * hard), hard),
            within(4 * tension.standardError()));
    assertThat(told.notes()).anyMatch(note -> note.contains("one in twenty"));
  }

  /** A mean against a least value, which is half a class better than it looks. */
  @Test
  void aLeastValueAsDrawnMakesTheBuiltOneMoreOftenTooWeak() {
    double means = chance(told(BOLTS.formatted("mean", "mean")), "tension").probability();
    double drawn = chance(told(BOLTS.formatted("minimum", "mean")), "tension").probability();
    assertThat(drawn).isGreaterThan(means + 0.1);
  }

  @Test
  void withoutAnyScatterThereIsNoChanceToTell() {
    Chances.Told told =
        told(
            BOLTS
                .formatted("mean", "mean")
                .replace("scatter: 6 %, ", "")
                .replace("scatter: 9 %, ", ""));
    assertThat(told.lines()).isEmpty();
    assertThat(told.notes())
        .anyMatch(note -> note.contains("no material of it states its scatter"));
  }

  private static final String CLOTHS =
      """
      materials:
        - {id: one, kind: laminate, isotropic: yes, poisson: 0.3, density: 1700 kg/m3, E: 20 GPa, tensile-strength: 300 MPa, compressive-strength: 200 MPa, shear-strength: 60 MPa, scatter: 10 %, source: test}
        - {id: other, kind: laminate, isotropic: yes, poisson: 0.3, density: 1700 kg/m3, E: 19 GPa, tensile-strength: 290 MPa, compressive-strength: 190 MPa, shear-strength: 60 MPa, scatter: 8 %, source: test}
      sections:
        - {id: drawn, width: 100 mm, layers: [{material: one, thickness: 3 mm}]}
        - {id: made, width: 100 mm, layers: [{material: other, thickness: 3.2 mm}]}
      assessments:
        - {id: a, method: laminate, designed: drawn, built: made, require: {stiffness: 1.0}}
      """;

  @Test
  void aLaminateIsPulledAndPushedNotBent() {
    Chances.Told told = told(CLOTHS);
    double made = sigma(0.08);
    double drawn = sigma(0.10);
    Chance stiffness = chance(told, "less stiff");
    assertThat(stiffness.probability())
        .isCloseTo(
            below(median(19 * 3.2, made), made, median(20 * 3, drawn), drawn),
            within(4 * stiffness.standardError()));
    Chance push = chance(told, "pull or push");
    assertThat(push.probability())
        .isCloseTo(
            below(median(190 * 3.2, made), made, median(200 * 3, drawn), drawn),
            within(4 * push.standardError()));
  }

  @Test
  void aStrengthThatNobodyStatesIsNotSampled() {
    Chances.Told told =
        told(
            CLOTHS
                .replace("tensile-strength: 290 MPa, compressive-strength: 190 MPa, ", "")
                .replace("method: laminate", "method: section"));
    assertThat(told.lines()).noneMatch(line -> line.what().contains("moment"));
    assertThat(told.notes()).anyMatch(note -> note.contains("does not state"));
  }

  private static final String PINNED =
      """
      materials:
        - {id: pin-stuff, kind: bolt, basis: minimum, tensile-strength: 500 MPa, shear-strength: 250 MPa, scatter: 5 %, source: test}
        - {id: wood, kind: timber, basis: mean, density: 600 kg/m3, E: 11 GPa, bending-strength: 70 MPa, shear-strength: 9 MPa, scatter: 15 %, source: test}
      sections:
        - {id: pin, shape: bolt, material: pin-stuff, dimensions: {diameter: 5 mm}}
        - {id: arm, shape: rectangle, material: wood, dimensions: {width: 40 mm, height: 50 mm}}
      assessments:
        - id: a
          method: section
          designed: arm
          built: arm
          require: {stiffness: 1.0}
          weak-link: {sacrificial: pin, protected: arm, margin: 1.1, breaks-at: 0 mm}
          load: {tip-force: 900 N, span: 0.3 m, source: test}
      """;

  /** The arm bears 70·40·50²/6 N·mm / 300 mm = 3889 N, the pin 250·14.18 = 3545 N at the least. */
  @Test
  void aPinIsSampledAgainstWhatItProtects() {
    Chance first = chance(told(PINNED), "fails first");
    double wood = sigma(0.15);
    double pin = sigma(0.05);
    double z = NormalDistribution.of(0, 1).inverseCumulativeProbability(0.95);
    assertThat(first.probability())
        .isCloseTo(
            below(median(3888.889, wood), wood, 250 * 14.1826 * Math.exp(z * pin), pin),
            within(4 * first.standardError()));
  }

  /** Mean of the pin 1.0843 of its least, 3844 N, as wood is rated on its mean: 3889 N. */
  @Test
  void aPinIsRatedOnItsMeanLikeWhatItProtects() {
    Result result = Assessed.of(PINNED).result();
    double z = NormalDistribution.of(0, 1).inverseCumulativeProbability(0.95);
    double spread = sigma(0.05);
    double mean = 250 * 14.1826 * Math.exp(z * spread + spread * spread / 2);
    assertThat(new Assessed(result).built(Measure.LINK)).isCloseTo(3888.889 / mean, within(1e-4));
    assertThat(result.breaks().get(0).part()).isEqualTo("pin");
    assertThat(result.verdict().because())
        .contains("part meant to break, by their means is 1.009, where at least 1.1 is required");
  }

  /** By the means the pin goes first; but so near that of every two the arm does once. */
  @Test
  void whatBreaksFirstIsAMatterOfChance() {
    String text = PINNED.replace("margin: 1.1", "margin: 1.0");
    Result result = Assessed.of(text).result();
    assertThat(result.verdict().fails()).isTrue();
    assertThat(result.verdict().because())
        .startsWith("chance that the protected part breaks first is 50");
    assertThat(new Assessed(result).built(Measure.LINK_CHANCE))
        .isCloseTo(100 * chance(told(text), "fails first").probability(), within(1e-9));
  }

  @Test
  void anOrderThatMayBeWrongMoreOftenThanNotIsNoOrder() {
    String likely = PINNED.replace("margin: 1.1", "margin: 1.0, chance: 60 %");
    Result result = Assessed.of(likely).result();
    assertThat(result.verdict().passes()).isFalse();
    assertThat(result.verdict().because())
        .contains(
            "the chance that its weak link allows is 60 %, and it is above 0 and at most 10 %");
  }

  @Test
  void withoutScatterNobodyCanTellWhatBreaksFirst() {
    for (String scatter : List.of("scatter: 5 %, ", "scatter: 15 %, ")) {
      String text = PINNED.replace("margin: 1.1", "margin: 0.5").replace(scatter, "");
      Verdict verdict = Assessed.of(text).result().verdict();
      assertThat(verdict.outcome()).isEqualTo(Verdict.Outcome.CANNOT_TELL);
      assertThat(verdict.because()).contains("does not state its scatter");
    }
  }
}
