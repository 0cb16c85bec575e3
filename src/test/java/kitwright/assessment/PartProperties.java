package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Laws that hold of any part, through what a sheet prints. */
class PartProperties {
  private static final double NEAR = 1e-6;

  private static final List<String> STUFFS = List.of("wood-a", "wood-b", "skin", "foam", "skin-b");

  /** A layer: of which stuff, how thick. */
  record Leaf(String stuff, double thickness) {
    String yaml(double scale) {
      return "{material: %s, thickness: %s, grain: along}".formatted(stuff, mm(thickness * scale));
    }
  }

  private static String mm(double thickness) {
    return String.format(Locale.ROOT, "%.9f mm", thickness);
  }

  private static List<Leaf> leaves(List<Integer> kinds, double thickness) {
    List<Leaf> all = new ArrayList<>();
    for (int i = 0; i < kinds.size(); i++) {
      all.add(new Leaf(STUFFS.get(kinds.get(i)), thickness * (1 + 0.3 * i)));
    }
    return all;
  }

  private static String stack(List<Leaf> leaves, double scale) {
    return String.join(", ", leaves.stream().map(leaf -> leaf.yaml(scale)).toList());
  }

  private static Assessed assessed(String built, String how, String load) {
    return Assessed.of(
        Samples.with(
            """
            sections:
              - {id: d, width: 300 mm, layers: [{material: wood-a, thickness: 30 mm, grain: along}]}
              - {id: b, %s}
            assessments:
              - {id: a, method: %s, designed: d, built: b, require: {stiffness: 0.000001}%s}
            """
                .formatted(built, how, load)));
  }

  private static String force(double newton) {
    return String.format(Locale.ROOT, "%.6f N", newton);
  }

  private static void same(Assessed one, Assessed other, Measure... measures) {
    for (Measure measure : measures) {
      double value = one.built(measure);
      assertThat(other.built(measure)).as(measure.words()).isCloseTo(value, near(value));
    }
  }

  private static org.assertj.core.data.Offset<Double> near(double value) {
    return within(NEAR * Math.abs(value) + 1e-12);
  }

