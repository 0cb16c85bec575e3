package kitwright.assessment.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.Sample;
import kitwright.assessment.material.Stuff;
import kitwright.assessment.part.Part;
import kitwright.assessment.part.Part.StackLayer;
import kitwright.ledger.Material.Sort;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.Limit;
import kitwright.mechanics.beam.Shapes;
import org.junit.jupiter.api.Test;

/**
 * What a twisting moment does to two unlike layers, by hand: A = Σ G·t, B = Σ G·(z₁² − z₀²)/2, D =
 * Σ G·(z₁³ − z₀³)/3, γ(z) = (A·z − B)/(A·D − B²) for a moment of one, τ = G·γ at the outer face of
 * each.
 */
class TwistTest {
  private static final double MPA = 1e6;

  /** 2 mm of G 1 GPa under 1 mm of G 5 GPa: what does not shear lies 0.57 mm above the middle. */
  @Test
  void eachOfTwoUnlikeLayersFailsAtItsOuterFace() {
    double[] z = {-1.5e-3, 0.5e-3, 1.5e-3};
    double[] g = {1e9, 5e9};
    double a = 0;
    double b = 0;
    double d = 0;
    for (int i = 0; i < 2; i++) {
      a += g[i] * (z[i + 1] - z[i]);
      b += g[i] * (z[i + 1] * z[i + 1] - z[i] * z[i]) / 2;
      d += g[i] * (Math.pow(z[i + 1], 3) - Math.pow(z[i], 3)) / 3;
    }
    double lower = g[0] * Math.abs(a * z[0] - b) / (a * d - b * b);
    double upper = g[1] * Math.abs(a * z[2] - b) / (a * d - b * b);
    assertFails(50, 1e6, "layer 1", 50 * MPA / lower, false);
    assertFails(1e6, 50, "layer 2", 50 * MPA / upper, false);
    assertFails(50, 1e6, "layer 2", 50 * MPA / lower, true);
    assertFails(1e6, 50, "layer 1", 50 * MPA / upper, true);
  }

  @Test
  void aLayerWithoutAStrengthIsLacking() {
    Twist.Borne borne = borne(List.of(layer(1, 2, 1e9, OptionalDouble.empty())));
    assertThat(borne.limit()).isEmpty();
    assertThat(borne.lacking())
        .containsExactly("stuff (layer 1) does not state its shear-strength");
  }

  private static void assertFails(
      double soft, double stiff, String where, double moment, boolean upsideDown) {
    OptionalDouble low = OptionalDouble.of(soft * MPA);
    OptionalDouble high = OptionalDouble.of(stiff * MPA);
    Twist.Borne borne =
        borne(
            upsideDown
                ? List.of(layer(1, 1, 5e9, high), layer(2, 2, 1e9, low))
                : List.of(layer(1, 2, 1e9, low), layer(2, 1, 5e9, high)));
    Limit limit = borne.limit().orElseThrow();
    assertThat(limit.where()).isEqualTo(where);
    assertThat(limit.capacity()).isCloseTo(moment, within(1e-9 * moment));
  }

  private static Twist.Borne borne(List<StackLayer> layers) {
    var laminate = Part.laminate(layers);
    var any =
        BeamMaterial.of(
            "any", BeamMaterial.Kind.LAMINATE, 1, 1, 1, BeamMaterial.Strength.unknown());
    var section =
        Sample.ledger(
                """
                sections:
                  - {id: s, width: 1 m, layers: [{material: larch, thickness: 3 mm}]}
                materials:
                  - {id: larch, kind: timber}
                """)
            .sections()
            .iterator()
            .next();
    Part part = new Part(section, Shapes.rectangle(any, 1, 3e-3), layers);
    return Twist.of(part, laminate, laminate.stiffness().inverse());
  }

  private static StackLayer layer(
      int where, double millimetres, double shear, OptionalDouble bears) {
    OptionalDouble none = OptionalDouble.empty();
    Stuff stuff =
        new Stuff(
            "stuff",
            Sort.LAMINATE,
            1700,
            new Stuff.Elastic(10e9, shear, none),
            new Stuff.Limits(none, none, none, bears),
            Optional.of(new Stuff.Flat(10e9, 0.1, none, none)),
            new Stuff.Rolling(none, none),
            0,
            none,
            none,
            0);
    return new StackLayer("layer " + where, stuff, 0, millimetres / 1000);
  }
}
