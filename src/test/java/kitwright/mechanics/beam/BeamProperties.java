package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.mechanics.beam.BeamMaterial.Elastic;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.assertj.core.data.Percentage;

class BeamProperties {
  private static final Percentage CLOSE = Percentage.withPercentage(1e-7);

  /** A layer to be: modulus, thickness, density. */
  record Sheet(BeamMaterial material, double thickness) {}

  @Provide
  Arbitrary<Sheet> sheets() {
    var moduli = Arbitraries.doubles().between(5e7, 2e11).ofScale(0);
    var thickness = Arbitraries.doubles().between(5e-4, 0.05).ofScale(6);
    return Combinators.combine(moduli, thickness).as((e, t) -> new Sheet(material(e), t));
  }

  private static BeamMaterial material(double e) {
    return new BeamMaterial(
        "stuff " + e,
        Kind.LAMINATE,
        1000,
        new Elastic(e, e / 2.6, OptionalDouble.of(e)),
        Made.strength(e / 100, e / 150, e / 300));
  }

  private static Section stack(List<Sheet> sheets, double width, double scale) {
    var section = LayeredSection.ofWidth(width * scale);
    sheets.forEach(s -> section.layer(s.material(), s.thickness() * scale));
    return section.section();
  }

  @Property
  void lengthsScaleAsTheyMust(
      @ForAll @Size(min = 1, max = 7) List<@From("sheets") Sheet> sheets,
      @ForAll @DoubleRange(min = 0.1, max = 10) double scale) {
    var one = Bending.of(stack(sheets, 0.1, 1));
    var scaled = Bending.of(stack(sheets, 0.1, scale));
    assertThat(scaled.stiffness()).isCloseTo(one.stiffness() * Math.pow(scale, 4), CLOSE);
    assertThat(scaled.shearStiffness()).isCloseTo(one.shearStiffness() * scale * scale, CLOSE);
    assertThat(scaled.moment(Sense.SAGGING).value().orElseThrow())
        .isCloseTo(one.moment(Sense.SAGGING).value().orElseThrow() * Math.pow(scale, 3), CLOSE);
    assertThat(scaled.shear().value().orElseThrow())
        .isCloseTo(one.shear().value().orElseThrow() * scale * scale, CLOSE);
  }

  @Property
  void turningUpsideDownChangesNothingButTheSense(
      @ForAll @Size(min = 1, max = 7) List<@From("sheets") Sheet> sheets) {
    var flipped = new ArrayList<>(sheets);
    Collections.reverse(flipped);
    var one = Bending.of(stack(sheets, 0.1, 1));
    var other = Bending.of(stack(flipped, 0.1, 1));
    assertThat(other.stiffness()).isCloseTo(one.stiffness(), CLOSE);
    assertThat(other.shearStiffness()).isCloseTo(one.shearStiffness(), CLOSE);
    assertThat(other.moment(Sense.HOGGING).value().orElseThrow())
        .isCloseTo(one.moment(Sense.SAGGING).value().orElseThrow(), CLOSE);
  }

  @Property
  void stressesBalanceTheMomentAndPullNothing(
      @ForAll @Size(min = 1, max = 7) List<@From("sheets") Sheet> sheets) {
    var bending = Bending.of(stack(sheets, 0.1, 1));
    double force = 0;
    double moment = 0;
    double size = 0;
    for (var s : Stresses.of(bending.section(), 1000)) {
      double h = s.upper() - s.lower();
      double mean = (s.atLower() + s.atUpper()) / 2;
      double middle = (s.lower() + s.upper()) / 2 - bending.neutralAxis();
      force += 0.1 * h * mean;
      size += 0.1 * h * Math.abs(mean);
      moment -= 0.1 * h * (mean * middle + (s.atUpper() - s.atLower()) * h / 12);
    }
    assertThat(Math.abs(force)).isLessThanOrEqualTo(1e-7 * size + 1e-6);
    assertThat(moment).isCloseTo(1000, CLOSE);
  }

  @Property
  void anotherLayerNeverMakesItLessStiff(
      @ForAll @Size(min = 1, max = 6) List<@From("sheets") Sheet> sheets,
      @ForAll("sheets") Sheet more) {
    var thicker = new ArrayList<>(sheets);
    thicker.add(more);
    var before = Bending.of(stack(sheets, 0.1, 1));
    var after = Bending.of(stack(thicker, 0.1, 1));
    assertThat(after.stiffness()).isGreaterThan(before.stiffness());
    assertThat(after.axialStiffness()).isGreaterThan(before.axialStiffness());
  }

  /** Parallel axes: a region further up by d has A·d² more about the old axis. */
  @Property
  void parallelAxes(
      @ForAll @DoubleRange(min = 0.01, max = 1) double width,
      @ForAll @DoubleRange(min = 0.01, max = 1) double height,
      @ForAll @DoubleRange(min = -2, max = 2) double by) {
    double expected = width * Math.pow(height, 3) / 12 + width * height * by * by;
    double low = by - height / 2;
    var rectangle = new Rectangle("one", material(1e9), 0.3, low, width, height);
    var points =
        new Loop(
            List.of(
                new Point(0.3, low),
                new Point(0.3 + width, low),
                new Point(0.3 + width, low + height),
                new Point(0.3, low + height)));
    for (Region region : List.of(rectangle, new Outline("two", material(1e9), points, List.of()))) {
      assertThat(region.moments().zz()).isCloseTo(expected, CLOSE);
      assertThat(region.moments().area()).isCloseTo(width * height, CLOSE);
    }
  }