  /** All lengths times k, forces times k²: the reserve is the same. */
  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void scale(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 0, max = 4) Integer> kinds,
      @ForAll @DoubleRange(min = 4, max = 20) double thickness,
      @ForAll @DoubleRange(min = 0.2, max = 5) double k) {
    List<Leaf> leaves = leaves(kinds, thickness);
    Assessed one = scaled(leaves, 1);
    Assessed other = scaled(leaves, k);
    same(one, other, Measure.RESERVE);
    double deflection = one.built(Measure.DEFLECTION);
    assertThat(other.built(Measure.DEFLECTION)).isCloseTo(k * deflection, near(k * deflection));
  }

  private static Assessed scaled(List<Leaf> leaves, double k) {
    return assessed(
        "width: " + mm(100 * k) + ", layers: [" + stack(leaves, k) + "]",
        "section",
        ", load: {tip-force: "
            + force(200 * k * k)
            + ", span: "
            + mm(800 * k)
            + ", factor: 1.5, source: t}");
  }

  /** Layers from the top instead of from the bottom: sagging and hogging change places. */
  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void orderOfLayers(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 0, max = 4) Integer> kinds,
      @ForAll @DoubleRange(min = 4, max = 20) double thickness) {
    List<Leaf> leaves = leaves(kinds, thickness);
    Assessed one = beam(leaves);
    List<Leaf> turned = new ArrayList<>(leaves);
    Collections.reverse(turned);
    Assessed other = beam(turned);
    same(one, other, Measure.STIFFNESS, Measure.SHEAR_STIFFNESS, Measure.SHEAR, Measure.MASS);
    assertThat(other.built(Measure.MOMENT_SAGGING))
        .isCloseTo(one.built(Measure.MOMENT_HOGGING), near(one.built(Measure.MOMENT_HOGGING)));
    same(panel(leaves), panel(turned), Measure.PLATE_STIFFNESS, Measure.PLATE_SHEAR);
  }

  private static Assessed beam(List<Leaf> leaves) {
    return assessed("width: 100 mm, layers: [" + stack(leaves, 1) + "]", "section", "");
  }

  private static Assessed panel(List<Leaf> leaves) {
    return assessed(
        "width: 1 m, layers: [" + stack(leaves, 1) + "]",
        "panel",
        ", load: {pressure: 2 kPa, span: 800 mm, breadth: 600 mm, support: simple, source: t}");
  }

  /** A part made thicker in proportion is never weaker, nor less stiff. */
  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void thickerIsNeverWeaker(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 0, max = 4) Integer> kinds,
      @ForAll @DoubleRange(min = 4, max = 20) double thickness,
      @ForAll @DoubleRange(min = 1, max = 3) double more) {
    Assessed thin = beam(leaves(kinds, thickness));
    Assessed thick = beam(leaves(kinds, thickness * more));
    for (Measure measure :
        List.of(
            Measure.STIFFNESS,
            Measure.SHEAR_STIFFNESS,
            Measure.MOMENT_SAGGING,
            Measure.MOMENT_HOGGING,
            Measure.SHEAR)) {
      assertThat(thick.built(measure))
          .as(measure.words())
          .isGreaterThanOrEqualTo(thin.built(measure) * (1 - NEAR));
    }
  }

  /** The wall of a tube, pushed, bent and twisted, thicker. */
  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void aThickerWallIsNeverWeaker(
      @ForAll @DoubleRange(min = 0.5, max = 10) double wall,
      @ForAll @DoubleRange(min = 1, max = 2) double more) {
    assertThat(mast(wall * more, 1, 1).built(Measure.RESERVE))
        .isGreaterThanOrEqualTo(mast(wall, 1, 1).built(Measure.RESERVE) * (1 - NEAR));
  }

  private static Assessed mast(double wall, double bends, double pushes) {
    return assessed(
        "shape: tube, material: al, dimensions: {diameter: 80 mm, wall: " + mm(wall) + "}",
        "section",
        ", load: {tip-force: %s, thrust: %s, ends: fixed-free, torque: 50 Nm, span: 1.2 m, source: t}"
            .formatted(force(150 * bends), force(3000 * pushes)));
  }

  /** More of any load never raises a reserve. */
  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void moreLoadNeverRaisesAReserve(
      @ForAll @DoubleRange(min = 1, max = 10) double bends,
      @ForAll @DoubleRange(min = 1, max = 10) double pushes) {
    double plain = mast(3, 1, 1).built(Measure.RESERVE);
    assertThat(mast(3, bends, 1).built(Measure.RESERVE)).isLessThanOrEqualTo(plain * (1 + NEAR));
    assertThat(mast(3, bends, pushes).built(Measure.RESERVE))
        .isLessThanOrEqualTo(mast(3, bends, 1).built(Measure.RESERVE) * (1 + NEAR));
  }

  /** A stiffer built part never lowers the ratio of stiffness. */
  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void aStifferPartIsNeverLessStiff(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 0, max = 4) Integer> kinds,
      @ForAll @DoubleRange(min = 1, max = 1.5) double more) {
    List<Leaf> leaves = leaves(kinds, 8);
    String section =
        """
        sections:
          - {id: d, width: 300 mm, layers: [{material: wood-a, thickness: 30 mm, grain: along}]}
          - {id: b, width: 100 mm, layers: [%s]}
        assessments:
          - {id: a, method: section, designed: d, built: b, require: {stiffness: 0.000001}}
        """
            .formatted(stack(leaves, 1));
    String plain = Samples.with(section);
    String stiff = plain.replace("E: 11 GPa", String.format(Locale.ROOT, "E: %.6f GPa", 11 * more));
    assertThat(ratio(stiff)).isGreaterThanOrEqualTo(ratio(plain) * (1 - NEAR));
  }

  private static double ratio(String yaml) {
    return Assessed.of(yaml).row(Measure.STIFFNESS).ratio().orElseThrow();
  }

  /** The same part told in millimetres and newtons, or in inches, pounds and psi. */
  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void units(
      @ForAll @DoubleRange(min = 20, max = 200) double width,
      @ForAll @DoubleRange(min = 20, max = 200) double height,
      @ForAll @DoubleRange(min = 50, max = 5000) double newton) {
    Assessed metric =
        told(
            width + " mm",
            height + " mm",
            newton + " N",
            "11 GPa",
            "60 N/mm²",
            "1.2 m",
            "450 kg/m3");
    Assessed imperial =
        told(
            width / 25.4 + " in",
            height / 25.4 + " in",
            newton / 4.4482216152605 + " lbf",
            11e9 / 6894.757293168361 + " psi",
            60e3 / 6894.757293168361 + " ksi",
            1.2 / 0.3048 + " ft",
            450 / 16.01846337396014 + " lb/ft3");
    assertThat(imperial.result().verdict()).isEqualTo(metric.result().verdict());
    for (Row row : metric.result().rows()) {
      double value = row.built().orElseThrow().value();
      assertThat(imperial.built(row.measure()))
          .as(row.measure().words())
          .isCloseTo(value, near(value));
    }
  }

  private static Assessed told(
      String width,
      String height,
      String force,
      String e,
      String mor,
      String span,
      String density) {
    return Assessed.of(
        """
        materials:
          - {id: m, kind: timber, basis: mean, density: %7$s, E: %4$s, bending-strength: %5$s, shear-strength: 8 MPa, source: t}
        sections:
          - {id: s, shape: rectangle, material: m, dimensions: {width: %1$s, height: %2$s}}
        assessments:
          - {id: a, method: section, designed: s, built: s, require: {reserve: 1}, load: {tip-force: %3$s, span: %6$s, self-weight: yes, source: t}}
        """
            .formatted(width, height, force, e, mor, span, density));
  }
}
