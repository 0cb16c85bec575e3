package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.mechanics.beam.BeamMaterial.Elastic;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.BeamMaterial.Strength;
import org.junit.jupiter.api.Test;

/** Which mode governs, told by name. */
class BendingTest {
  private static final double MM = 1e-3;
  private static final double MPA = 1e6;
  private static final double GPA = 1e9;

  private static final BeamMaterial SPRUCE =
      new BeamMaterial(
          "spruce",
          Kind.TIMBER,
          425,
          new Elastic(11 * GPA, 0.7 * GPA, OptionalDouble.of(0.55 * GPA)),
          Made.ofTimber(70 * MPA, 38 * MPA, 7.9 * MPA));
  private static final BeamMaterial GLASS =
      BeamMaterial.of(
          "glass",
          Kind.LAMINATE,
          1700,
          15 * GPA,
          4 * GPA,
          Made.strength(250 * MPA, 200 * MPA, 80 * MPA));

  private static BeamMaterial foam(double modulus, double shear, double strength) {
    return Made.core("foam", 80, modulus, shear, Made.strength(50 * MPA, 50 * MPA, strength));
  }

  private static Section sandwich(BeamMaterial core) {
    return LayeredSection.ofWidth(0.1)
        .layer(GLASS, 2 * MM)
        .layer(core, 25 * MM)
        .layer(GLASS, 2 * MM)
        .section();
  }

  @Test
  void solidTimberIsJudgedByItsBendingStrength() {
    var capacity = Bending.of(Shapes.rectangle(SPRUCE, 40 * MM, 60 * MM)).moment(Sense.SAGGING);
    assertThat(capacity.governing().orElseThrow().mode()).isEqualTo(FailureMode.BENDING);
    assertThat(capacity.value().orElseThrow())
        .isCloseTo(70 * MPA * 0.04 * 0.0036 / 6, within(1e-6));
  }

  @Test
  void hollowTimberIsJudgedByTensionAndCompression() {
    var capacity =
        Bending.of(Made.box(SPRUCE, 96 * MM, 96 * MM, 24 * MM, 24 * MM)).moment(Sense.HOGGING);
    var governing = capacity.governing().orElseThrow();
    assertThat(governing.mode()).isEqualTo(FailureMode.COMPRESSION);
    assertThat(governing.where()).isEqualTo("layer 1");
  }

  @Test
  void aSoftCoreLetsTheFaceWrinkle() {
    var capacity = Bending.of(sandwich(foam(30 * MPA, 10 * MPA, MPA))).moment(Sense.SAGGING);
    var governing = capacity.governing().orElseThrow();
    assertThat(governing.mode()).isEqualTo(FailureMode.WRINKLING);
    assertThat(governing.where()).isEqualTo("layer 3");
    assertThat(governing.allowable())
        .isCloseTo(0.5 * Math.cbrt(15 * GPA * 30 * MPA * 10 * MPA), within(1.0));
  }

  @Test
  void aStiffCoreLetsTheFaceReachItsStrength() {
    var capacity = Bending.of(sandwich(foam(300 * MPA, 100 * MPA, 3 * MPA))).moment(Sense.SAGGING);
    assertThat(capacity.governing().orElseThrow().mode()).isEqualTo(FailureMode.COMPRESSION);
  }

  @Test
  void aWeakCoreGovernsInShear() {
    var capacity = Bending.of(sandwich(foam(70 * MPA, 27 * MPA, 1.1 * MPA))).shear();
    var governing = capacity.governing().orElseThrow();
    assertThat(governing.mode()).isEqualTo(FailureMode.CORE_SHEAR);
    assertThat(governing.capacity()).isCloseTo(1.1 * MPA * 0.1 * 0.027, within(40.0));
  }

  @Test
  void aStarvedGlueLineGovernsInShear() {
    var wall = Strip.of(24 * MM, SPRUCE);
    var section =
        LayeredSection.ofWidth(96 * MM)
            .layer(SPRUCE, 24 * MM)
            .strips(48 * MM, List.of(wall, Strip.gap(48 * MM), wall))
            .layer(SPRUCE, 24 * MM)
            .glue(3 * MPA)
            .section();
    var bending = Bending.of(section);
    var governing = bending.shear().governing().orElseThrow();
    assertThat(governing.mode()).isEqualTo(FailureMode.BOND_SHEAR);
    assertThat(governing.where()).isEqualTo("between layer 1 and layer 2 strip 1");
    // q = S/I over two walls.
    double inertia = (Math.pow(0.096, 4) - Math.pow(0.048, 4)) / 12;
    double first = 0.096 * 0.024 * 0.036;
    assertThat(governing.capacity()).isCloseTo(3 * MPA * inertia * 0.048 / first, within(1e-3));
    assertThat(section.torsion()).isPresent();
  }

