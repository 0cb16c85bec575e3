package kitwright.assessment.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Load;
import org.junit.jupiter.api.Test;

/**
 * Pressure on a beam: 12 kPa on a strip 0.4 m wide is w = 4.8 kN/m. Under w over L a simple beam
 * has M = wL²/8 and V = wL/2 and a cantilever M = wL²/2 and V = wL (the closed forms of
 * SelfWeightTest); one clamped M = wL²/12.
 */
class BeamLoadTest {
  private static final double W = 12_000 * 0.4;

  private static BeamLoad load(String more) {
    List<String> lacking = new ArrayList<>();
    Load stated =
        Sample.ledger(
                "assessments: [{id: a, method: section, load: {pressure: 12 kPa, breadth: 400 mm,"
                    + " span: 2.5 m, factor: 1.5, source: t, "
                    + more
                    + "}}]")
            .assessments()
            .get(0)
            .load()
            .orElseThrow();
    BeamLoad load = BeamLoad.of(stated, lacking).orElseThrow();
    assertThat(lacking).isEmpty();
    return load;
  }

  private static void bends(BeamLoad load, double force, double moment, double shear) {
    assertThat(load.force()).isCloseTo(force, within(1e-6));
    assertThat(load.moment()).isCloseTo(moment, within(1e-6));
    assertThat(load.shear()).isCloseTo(shear, within(1e-6));
  }

  @Test
  void aStripBetweenTwoSupports() {
    bends(load("support: simple"), 12_000, W * 2.5 * 2.5 / 8, W * 2.5 / 2);
    bends(load("support: clamped"), 12_000, W * 2.5 * 2.5 / 12, W * 2.5 / 2);
    assertThat(load("support: simple").how().get(0)).contains("= 12000 N, spread evenly");
  }

  @Test
  void aStripHeldAtOneEnd() {
    bends(load("support: cantilever"), 12_000, W * 2.5 * 2.5 / 2, W * 2.5);
  }

  /** Added to what else it bears: 900 N at the middle of a simple beam, M = FL/4. */
  @Test
  void pressureComesOnTopOfAForce() {
    bends(
        load("support: simple, shape: point, force: 900 N"),
        12_900,
        W * 2.5 * 2.5 / 8 + 900 * 2.5 / 4,
        W * 2.5 / 2 + 450);
  }

  /**
   * It presses on the overhang too: 2.5 m between and 1 m beyond, w on 3.5 m, 16.8 kN. M over the
   * second support is w·a²/2 = 2.4 kN·m, the other reaction w·(L² − a²)/2L = 5.04 kN (AWC Design
   * Aid 6, figure 24), M between them R²/2w = 2.646 kN·m, V the second’s w·(L² + a²)/2L = 6.96 kN.
   */
  @Test
  void pressureReachesOverTheOverhang() {
    bends(load("support: overhang, overhang: 1 m"), 16_800, 5040.0 * 5040 / 2 / W, 6960);
  }
}
