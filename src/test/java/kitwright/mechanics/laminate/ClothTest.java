package kitwright.mechanics.laminate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.laminate.Cloth.Weave;
import org.junit.jupiter.api.Test;

class ClothTest {
  private static final Matrix EPOXY = Matrix.of("epoxy", 1200, 3.2e9, 0.35);
  private static final Fibre GLASS =
      new Fibre("E-glass", 2560, 72.4e9, 72.4e9, 72.4e9 / 2.44, 0.22);
  private static final LaminaStrength STRONG = new LaminaStrength(900e6, 600e6, 35e6, 110e6, 60e6);

  private static Laminate cured(Weave weave, double mass, Fibre fibre, double angle) {
    var cloth = Cloth.straight(weave, mass, fibre);
    var stuff = cloth.stuff(EPOXY, 0.5).with(STRONG);
    return cloth.cured(stuff, EPOXY, 0.5, angle);
  }

  @Test
  void theSameMassGivesTheSameThicknessHoweverItIsWoven() {
    for (var weave : Weave.values()) {
      var laminate = cured(weave, 0.6, GLASS, 0);
      assertThat(laminate.thickness()).as(weave.name()).isCloseTo(0.6 * 1.224e-3, within(1e-6));
      assertThat(laminate.arealMass()).as(weave.name()).isCloseTo(1.2, within(1e-9));
    }
  }

  @Test
  void biaxialAtFortyFiveIsDoubleBias() {
    var turned = cured(Weave.BIAXIAL, 0.6, GLASS, 45);
    var bias = cured(Weave.DOUBLE_BIAS, 0.6, GLASS, 0);
    assertThat(turned.inPlane().ex()).isCloseTo(bias.inPlane().ex(), within(1.0));
    // Ten to twelve GPa in practice (no source), far below the fibre's.
    assertThat(bias.inPlane().ex() / 1e9).isBetween(7.0, 13.0);
  }

  @Test
  void aLaminateBecomesAMaterialOfABeam() {
    var material =
        cured(Weave.BIAXIAL, 0.6, GLASS, 0).asBeamMaterial("face", Criterion.MAXIMUM_STRAIN);
    assertThat(material.kind()).isEqualTo(Kind.LAMINATE);
    assertThat(material.strength().tension()).isPresent();
    assertThat(material.axial()).isBetween(10e9, 25e9);
  }

  @Test
  void aFibreFractionAboveOneIsRefused() {
    assertThatThrownBy(() -> new FibreContent(1.2, 2560, 1200))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1.2");
  }
}