  @Test
  void aThinFaceOverAGapBuckles() {
    var side = Strip.of(10 * MM, SPRUCE);
    var section =
        LayeredSection.ofWidth(0.12)
            .layer(flat(GLASS), 0.5 * MM)
            .strips(30 * MM, List.of(side, Strip.gap(0.1), side))
            .layer(flat(GLASS), 0.5 * MM)
            .section();
    var governing = Bending.of(section).moment(Sense.SAGGING).governing().orElseThrow();
    assertThat(governing.mode()).isEqualTo(FailureMode.DIMPLING);
    // k = 4 of a plate that is the same every way, ν = 0.25.
    double plate = 4 * Math.PI * Math.PI / 12 / (1 - 0.0625) * Math.pow(0.5 / 100, 2);
    assertThat(governing.allowable()).isCloseTo(15 * GPA * plate, within(1.0));
  }

  private static BeamMaterial flat(BeamMaterial stuff) {
    double e = stuff.axial();
    var elastic =
        new Elastic(
            e,
            stuff.shearModulus(),
            OptionalDouble.empty(),
            Optional.of(new BeamMaterial.Flat(e, 0.25, e / 2.5)));
    return new BeamMaterial(stuff.name(), stuff.kind(), stuff.density(), elastic, stuff.strength());
  }

  @Test
  void withoutItsModulusAcrossAFaceOverAGapIsNotTold() {
    var side = Strip.of(10 * MM, SPRUCE);
    var section =
        LayeredSection.ofWidth(0.12)
            .layer(GLASS, 0.5 * MM)
            .strips(30 * MM, List.of(side, Strip.gap(0.1), side))
            .layer(GLASS, 0.5 * MM)
            .section();
    assertThat(Bending.of(section).moment(Sense.SAGGING).missing())
        .anyMatch(missing -> missing.property() == Missing.Property.ACROSS_MODULUS);
  }

  @Test
  void whatIsNotKnownIsNamed() {
    var bare = BeamMaterial.of("bare", Kind.LAMINATE, 1700, 15 * GPA, 4 * GPA, Strength.unknown());
    var capacity = Bending.of(Shapes.rectangle(bare, 1, 1)).moment(Sense.SAGGING);
    assertThat(capacity.value()).isEmpty();
    assertThat(capacity.missing())
        .extracting(Missing::property)
        .containsExactly(Missing.Property.TENSILE_STRENGTH, Missing.Property.COMPRESSIVE_STRENGTH);
  }

  @Test
  void aFoilWithASpineIsStifferAndCloses() {
    var outline = new FoilShape(0.4, 0.12).outline();
    var skin = List.of(new FoilSection.Ply(GLASS, 2 * MM));
    var core = Optional.of(foam(70 * MPA, 27 * MPA, MPA));
    var spine = new FoilSection.Member("spine", SPRUCE, 0.08, 0.16);
    var plain = new FoilSection(outline, skin, core, List.of()).section();
    var spined = new FoilSection(outline, skin, core, List.of(spine)).section();
    assertThat(Bending.of(spined).stiffness()).isGreaterThan(1.05 * Bending.of(plain).stiffness());
    assertThat(spined.torsion().orElseThrow()).isPositive();
    assertThat(Bending.of(spined).isSkew()).isFalse();
    assertThat(Bending.of(spined).moment(Sense.SAGGING).governing()).isPresent();
    double area = spined.regions().stream().mapToDouble(r -> r.moments().area()).sum();
    assertThat(area).as("nothing counted twice").isCloseTo(outline.area(), within(1e-9));
  }

  @Test
  void whatDoesNotFitIsRefused() {
    var outline = new FoilShape(0.4, 0.12).outline();
    assertThatThrownBy(
            () ->
                new FoilSection(
                        outline,
                        List.of(new FoilSection.Ply(GLASS, 30 * MM)),
                        Optional.empty(),
                        List.of())
                    .section())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("does not fit");
    assertThatThrownBy(
            () ->
                new FoilSection(
                    outline,
                    List.of(),
                    Optional.empty(),
                    List.of(new FoilSection.Member("spine", SPRUCE, 0.1, 0.5))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("wider than the chord");
    var apart = List.of(Strip.of(0.04, GLASS), Strip.gap(0.02), Strip.of(0.04, SPRUCE));
    assertThatThrownBy(() -> LayeredSection.ofWidth(0.1).strips(0.01, apart).section())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("stands alone");
    assertThatThrownBy(() -> LayeredSection.ofWidth(0.1).layer(GLASS, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> LayeredSection.ofWidth(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
