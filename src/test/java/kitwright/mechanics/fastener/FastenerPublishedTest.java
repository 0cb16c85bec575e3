package kitwright.mechanics.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import kitwright.mechanics.fastener.Bolt.Plane;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class FastenerPublishedTest {
  private static final Percentage CUT = Percentage.withPercentage(0.7);

  @ParameterizedTest
  @CsvFileSource(resources = "/kitwright/mechanics/bolts.csv", useHeadersInDisplayName = true)
  void boltTables(double size, double area, double t88, double p88, double t109, double p109) {
    var thread = MetricThread.coarse(size).orElseThrow();
    assertThat(thread.stressArea() * 1e6).isCloseTo(area, within(Math.max(0.05, area * 2.5e-3)));
    var mild = new Bolt(thread, BoltClass.STEEL_8_8);
    assertThat(mild.tensileLoad()).isCloseTo(t88, CUT);
    assertThat(mild.proofLoad()).isCloseTo(p88, CUT);
    var hard = new Bolt(thread, BoltClass.STEEL_10_9);
    assertThat(hard.tensileLoad()).isCloseTo(t109, CUT);
    assertThat(hard.proofLoad()).isCloseTo(p109, CUT);
  }

  /**
   * ISO 3506 (1979)/DIN 267 part 11, read at brassnutbolt.com: A4-70 700/450, A4-80 800/600 MPa.
   */
  @ParameterizedTest
  @CsvSource({"A4-70, 700, 450, READ", "A2-80, 800, 600, READ", "A4-50, 500, 210, FROM_MEMORY"})
  void stainless(String mark, double tensile, double proof, BoltClass.Seen seen) {
    var known = BoltClass.marked(mark).orElseThrow();
    assertThat(known.tensileStrength(0.01) / 1e6).isEqualTo(tensile);
    assertThat(known.proofStress(0.01) / 1e6).isEqualTo(proof);
    assertThat(known.seen()).isEqualTo(seen);
  }

  /**
   * Resistance of M20 class 8.8 in shear through the thread, one plane: 0.6·800·245/1.25 = 94.1 kN,
   * and M16 60.3 kN, as tabulated in the steel designers' Blue Book to EN 1993-1-8 (γ = 1.25, fub =
   * 800); remembered.
   */
  @ParameterizedTest
  @CsvSource({"16, 60.3", "20, 94.1", "24, 136"})
  void shearOfStructuralBolts(double size, double kilonewtons) {
    var bolt = new Bolt(MetricThread.coarse(size).orElseThrow(), BoltClass.STEEL_8_8);
    double rated = bolt.shearLoad(Plane.THREAD, 1) / 1.25;
    double strength = BoltClass.STEEL_8_8.tensileStrength(size / 1000);
    assertThat(rated * 800e6 / strength / 1000)
        .isCloseTo(kilonewtons, Percentage.withPercentage(0.5));
    assertThat(bolt.shearLoad(Plane.THREAD, 2)).isEqualTo(2 * bolt.shearLoad(Plane.THREAD, 1));
  }

  @Test
  void aWeakPinIsRatedOnTheMostItMayBear() {
    var pin = new Pin(0.008, 500e6, 700e6);
    assertThat(pin.leastShearLoad(2)).isCloseTo(2 * 0.6 * 50.265e-6 * 500e6, within(5.0));
    assertThat(pin.mostShearLoad(2) / pin.leastShearLoad(2)).isCloseTo(1.4, within(1e-12));
    assertThatThrownBy(() -> new Pin(0.008, 700e6, 500e6))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void carbonEatsAluminiumAndBronzeSitsWellWithCopper() {
    assertThat(Metal.CARBON.mixesBadlyWith(Metal.ALUMINIUM)).isTrue();
    assertThat(Metal.CARBON.baser(Metal.ALUMINIUM)).isEqualTo(Metal.ALUMINIUM);
    assertThat(Metal.SILICON_BRONZE.mixesBadlyWith(Metal.COPPER)).isFalse();
    assertThat(Metal.CARBON.mixesBadlyWith(Metal.STAINLESS_316_ACTIVE)).isTrue();
    assertThat(Metal.ALUMINIUM.apart(Metal.CARBON)).isCloseTo(1.30, within(1e-9));
  }
}
