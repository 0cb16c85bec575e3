package kitwright.mechanics.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Beams overhanging one support, against the formulas of AWC Design Aid 6, 2007, figures 24 (load
 * spread over all) and 26 (load at the free end), the same as in AISC's table of beam diagrams
 * (from memory), and against moments about a support.
 */
class OverhangPublishedTest {
  private static final double EI = 2.0e4;
  private static final double STIFF = 1e15;

  /** M = P·a, R₁ = −P·a/L, Δ_tip = P·a²·(L + a)/3EI, Δ_max between = P·a·L²/(9√3·EI). */
  @Test
  void aForceAtTheFreeEnd() {
    double p = 700;
    double l = 2.4;
    double a = 0.9;
    Overhang beam = new Overhang(l, a, p, 0);
    assertThat(beam.greatestMoment()).isCloseTo(p * a, within(1e-9));
    assertThat(beam.reaction()).isCloseTo(-p * a / l, within(1e-9));
    assertThat(beam.greatestShear()).isCloseTo(p, within(1e-9));
    assertThat(beam.at(l + a, EI, STIFF).total())
        .isCloseTo(p * a * a * (l + a) / (3 * EI), within(1e-6));
    assertThat(beam.at(l / Math.sqrt(3), EI, STIFF).total())
        .isCloseTo(-p * a * l * l / (9 * Math.sqrt(3) * EI), within(1e-6));
  }

  /**
   * M₁ = w·(L + a)²·(L − a)²/8L², M₂ = w·a²/2, R₁ = w·(L² − a²)/2L, V₃ = w·(L² + a²)/2L, Δ_tip =
   * w·a·(4a²L − L³ + 3a³)/24EI.
   */
  @Test
  void aLoadSpreadOverAll() {
    double w = 350;
    double l = 3.0;
    double a = 1.0;
    Overhang beam = new Overhang(l, a, 0, w * (l + a));
    double sagging = w * Math.pow(l + a, 2) * Math.pow(l - a, 2) / (8 * l * l);
    assertThat(beam.reaction()).isCloseTo(w * (l * l - a * a) / (2 * l), within(1e-9));
    assertThat(beam.greatestMoment()).isCloseTo(sagging, within(1e-9));
    assertThat(Math.abs(beam.moment(l))).isCloseTo(w * a * a / 2, within(1e-9));
    assertThat(beam.greatestShear()).isCloseTo(w * (l * l + a * a) / (2 * l), within(1e-9));
    assertThat(beam.at(l + a, EI, STIFF).total())
        .isCloseTo(w * a * (4 * a * a * l - l * l * l + 3 * a * a * a) / (24 * EI), within(1e-6));
  }

  /** Without an overhang to speak of it is the simple beam: 5·W·L³/384EI and W·L/8GA. */
  @Test
  void withHardlyAnOverhangItIsASimpleBeam() {
    Overhang beam = new Overhang(2, 1e-6, 0, 900);
    Deflection told = beam.deflection(EI, 5e4);
    Deflection simple = BeamCase.SIMPLE_EVEN.deflection(900, 2, EI, 5e4);
    assertThat(told.bending()).isCloseTo(simple.bending(), within(1e-6));
    assertThat(told.shear()).isCloseTo(simple.shear(), within(1e-6));
    assertThat(beam.greatestMoment()).isCloseTo(900 * 2 / 8.0, within(1e-3));
  }

  /** Both loads together add up. */
  @Test
  void loadsAddUp() {
    Overhang both = new Overhang(2, 0.7, 300, 400);
    Deflection all = both.at(2.7, EI, 5e4);
    Deflection one = new Overhang(2, 0.7, 300, 0).at(2.7, EI, 5e4);
    Deflection other = new Overhang(2, 0.7, 0, 400).at(2.7, EI, 5e4);
    assertThat(all.total()).isCloseTo(one.total() + other.total(), within(1e-12));
    assertThat(new Overhang(2, 0.7, 300, 150).with(250)).isEqualTo(both);
  }
}
