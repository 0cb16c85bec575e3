package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import org.junit.jupiter.api.Test;

/** A section prepared for sampling says at its means what it says when built whole. */
class ResampledTest {
  private static final BeamMaterial WOOD =
      BeamMaterial.of("wood", Kind.TIMBER, 425, 11e9, 7e8, Made.ofTimber(70e6, 38e6, 8e6));
  private static final BeamMaterial GLASS =
      BeamMaterial.of("glass", Kind.LAMINATE, 1700, 15e9, 4e9, Made.strength(250e6, 200e6, 80e6));
  private static final BeamMaterial FOAM =
      Made.core("foam", 80, 7e7, 2.7e7, Made.strength(2e6, 1e6, 1e6));

  private static void agrees(Section section) {
    Bending whole = Bending.of(section);
    Resampled light = Resampled.of(section);
    double[] means = new double[1 + 2 * light.materials().size()];
    Arrays.fill(means, 1);
    double moment =
        Math.min(
            whole.moment(Sense.SAGGING).value().orElseThrow(),
            whole.moment(Sense.HOGGING).value().orElseThrow());
    double shear = whole.shear().value().orElseThrow();
    assertThat(light.stiffness(means, 1))
        .isCloseTo(whole.stiffness(), within(1e-9 * whole.stiffness()));
    assertThat(light.moment(means, 1)).isCloseTo(moment, within(1e-9 * moment));
    assertThat(light.shear(means, 1)).isCloseTo(shear, within(1e-9 * shear));
  }

  @Test
  void agreesAtTheMeans() {
    agrees(Shapes.rectangle(WOOD, 0.04, 0.06));
    agrees(Made.box(WOOD, 0.096, 0.096, 0.022, 0.024));
    agrees(
        LayeredSection.ofWidth(1)
            .layer(GLASS, 2e-3)
            .layer(FOAM, 0.02)
            .layer(GLASS, 1e-3)
            .section());
    agrees(
        new FoilSection(
                new FoilShape(0.26, 0.115).outline(),
                List.of(new FoilSection.Ply(GLASS, 5e-4)),
                Optional.of(FOAM),
                List.of(new FoilSection.Member("spine", WOOD, 0.06, 0.1)))
            .section());
  }

  /** Twice the modulus and strength of everything is twice of everything. */
  @Test
  void growsWithEveryShare() {
    Section section = Made.box(WOOD, 0.096, 0.096, 0.022, 0.024);
    Resampled light = Resampled.of(section);
    double[] one = {1, 1};
    double[] two = {2, 2};
    assertThat(light.stiffness(two, 0)).isCloseTo(2 * light.stiffness(one, 0), within(1e-6));
    assertThat(light.moment(two, 0)).isCloseTo(2 * light.moment(one, 0), within(1e-6));
  }
}
