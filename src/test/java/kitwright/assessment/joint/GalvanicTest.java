package kitwright.assessment.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.assessment.Assessed;
import kitwright.assessment.Result;
import org.junit.jupiter.api.Test;

/**
 * Metals that mix badly. Volts are the middles of the ranges of the Australasian Corrosion
 * Association (corrosion.com.au, read): mild steel −0.60 to −0.72, aluminium −0.76 to −1.00,
 * silicon bronze −0.25 to −0.29, graphite +0.2 to +0.3, 316 passive 0 to −0.10.
 */
class GalvanicTest {
  private static final String BOLTS =
      """
      materials:
        - {id: bronze-bolt, kind: bolt, metal: silicon-bronze, tensile-strength: 500 MPa, shear-strength: 300 MPa, source: test}
        - {id: bronze-pad, kind: metal, metal: silicon-bronze, density: 8500 kg/m3, E: 105 GPa, source: test}
        - {id: odd-plate, kind: metal, density: 8000 kg/m3, E: 200 GPa, source: test}
        - {id: pine, kind: timber, density: 500 kg/m3, E: 10 GPa, source: test}
      sections:
        - {id: drawn, shape: bolt, material: %s, dimensions: {diameter: 10 mm}}
        - {id: made, shape: bolt, material: %s, dimensions: {diameter: 10 mm}}
      assessments:
        - {id: a, method: bolt, designed: drawn, built: made, require: {strength: 0.5}, against: [%s]}
      """;

  private static List<String> cautions(String drawn, String made, String against) {
    return Assessed.of(BOLTS.formatted(drawn, made, against)).result().cautions();
  }

  @Test
  void steelBoltsInABronzePadAreEaten() {
    List<String> told = cautions("bolt-8-8", "bolt-8-8", "bronze-pad");
    assertThat(told).hasSize(2);
    assertThat(told.get(0))
        .startsWith(
            "bolt-8-8 (steel, −0.66 V) and bronze-pad (silicon bronze, −0.27 V) are 0.39 V apart")
        .contains("bolt-8-8 is eaten")
        .contains("Bolts are small against what they hold");
    assertThat(told.get(1)).contains("corrosion.com.au");
  }

  @Test
  void aPlateOfAluminiumUnderStainlessBoltsIsEatenNotTheBolts() {
    List<String> told = cautions("bolt-a4-70", "bolt-a4-80", "aluminium");
    assertThat(told.get(0))
        .contains("aluminium (aluminium, −0.88 V)")
        .contains("bolt-a4-80 (stainless 316 passive, −0.05 V)")
        .contains("0.83 V apart")
        .contains("aluminium is eaten")
        .doesNotContain("Bolts are small");
  }

  @Test
  void anotherMetalThanDrawnIsNamedWithTheOneDrawn() {
    List<String> told = cautions("bolt-a4-70", "bolt-8-8", "");
    assertThat(told.get(0))
        .startsWith(
            "the metal is not the one drawn: bolt-8-8 (steel) in place of bolt-a4-70 (stainless"
                + " 316)")
        .contains("0.61 V apart in sea water");
  }

  @Test
  void oneMetalThroughoutNeedsNoCaution() {
    assertThat(cautions("bolt-a4-70", "bolt-a4-80", "stainless-316l-annealed-plate")).isEmpty();
    assertThat(cautions("bronze-bolt", "bronze-bolt", "bronze-pad, pine")).isEmpty();
  }

  @Test
  void aMetalThatNobodyNamesIsAskedFor() {
    assertThat(cautions("bolt-8-8", "bolt-8-8", "odd-plate"))
        .singleElement()
        .asString()
        .startsWith("which metal odd-plate is, nobody says");
  }

  /** 0.25 − (−0.88): carbon plies on an aluminium tube. */
  @Test
  void carbonClothOnAluminiumIsAPairToo() {
    String text =
        """
        materials:
          - {id: epoxy, kind: resin, density: 1200 kg/m3, E: 3 GPa, poisson: 0.35, source: test}
          - {id: carbon-cloth, kind: cloth, fibre: carbon-high-strength, resin: epoxy, weave: woven, areal-weight: 200 g/m2, fibre-fraction: 0.55, source: test}
        sections:
          - {id: bar, width: 40 mm, layers: [{material: aluminium, thickness: 5 mm}]}
          - {id: stiffened, width: 40 mm, layers: [{material: aluminium, thickness: 5 mm}, {material: carbon-cloth, plies: 2}]}
        assessments:
          - {id: a, method: section, designed: bar, built: stiffened, require: {stiffness: 1.0}}
        """;
    Result result = Assessed.of(text).result();
    assertThat(result.cautions())
        .anySatisfy(
            caution ->
                assertThat(caution)
                    .contains("aluminium (aluminium, −0.88 V) and carbon-cloth (carbon, 0.25 V)")
                    .contains("1.13 V apart"));
  }
}