  /** A rectangle drawn as a polygon, or cut into strips, is the same rectangle. */
  @Property(tries = 50)
  void theWayItIsDrawnDoesNotMatter(
      @ForAll @DoubleRange(min = 0.01, max = 0.3) double width,
      @ForAll @DoubleRange(min = 0.01, max = 0.3) double height) {
    var m = material(7e9);
    var loop =
        new Loop(
            List.of(
                new Point(0, 0),
                new Point(width, 0),
                new Point(width, height),
                new Point(0, height)));
    var whole = Bending.of(Shapes.rectangle(m, width, height));
    var polygon = Bending.of(Shapes.polygon(m, loop));
    var strips =
        Bending.of(
            LayeredSection.ofWidth(width)
                .strips(height, List.of(Strip.of(width / 3, m), Strip.of(2 * width / 3, m)))
                .section());
    for (var other : List.of(polygon, strips)) {
      assertThat(other.stiffness()).isCloseTo(whole.stiffness(), CLOSE);
      assertThat(other.shearStiffness()).isCloseTo(whole.shearStiffness(), CLOSE);
      assertThat(other.shear().value().orElseThrow())
          .isCloseTo(whole.shear().value().orElseThrow(), CLOSE);
    }
  }

  /** A regular polygon moved in is a regular polygon: area n·(a − d)²·tan(π/n), a its apothem. */
  @Property
  void aRegularPolygonMovedInIsOne(
      @ForAll @IntRange(min = 3, max = 200) int sides,
      @ForAll @DoubleRange(min = 0.01, max = 1.5) double share) {
    var corners = new ArrayList<Point>();
    for (int i = 0; i < sides; i++) {
      double turn = 2 * Math.PI * i / sides;
      corners.add(new Point(0.1 * Math.cos(turn), 0.1 * Math.sin(turn)));
    }
    double apothem = 0.1 * Math.cos(Math.PI / sides);
    var left = Inset.of(new Loop(corners), share * apothem);
    double side = (1 - share) * apothem;
    if (side < 1e-5) {
      assertThat(left.filter(some -> share > 1.001)).isEmpty();
    } else {
      assertThat(left.orElseThrow().area())
          .isCloseTo(sides * side * side * Math.tan(Math.PI / sides), CLOSE);
    }
  }

  /** Moving every side of a foil in leaves what cutting with each moved side in turn leaves. */
  @Property(tries = 50)
  void aFoilMovedInIsWhatItsMovedSidesLeave(
      @ForAll @DoubleRange(min = 0.06, max = 0.3) double ratio,
      @ForAll @DoubleRange(min = 0.01, max = 1.1) double share) {
    leavesWhatItsMovedSidesLeave(new FoilShape(0.4, ratio).outline(), share * 0.2 * ratio);
  }

  /** The same of outlines with few or many corners anywhere on an oval. */
  @Property
  void aConvexOutlineMovedInIsWhatItsMovedSidesLeave(
      @ForAll @Size(min = 3, max = 40)
          List<@DoubleRange(min = 0, max = 6.28) @Scale(4) Double> turns,
      @ForAll @DoubleRange(min = 0.001, max = 0.12) @Scale(4) double depth) {
    var corners =
        turns.stream()
            .sorted()
            .distinct()
            .map(turn -> new Point(0.2 * Math.cos(turn), 0.1 * Math.sin(turn)))
            .toList();
    Assume.that(corners.size() >= 3 && Math.abs(Loop.signedArea(corners)) > 1e-6);
    leavesWhatItsMovedSidesLeave(new Loop(corners), depth);
  }

  private static void leavesWhatItsMovedSidesLeave(Loop whole, double depth) {
    Optional<Loop> cut = Optional.of(whole);
    for (int i = 0; i < whole.points().size(); i++) {
      var a = whole.points().get(i);
      var b = whole.points().get((i + 1) % whole.points().size());
      double length = Math.hypot(b.y() - a.y(), b.z() - a.z());
      double ny = (a.z() - b.z()) / length;
      double nz = (b.y() - a.y()) / length;
      var side = new HalfPlane(ny, nz, ny * a.y() + nz * a.z() + depth);
      cut = length > 0 ? cut.flatMap(side::clip) : cut;
    }
    var moved = Inset.of(whole, depth);
    if (cut.map(Loop::area).orElse(0.0) > 1e-9) {
      assertThat(moved.orElseThrow().area()).isCloseTo(cut.get().area(), CLOSE);
      assertThat(moved.get().perimeter()).isCloseTo(cut.get().perimeter(), CLOSE);
      assertThat(moved.get().moments().zz()).isCloseTo(cut.get().moments().zz(), CLOSE);
    } else {
      assertThat(moved.map(Loop::area).orElse(0.0)).isLessThan(2e-9);
    }
  }
}
