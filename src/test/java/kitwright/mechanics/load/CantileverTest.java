package kitwright.mechanics.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class CantileverTest {
  private static final double L = 1.5;

  /** Reckoned twice: 8 kn, 0.40 m², CL 1.2, 1025 kg/m³ give 4167 N. */
  @Test
  void sideForce() {
    double force = new SideForce(1025, 8 * 1852.0 / 3600, 0.40, 1.2).force();
    assertThat(force).isCloseTo(4167, within(0.5));
  }

  /** Standard beam cases by virtual work: PL³/3EI + PL/GA and PL³/8EI + PL/2GA. */
  @Test
  void deflectionAgreesWithTheTables() {
    var whole = List.of(new Stretch(0, 1, 50, 900), new Stretch(1, L, 50, 900));
    for (var load : List.of(BeamCase.CANTILEVER_END, BeamCase.CANTILEVER_EVEN)) {
      SpanLoad acts =
          load == BeamCase.CANTILEVER_END ? new SpanLoad.Point(L, 7) : new SpanLoad.Even(0, L, 7);
      var beam = new Cantilever(L, List.of(acts));
      var have = beam.deflection(whole, L);
      var table = load.deflection(7, L, 50, 900);
      assertThat(have.bending()).isCloseTo(table.bending(), within(1e-9));
      assertThat(have.shear()).isCloseTo(table.shear(), within(1e-9));
      assertThat(beam.at(0).moment()).isCloseTo(load.moment(7, L), within(1e-12));
      assertThat(beam.at(0).shear()).isCloseTo(load.shear(7), within(1e-12));
    }
  }

  @Test
  void anEllipticLoadStandsFourOverThreePiFromTheRoot() {
    var load = new SpanLoad.Elliptic(L, 100);
    assertThat(load.shear(0)).isCloseTo(100, within(1e-12));
    assertThat(load.moment(0)).isCloseTo(100 * L * 4 / (3 * Math.PI), within(1e-9));
    assertThat(load.moment(L)).isZero();
    double h = 1e-5;
    for (double x : new double[] {0.2, 0.7, 1.3}) {
      double slope = (load.moment(x - h) - load.moment(x + h)) / (2 * h);
      assertThat(slope).as("V = −dM/dx").isCloseTo(load.shear(x), within(1e-4));
    }
  }

  @Test
  void selfWeightBendsLikeAnEvenLoad() {
    var weight = SpanLoad.Even.weight(0.5, 1.5, 2);
    assertThat(weight.force()).isCloseTo(2 * 9.80665, within(1e-12));
    assertThat(weight.moment(0)).isCloseTo(2 * 9.80665, within(1e-12));
    assertThat(weight.moment(1)).isCloseTo(9.80665 * 0.25, within(1e-12));
  }

  @Test
  void aLoadBeyondTheTipIsRefused() {
    assertThatThrownBy(() -> new Cantilever(1, List.of(new SpanLoad.Point(1.2, 5))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("beyond the tip");
  }
}
